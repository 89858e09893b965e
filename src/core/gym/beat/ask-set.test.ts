import { describe, expect, it } from 'vitest';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { figureOfLoad } from '../loads/shift-load.ts';
import { askSet, type AskInput } from './ask-set.ts';

const bar = (kg: number): SetLoad => ({ of: 'kg', kg });

/** A lifter who can do ten with 100 kg, and one more or fewer for each 3 kg; nine of ten within two repetitions. */
const chanceOf = (load: SetLoad, reps: number) => {
  const could = 10 - ((figureOfLoad(load) ?? 0) - 100) / 3;
  return Math.min(1, Math.max(0, 0.5 + (could - reps + 0.5) / 4));
};

function ask(given: Partial<AskInput> & { readonly kg?: number; readonly did?: number }) {
  const { kg = 100, did = 8, ...more } = given;
  return askSet({
    last: { load: bar(kg), reps: did },
    reps: { min: 6, max: 10 },
    rir: 1,
    push: 'more',
    caution: {},
    nextFigure: (_load, figure, way) => figure + way * 2.5,
    figureAtMost: (_load, figure) => 2.5 * Math.floor(figure / 2.5),
    chanceOf,
    ...more,
  });
}

describe('what a set is asked to be', () => {
  it('[GYM-25] one repetition more than last time', () => {
    expect(ask({})).toMatchObject({ load: bar(100), reps: 9, rule: 'one repetition more' });
  });

  it('[GYM-25] with the most of the scheme reached, the next load for the fewest', () => {
    expect(ask({ did: 10 })).toMatchObject({ load: bar(102.5), reps: 6, rule: 'next load' });
  });

  it('[GYM-25] not more than is likely today: as last time, and less where even that is not', () => {
    expect(ask({ kg: 103, did: 8 })).toMatchObject({ reps: 8, rule: 'as last time' });
    expect(ask({ kg: 112, did: 8 })).toMatchObject({ reps: 5, rule: 'less today' });
  });

  it('[GYM-38] a load with which the scheme is out of reach is taken down to one with which it is not', () => {
    // Six with one left are likely from could = 6.3 on, which is 111.1 kg; steps from 118 kg are 2.5 kg.
    expect(ask({ kg: 118, did: 2 })).toMatchObject({
      load: bar(110.5),
      reps: 6,
      rule: 'lighter for the scheme',
    });
    expect(ask({ kg: 118, did: 0 })).toMatchObject({ load: bar(110.5), reps: 6 });
    expect(ask({ kg: 112, did: 5, push: 'match' })).toMatchObject({ load: bar(112) });
    expect(ask({ kg: 118, did: 2, chanceOf: () => undefined })).toMatchObject({ load: bar(118), reps: 3 });
  });

  it('[GYM-29] what the template names stands: with the most repetitions of the scheme that are likely', () => {
    expect(ask({ given: bar(90) })).toMatchObject({
      load: bar(90),
      reps: 10,
      rule: 'as the template says',
    });
    // With 105 kg could = 8.3: eight with one left come off 46 times of a hundred, nine 21 times.
    expect(ask({ given: bar(105), last: undefined })).toMatchObject({ load: bar(105), reps: 8 });
    expect(ask({ given: bar(90), last: undefined, reps: undefined })).toBeUndefined();
    expect(ask({ given: bar(100), did: 10 })).toMatchObject({ load: bar(100), reps: 10 });
    expect(ask({ given: bar(110), caution: { ceilingKg: 100 } })).toMatchObject({
      load: bar(100),
      rule: 'held by the caution',
    });
  });

  it('[GYM-52] the stronger side waits, unless it is asked for less anyway', () => {
    const weaker = { load: bar(100), reps: 7 };
    expect(ask({ weaker })).toMatchObject({ load: bar(100), reps: 7, rule: 'as the weaker side' });
    expect(ask({ weaker: { load: bar(90), reps: 9 } })).toMatchObject({ load: bar(90), reps: 9 });
    expect(ask({ weaker: { load: bar(105), reps: 5 } })).toMatchObject({ load: bar(100), reps: 9 });
    expect(ask({ weaker: { load: bar(100), reps: 10 } })).toMatchObject({ reps: 9 });
    expect(ask({ weaker: { load: bar(100), reps: 0 } })).toMatchObject({ reps: 9 });
  });

  it('[GYM-27] where holding is the aim, as last time and no more', () => {
    expect(ask({ push: 'match', did: 7 })).toMatchObject({ reps: 7, rule: 'as last time' });
    expect(ask({ push: 'match', did: 0 })).toMatchObject({ reps: 1, rule: 'as last time' });
  });

  it('[GYM-28] never past the ceiling of a caution, never below its repetitions', () => {
    expect(ask({ caution: { ceilingKg: 90 } })).toMatchObject({ load: bar(90), rule: 'held by the caution' });
    const floor = ask({ kg: 110, did: 6, caution: { repsFloor: 10 } });
    expect(floor).toMatchObject({ reps: 10, rule: 'held by the caution' });
    expect(figureOfLoad(floor?.load ?? bar(0))).toBeLessThanOrEqual(100);
    expect(ask({ did: 10, caution: { ceilingKg: 101 } })).toMatchObject({ load: bar(100), reps: 10 });
  });

  it('[GYM-25] nothing comparable, nothing asked; nothing known of today, one repetition more', () => {
    expect(ask({ last: undefined })).toBeUndefined();
    expect(ask({ chanceOf: () => undefined })).toMatchObject({ reps: 9, chance: undefined });
  });
});

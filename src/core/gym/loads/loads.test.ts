import { describe, expect, it } from 'vitest';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { gymJournal } from '../../../../test/journal/gym-journal.ts';
import { exerciseBook } from '../book/exercise-book.ts';
import { comparableLoad } from './comparable-load.ts';
import { figureAtMost, nearestFigure, nextFigure } from './load-step.ts';
import { figureOfLoad, withFigure } from './shift-load.ts';
import { warmUpsOf } from './warm-up-of.ts';

function hall() {
  const journal = gymJournal();
  journal.write('08:00', 'weights-counted', {
    place: 'harbour hall',
    plates: [
      { mass: 20, unit: 'kg', count: 6 },
      { mass: 10, unit: 'kg', count: 4 },
      { mass: 5, unit: 'kg', count: 2 },
      { mass: 2.5, unit: 'kg', count: 2 },
      { mass: 1, unit: 'kg', count: 1 },
    ],
    dumbbellPairs: [
      { mass: 20, unit: 'kg' },
      { mass: 50, unit: 'lb' },
      { mass: 26, unit: 'kg' },
    ],
  });
  journal.write('08:01', 'machine-described', {
    machine: 'stack',
    name: 'Extension',
    geometry: { of: 'stack', firstKg: 5, stepKg: 5, lastKg: 100, halfPinKg: 2.5 },
  });
  journal.write('08:02', 'machine-described', {
    machine: 'sled',
    name: 'Sled',
    geometry: { of: 'sled', sledKg: 40, railsDeg: 30, sides: 2 },
  });
  journal.write('08:03', 'machine-described', {
    machine: 'odd',
    name: 'Odd machine',
    geometry: { of: 'unknown', pegs: ['far', 'near'] },
  });
  return exerciseBook(journal.ledger);
}

const onPegs = (machine: string, ...pegs: readonly (readonly [string, number])[]): SetLoad => ({
  of: 'pegs',
  machine,
  pegs: pegs.map(([peg, kg]) => ({ peg, kg })),
});

describe('loads that compare', () => {
  const book = hall();
  const read = (load: SetLoad, exercise = 'leg-press', massKg: number | undefined = 80) =>
    comparableLoad(load, book.exercise(exercise), book, massKg);

  it('[GYM-15] a sled counts along its rails: (40 + 60) kg at 30 degrees is 50 kg', () => {
    expect(read(onPegs('sled', ['main', 60]))?.loadKg).toBeCloseTo(50, 10);
  });

  it('[GYM-15] unknown pegs compare with the same division over the same pegs only', () => {
    const [a, b, c] = [
      read(onPegs('odd', ['far', 20], ['near', 10])),
      read(onPegs('odd', ['near', 20], ['far', 40])),
      read(onPegs('odd', ['far', 10], ['near', 20])),
    ];
    expect(a?.variant).toBe(b?.variant);
    expect(a?.variant).not.toBe(c?.variant);
  });

  it('[GYM-15] body weight needs a body mass, and a band compares with nothing', () => {
    expect(read({ of: 'body', beltKg: 10 }, 'pull-up')?.loadKg).toBeCloseTo(90, 10);
    expect(comparableLoad({ of: 'body' }, book.exercise('pull-up'), book, undefined)).toBeUndefined();
    expect(read({ of: 'band', band: 'thick' })).toBeUndefined();
  });
});

describe('the next load', () => {
  const book = hall();

  it('[GYM-26] two of the lightest pair of plates, the next pair, the half hole', () => {
    expect(nextFigure({ of: 'kg', kg: 100 }, 100, 1, book)).toBe(105);
    expect(nextFigure({ of: 'each', kgEach: 20 }, 20, 1, book)).toBeCloseTo(22.6796, 4);
    expect(nextFigure({ of: 'each', kgEach: 26 }, 26, -1, book)).toBeCloseTo(22.6796, 4);
    expect(nextFigure({ of: 'stack', machine: 'stack', pinKg: 40 }, 40, 1, book)).toBe(42.5);
    expect(nearestFigure({ of: 'each', kgEach: 26 }, 24, book)).toBeCloseTo(22.6796, 4);
    expect(nearestFigure({ of: 'kg', kg: 100 }, 61.2, book)).toBe(60);
    expect(figureAtMost({ of: 'kg', kg: 100 }, 64.9, book)).toBe(60);
    expect(figureAtMost({ of: 'each', kgEach: 26 }, 25.9, book)).toBeCloseTo(22.6796, 4);
  });

  it('[GYM-26] plates come off the fullest peg first; help shrinks before a belt goes on', () => {
    expect(withFigure(onPegs('odd', ['far', 10], ['near', 20]), 15)).toEqual(
      onPegs('odd', ['far', 10], ['near', 5]),
    );
    expect(withFigure(onPegs('odd', ['far', 10], ['near', 20]), 6)).toEqual(
      onPegs('odd', ['far', 6], ['near', 0]),
    );
    expect(withFigure({ of: 'body', assistKg: 10 }, 5)).toEqual({ of: 'body', beltKg: 5 });
    expect(withFigure({ of: 'stack', pinKg: 40, addOnKg: 5 }, 50)).toEqual({
      of: 'stack',
      pinKg: 45,
      addOnKg: 5,
    });
    expect(withFigure({ of: 'kg', kg: 20 }, -5)).toEqual({ of: 'kg', kg: 0 });
    expect(figureOfLoad({ of: 'band', band: 'thin' })).toBeUndefined();
  });
});

describe('warm-ups of an exercise', () => {
  const book = hall();
  const implement = {
    implement: 'bar',
    name: 'Bar',
    empty: { mass: 20, unit: 'kg' as const },
    sides: 2 as const,
  };

  it('[GYM-26] with bar and plates known, the plates of one side stand with each', () => {
    const { sets, ramp } = warmUpsOf({
      top: { load: { of: 'kg', kg: 100 }, reps: 6 },
      warmUps: 3,
      implement,
      book,
    });
    expect(sets).toHaveLength(3);
    expect(ramp?.errorKg).toBe(0);
    for (const set of sets)
      expect(20 + 2 * (set.perSide ?? []).reduce((sum, kg) => sum + kg, 0)).toBeCloseTo(
        figureOfLoad(set.load) ?? 0,
        9,
      );
  });

  it('[GYM-26] without them, by the steps there are, rising and below the top', () => {
    const { sets, ramp } = warmUpsOf({
      top: { load: { of: 'stack', machine: 'stack', pinKg: 60 }, reps: 8 },
      warmUps: 3,
      implement: undefined,
      book,
    });
    expect(ramp).toBeUndefined();
    const figures = sets.map(({ load }) => figureOfLoad(load) ?? 0);
    expect(figures).toEqual(figures.toSorted((a, b) => a - b));
    expect(Math.max(...figures)).toBeLessThan(60);
    for (const figure of figures) expect(figure % 2.5).toBeCloseTo(0, 9);
  });

  it('[GYM-26] a band or the bare body has no share to take', () => {
    const of = (load: SetLoad) =>
      warmUpsOf({ top: { load, reps: 8 }, warmUps: 2, implement: undefined, book }).sets;
    expect(of({ of: 'band', band: 'thin' })).toEqual([]);
    expect(of({ of: 'body' })).toEqual([]);
  });
});

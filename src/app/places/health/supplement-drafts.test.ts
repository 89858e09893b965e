import { describe, expect, it } from 'vitest';
import type { Outcome } from '#core/problems/problem.ts';
import { draftOfDraw, readDrawDraft } from './draw-draft.ts';
import { readFeelingDraft } from './feeling-draft.ts';
import {
  draftOfProduct,
  emptyProduct,
  readProductDraft,
  standsFor,
  type ProductDraft,
} from './product-draft.ts';
import { draftOfRegimen, emptyRegimen, readRegimenDraft, type RegimenDraft } from './regimen-draft.ts';
import { cadenceWords, tieWords } from './regimen-words.ts';

function value<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}
const pathOf = (outcome: Outcome<unknown>) => (outcome.ok ? undefined : outcome.problem.path);

const iron: ProductDraft = {
  ...emptyProduct,
  name: 'Iron',
  lines: [{ of: 'iron', form: '', amount: 25, unit: 'mg' }],
};

describe('a product as it is typed', () => {
  it('[HLT-39] is kept as its label says, and read back the same', () => {
    const kept = value(readProductDraft({ ...iron, packUnits: 60, batchTested: true }, 's'));
    expect(kept).toEqual({
      supplement: 's',
      name: 'Iron',
      unit: 'capsule',
      perUnits: 1,
      contents: [{ of: 'iron', amount: 25, unit: 'mg' }],
      packUnits: 60,
      batchTested: true,
    });
    expect(value(readProductDraft(draftOfProduct(kept), 's'))).toEqual(kept);
  });

  it('[HLT-39] a serving of 0, no name, no line, no amount: each at its field', () => {
    expect(pathOf(readProductDraft({ ...iron, perUnits: 0 }, 's'))).toBe('perUnits');
    expect(pathOf(readProductDraft({ ...iron, name: ' ' }, 's'))).toBe('name');
    expect(pathOf(readProductDraft({ ...iron, lines: [] }, 's'))).toBe('lines');
    expect(pathOf(readProductDraft({ ...iron, lines: [{ of: 'iron', form: '', unit: 'mg' }] }, 's'))).toBe(
      'lines.0.amount',
    );
  });

  it('[HLT-39] an amount that the label does not say is kept so, and a name no table knows is kept', () => {
    const blend = { of: 'Focus blend', form: '', unit: 'not said' as const };
    expect(value(readProductDraft({ ...iron, lines: [blend] }, 's')).contents).toEqual([
      { of: 'Focus blend' },
    ]);
    expect(standsFor('Focus blend')).toBe('not in the tables: shown, not summed');
    expect(standsFor('ascorbic acid')).toBe('counts as Vitamin C');
    expect(standsFor('furosemide')).toContain('no dose of it is ever planned');
  });
});

const usual: RegimenDraft = emptyRegimen('2027-03-04');
const of = { regimen: 'r', supplement: 's' };

describe('a regimen as it is typed', () => {
  it.each<[string, Partial<RegimenDraft>, object]>([
    [
      'minutes before training',
      { tie: 'before training', minutes: 45 },
      { tie: { to: 'before training', minutes: 45 } },
    ],
    ['a clock time', { tie: 'clock', atMinutes: 1290 }, { tie: { to: 'clock', at: '21:30' } }],
    [
      'every second day',
      { cadence: 'every n-th day', days: 2 },
      { cadence: { of: 'every n-th day', days: 2 } },
    ],
    [
      'weekdays',
      { cadence: 'weekdays', weekdays: [1, 4] },
      { cadence: { of: 'weekdays', weekdays: [1, 4] } },
    ],
  ])('[HLT-39] %s', (_, typed, kept) => {
    const regimen = value(readRegimenDraft({ ...usual, ...typed }, of));
    expect(regimen).toMatchObject(kept);
    expect(value(readRegimenDraft(draftOfRegimen(regimen), of))).toEqual(regimen);
  });

  it('[HLT-39] no amount, no clock, no weekday, an end before its beginning: each at its field', () => {
    const { units: _, ...without } = usual;
    expect(pathOf(readRegimenDraft(without, of))).toBe('units');
    expect(pathOf(readRegimenDraft({ ...usual, tie: 'clock' }, of))).toBe('atMinutes');
    expect(pathOf(readRegimenDraft({ ...usual, cadence: 'weekdays' }, of))).toBe('weekdays');
    expect(pathOf(readRegimenDraft({ ...usual, until: '2027-03-01' }, of))).toBe('until');
    expect(pathOf(readRegimenDraft({ ...usual, cadence: 'every n-th day', days: 1 }, of))).toBe('days');
  });

  it('[HLT-39] a change keeps its pauses', () => {
    const pauses = [{ from: '2027-03-09', until: '2027-03-12', reason: 'before the blood draw: iron' }];
    expect(value(readRegimenDraft({ ...usual, units: 2 }, { ...of, pauses })).pauses).toEqual(pauses);
  });

  it('[HLT-39] is said in words', () => {
    expect(tieWords({ to: 'before sleep', minutes: 45 })).toBe('45 min before sleep');
    expect(tieWords({ to: 'high-carbohydrate meal', atLeastG: 60 })).toBe(
      'with a meal high in carbohydrate, 60 g and more',
    );
    expect(cadenceWords({ of: 'weekdays', weekdays: [5, 1] })).toBe('Mon, Fri');
    expect(cadenceWords({ of: 'every n-th day', days: 2 })).toBe('every second day');
  });
});

describe('a draw and a daily note as they are typed', () => {
  const draw = { date: '2027-03-12', atMinutes: 450, laboratory: ' ', analytes: ['TSH'], fasting: true };

  it('[HLT-54] a draw is kept with its hour, and read back the same', () => {
    const kept = value(readDrawDraft(draw, 'd', '2027-03-04'));
    expect(kept).toEqual({ draw: 'd', date: '2027-03-12', at: '07:30', analytes: ['TSH'], fasting: true });
    expect(value(readDrawDraft(draftOfDraw(kept), 'd', '2027-03-04'))).toEqual(kept);
  });

  it('[HLT-54] a day that has been and a draw without an hour are said at their field', () => {
    expect(pathOf(readDrawDraft({ ...draw, date: '2027-03-01' }, 'd', '2027-03-04'))).toBe('date');
    const { atMinutes: _, ...timeless } = draw;
    expect(pathOf(readDrawDraft(timeless, 'd', '2027-03-04'))).toBe('atMinutes');
  });

  it('[HLT-63] a note takes any of its fields, at least one, each within what a body has', () => {
    expect(value(readFeelingDraft({ note: '', mood: '4', restingHeartRateBpm: 51 }))).toEqual({
      mood: 4,
      restingHeartRateBpm: 51,
    });
    expect(pathOf(readFeelingDraft({ note: ' ' }))).toBe('feeling');
    expect(pathOf(readFeelingDraft({ note: '', restingHeartRateBpm: 500 }))).toBe('restingHeartRateBpm');
    expect(pathOf(readFeelingDraft({ note: '', sleepHours: 30 }))).toBe('sleepHours');
  });
});

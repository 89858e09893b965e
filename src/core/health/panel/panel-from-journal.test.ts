import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { datedEntry as entry } from '../../../../test/journal/dated-entry.ts';
import {
  athleteAt,
  hoursSinceTraining,
  panelRequestOf,
  panelsIn,
  takingBefore,
} from './panel-from-journal.ts';
import { readPanel } from './read-panel.ts';

const blood = (panel: string, date: string, values: object[], more: object = {}) => ({
  panel,
  drawn: { date, time: '07:30' },
  taking: [],
  values,
  origin: 'typed',
  ...more,
});
const set = (day: string, at: string, kind = 'working') =>
  entry(
    'set-done',
    { session: 's', exercise: 'squat', set: kind, load: { of: 'kg', kg: 100 }, reps: 8 },
    day,
    at,
  );

describe('a panel out of the journal', () => {
  const first = entry(
    'blood-drawn',
    blood('a', '2027-01-05', [{ name: 'ALT', value: 30, unit: 'U/L' }]),
    '2027-01-08',
  );
  const second = entry(
    'blood-drawn',
    blood('b', '2027-03-01', [{ name: 'ALT', value: 60, unit: 'U/L' }]),
    '2027-03-03',
  );

  it('[HLT-13] is read with the older ones, in the order they were drawn, not entered', () => {
    const late = entry(
      'blood-drawn',
      blood('c', '2026-11-05', [{ name: 'ALT', value: 20, unit: 'U/L' }]),
      '2027-03-04',
    );
    const ledger = createLedger([first, second, late]);
    expect(panelsIn(ledger).map(({ panel }) => panel)).toEqual(['c', 'a', 'b']);
    const request = panelRequestOf(ledger, 'b', { athlete: { sex: 'male', age: 33 } });
    expect(request?.earlier?.map(({ drawn }) => drawn.date)).toEqual(['2026-11-05', '2027-01-05']);
    const reading = readPanel(request);
    expect(reading.ok && reading.value.results[0]?.change).toMatchObject({ since: '2027-01-05', real: true });
    expect(panelRequestOf(ledger, 'x', { athlete: { sex: 'male', age: 33 } })).toBeUndefined();
  });

  it('[HLT-13] a correction counts, the older version of the panel does not', () => {
    const fixed = entry(
      'blood-drawn',
      blood('b', '2027-03-01', [{ name: 'ALT', value: 36, unit: 'U/L' }]),
      '2027-03-03',
      '09:00',
      second.id,
    );
    expect(panelsIn(createLedger([first, second, fixed])).at(-1)?.values[0]?.value).toBe(36);
  });

  it('[HLT-13] takes the hours since hard training from the last working set, warm-ups and later sets aside', () => {
    const ledger = createLedger([
      second,
      set('2027-02-26', '17:30'),
      set('2027-02-28', '18:00', 'warm-up'),
      set('2027-03-01', '17:00'),
    ]);
    expect(ledger.problems).toEqual([]);
    expect(hoursSinceTraining(ledger, { date: '2027-03-01', time: '07:30' })).toBe(62);
    expect(hoursSinceTraining(ledger, { date: '2027-03-01' })).toBeUndefined();
    expect(hoursSinceTraining(createLedger([]), { date: '2027-03-01', time: '07:30' })).toBeUndefined();
    expect(
      panelRequestOf(ledger, 'b', { athlete: { sex: 'male', age: 33 } })?.drawn.hoursSinceHardTraining,
    ).toBe(62);
  });

  it('[HLT-13] knows what was taken in the week before, how much, and how long ago', () => {
    const hair = entry(
      'supplement-defined',
      {
        supplement: 'hair',
        name: 'Hair',
        unit: 'capsule',
        perUnits: 2,
        contents: [{ of: 'biotin', amount: 10, unit: 'mg' }, { of: 'moon dust' }],
      },
      '2027-02-01',
    );
    const taken = ['2027-02-20', '2027-02-26', '2027-02-28'].map((day) =>
      entry('supplement-taken', { supplement: 'hair', units: 2 }, day, '07:30'),
    );
    const medicine = entry(
      'medicine-declared',
      { medicine: 'l', name: 'Levothyroxine', at: ['06:30'], from: '2027-01-01' },
      '2027-01-01',
    );
    expect(
      takingBefore(createLedger([hair, ...taken, medicine]), { date: '2027-03-01', time: '07:30' }),
    ).toEqual([
      { substance: 'biotin', mgPerDay: 2.8571, hoursSinceLast: 24 },
      { substance: 'moon dust', hoursSinceLast: 24 },
      { substance: 'Levothyroxine' },
    ]);
  });

  it('[HLT-13] knows the athlete’s age in the year of the draw', () => {
    const athlete = entry(
      'athlete-described',
      {
        birthYear: 1994,
        sex: 'female',
        heightCm: 166,
        units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
        cautionsRead: [],
      },
      '2027-01-01',
    );
    expect(athleteAt(createLedger([athlete]), '2027-03-01')).toEqual({ sex: 'female', age: 33 });
    expect(athleteAt(createLedger([]), '2027-03-01')).toBeUndefined();
  });
});

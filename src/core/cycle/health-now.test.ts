import { describe, expect, it } from 'vitest';
import { datedEntry as entry } from '../../../test/journal/dated-entry.ts';
import type { EstimateAnswer, EstimateRequest } from '../body/estimate-request.ts';
import { createLedger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { bloodNow, dietBefore, panelReading, trendOf, urgentOf } from './blood-now.ts';
import { healthNow } from './health-now.ts';
import { circumstancesOf } from './physician-now.ts';
import { availabilityOf } from './recovery-now.ts';
import { sumsNow } from './supplements-now.ts';
import { weekFelt } from './week-now.ts';

const TODAY = '2027-03-04';
const athlete = entry(
  'athlete-described',
  {
    birthYear: 1995,
    sex: 'female',
    heightCm: 167,
    units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
    cautionsRead: [],
  },
  '2027-01-01',
);
const panel = (name: string, date: string, values: readonly object[]) =>
  entry(
    'blood-drawn',
    {
      panel: name,
      drawn: { date, time: '07:30' },
      taking: [],
      values: [...values],
      origin: 'typed',
    } as never,
    date,
  );

const body = (from: string, days: number): { log: EstimateRequest; answer: EstimateAnswer } => {
  const dates = Array.from({ length: days }, (_, k) => addDays(from, k));
  const intake = { energyKcal: 1800, proteinG: 132, carbohydrateG: 180, fatG: 55 };
  return {
    log: {
      athlete: { sex: 'female', heightCm: 167, age: 32 },
      days: dates.map((date) => ({ date, intake, cardioKcal: 150 })),
    },
    answer: {
      days: dates.map((date) => ({
        date,
        massKg: { mean: 60, sd: 0.3 },
        fatKg: { mean: 12, sd: 1 },
        leanKg: { mean: 48, sd: 1 },
        maintenanceKcal: { mean: 2150, sd: 90 },
      })),
      forecast: [],
      why: [],
    },
  };
};

describe('what Health shows', () => {
  it('[HLT-18] a potassium that needs care now stands first, whatever the laboratory’s interval says', () => {
    // 6.2 mmol/L and more is on the published critical lists; source beside the table of urgent values.
    const ledger = createLedger([
      athlete,
      panel('p', '2027-03-01', [
        { name: 'Potassium', value: 6.8, unit: 'mmol/L', interval: { low: 3, high: 7 } },
      ]),
    ]);
    const now = healthNow(ledger, TODAY);
    expect(now.urgent[0]).toMatch(/^Potassium 6.8 mmol\/L: seek care now/);
    expect(urgentOf(ledger, TODAY)?.cautions.map(({ words }) => words)).toEqual(now.urgent);
    expect(urgentOf(ledger, '2027-03-09')).toBeUndefined();
  });

  it('[HLT-18] an empty journal shows nothing and says nothing', () => {
    const now = healthNow(createLedger([]), TODAY);
    expect(now).toMatchObject({ products: [], urgent: [] });
    expect(now.newest).toBeUndefined();
    expect(now.screen).toBeUndefined();
  });

  it('[HLT-17] a panel knows the last working set, the older panel, and the week’s eating', () => {
    const set = entry(
      'set-done',
      { exercise: 'hack-squat', set: 'top', reps: 9 } as never,
      '2027-02-28',
      '15:30',
    );
    const ledger = createLedger([
      athlete,
      set,
      panel('old', '2027-01-04', [{ name: 'ALT', value: 20, unit: 'U/L' }]),
      panel('new', '2027-03-01', [{ name: 'ALT', value: 0.85, unit: 'ukat/L' }]),
    ]);
    const { log, answer } = body('2027-02-20', 9);
    const diet = dietBefore(log, answer, '2027-03-01');
    // 2150 kcal burned less 1800 eaten; 132 g of protein on 60 kg.
    expect(diet).toEqual({ deficitKcalPerDay: 350, proteinGPerKg: 2.2 });
    const reading = panelReading(ledger, 'new', diet);
    if (!reading.ok) throw new Error(reading.problem.message);
    // 0.85 ukat/L are 51 U/L (1 U is 1 umol a minute): +155 % against 20.
    expect(reading.value.results[0]?.change).toMatchObject({ since: '2027-01-04', real: true });
    expect(reading.value.results[0]?.change?.percent).toBeCloseTo(155, 6);
    expect(reading.value.request.diet).toEqual(diet);
    expect(dietBefore(log, answer, '2027-02-22')).toEqual({});
  });

  it('[HLT-17] a trend runs over all panels in one unit; a panel that is not there is said', () => {
    const ledger = createLedger([
      athlete,
      panel('old', '2027-01-04', [{ name: 'ALT', value: 20, unit: 'U/L' }]),
      panel('new', '2027-03-01', [{ name: 'ALT', value: 0.85, unit: 'ukat/L' }]),
    ]);
    const trend = trendOf(ledger, 'alt', TODAY);
    expect(trend?.unit).toBe('ukat/L');
    expect(trend?.points[0]?.value).toBeCloseTo(20 / 60, 6);
    expect(bloodNow(ledger, TODAY).panels.map(({ panel: name }) => name)).toEqual(['new', 'old']);
    expect(panelReading(ledger, 'gone')).toMatchObject({ ok: false, problem: { code: 'health/no-panel' } });
  });

  it('[HLT-46] every second day is half a dose a day; the same mineral in two products is one sum', () => {
    const product = (supplement: string, mg: number) =>
      entry('supplement-defined', {
        supplement,
        name: supplement,
        unit: 'capsule',
        perUnits: 1,
        contents: [{ of: 'magnesium', amount: mg, unit: 'mg' }],
      });
    const set = (supplement: string, cadence: object) =>
      entry('regimen-set', {
        regimen: supplement,
        supplement,
        units: 2,
        tie: { to: 'last meal' },
        cadence,
        from: '2027-01-01',
      } as never);
    const sums = sumsNow(
      createLedger([
        athlete,
        product('a', 100),
        product('b', 60),
        set('a', { of: 'every n-th day', days: 2 }),
        set('b', { of: 'weekdays', weekdays: [1, 2, 3, 4, 5, 6, 7] }),
        entry('water-drunk', { drink: 'Coffee', millilitres: 250, caffeineMg: 95 }, TODAY),
      ]),
      TODAY,
    );
    const magnesium = sums?.nutrients.find(({ nutrient }) => nutrient === 'magnesium');
    expect(magnesium).toMatchObject({ supplements: 220, duplicate: true });
    // The US level counts supplements only, 350 mg; the EU one 250 mg (SCF 2001).
    expect(magnesium?.us[0]).toMatchObject({ perDay: 350, over: false });
    expect(magnesium?.eu[0]).toMatchObject({ perDay: 250, over: false });
    expect(sums?.caffeine).toMatchObject({ perDayMg: 95, drinksUnknown: false });
  });

  it('[HLT-64] energy availability is food less cardio for each kilogram of lean tissue, over a week at least', () => {
    const { log, answer } = body('2027-02-20', 12);
    // (1800 - 150) / 48
    expect(availabilityOf(log, answer, TODAY)).toEqual({ kcalPerKgFfm: 34.4, days: 12 });
    expect(availabilityOf(body('2027-02-26', 6).log, answer, TODAY)).toBeUndefined();
  });

  it('[HLT-63] the check-in sees the seven days that ended yesterday; the sheet names training and menses', () => {
    const ledger = createLedger([
      athlete,
      entry('feeling-noted', { mood: 2 }, '2027-02-24'),
      entry('feeling-noted', { mood: 4 }, '2027-03-03'),
      entry('feeling-noted', { mood: 1 }, TODAY),
      entry('cycle-noted', { event: 'menses began' }, '2027-02-20'),
    ]);
    expect(weekFelt(ledger, TODAY).measures[0]).toMatchObject({ measure: 'mood', mean: 4, before: 2 });
    const { training, feelings } = circumstancesOf(ledger, TODAY);
    expect(training?.[0]).toBe('Resistance training: not logged');
    expect(feelings?.at(-1)).toBe('Last menses began 2027-02-20');
  });
});

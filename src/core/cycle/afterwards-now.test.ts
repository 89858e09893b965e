import { describe, expect, it } from 'vitest';
import { createScribe } from '../../../demo/scribe.ts';
import { utc } from '../../../demo/story.ts';
import { createLedger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { afterwardsNow, type AfterwardsAsk } from './afterwards-now.ts';

const SHOW = '2027-05-01';
const believed = (mean: number) => ({ mean, sd: 1 });
const bodyOn = (date: string, massKg: number) => ({
  date,
  massKg: believed(massKg),
  fatKg: believed(8),
  leanKg: believed(massKg - 8),
  maintenanceKcal: believed(2050.4),
});

/** Two weeks of 1600 kcal up to the show, then more. */
const log: AfterwardsAsk['log'] = Array.from({ length: 21 }, (_, k) => ({
  date: addDays(SHOW, k - 13),
  intake: { energyKcal: k <= 13 ? 1600 : 2400, proteinG: 130, carbohydrateG: 150, fatG: 50 },
}));

function after(
  days: number,
  write: (scribe: ReturnType<typeof createScribe>) => void = () => undefined,
  eaten = log,
) {
  const scribe = createScribe(3, utc);
  scribe.write('2026-12-01', '06:00', 'show-set', {
    show: 'cup',
    name: 'Harbour Cup',
    date: SHOW,
    target: { bodyFatPercentMax: 14 },
  });
  scribe.write('2026-12-01', '06:01', 'preparation-begun', { show: 'cup', from: '2026-12-01' });
  write(scribe);
  const now = afterwardsNow(createLedger(scribe.entries), {
    today: addDays(SHOW, days),
    pace: 'at once',
    sex: 'female',
    log: eaten,
    body: [bodyOn(SHOW, 56), bodyOn(addDays(SHOW, 7), 58.2)],
  });
  if (!now.ok) throw new Error(now.problem.message);
  return now.value;
}

const adopted = (scribe: ReturnType<typeof createScribe>) =>
  scribe.write(SHOW, '21:00', 'way-back-adopted', {
    show: 'cup',
    pace: 'at once',
    weeks: [
      { from: '2027-05-02', energyKcal: 2050, lowKg: 56.8, highKg: 59 },
      { from: '2027-05-09', energyKcal: 2214, lowKg: 57, highKg: 59.4 },
    ],
    why: ['Energy goes up at once.'],
  });

describe('[CRS-32] the way back as the journal has it', () => {
  it('[CRS-32] starts from the body and the food of the show day, whatever came after', () => {
    const now = after(7);
    expect(now.from).toEqual({ massKg: 56, fatPercent: 14.3, dietKcal: 1600, balanceKcal: 2050 });
    expect([now.daysSince, now.week, now.plan.weeks[0]?.energyKcal]).toEqual([7, 1, 2050]);
    expect([after(8).week, after(-3).week]).toEqual([2, undefined]);
  });

  it('[CRS-32] the load before the show is not taken for the diet', () => {
    const loaded = log.map((row) =>
      row.date === '2027-04-29' || row.date === '2027-04-30'
        ? { ...row, intake: { energyKcal: 2800, proteinG: 110, carbohydrateG: 500, fatG: 32 } }
        : row,
    );
    const load = (scribe: ReturnType<typeof createScribe>) =>
      scribe.write('2027-04-20', '07:00', 'stretch-planned', {
        stretch: 'load cup',
        type: 'higher-carbohydrate days',
        from: '2027-04-29',
        until: '2027-04-30',
      });
    expect(after(7, load, loaded).from.dietKcal).toBe(1600);
    expect(after(7, undefined, loaded).from.dietKcal).toBe(1771);
  });

  it('[CRS-32] weigh-ins are held against the adopted band, without a word of blame', () => {
    const at = (massKg: number) =>
      after(7, (scribe) => {
        adopted(scribe);
        scribe.write(addDays(SHOW, 7), '06:30', 'body-weighed', { massKg });
      }).standing ?? '';
    expect(at(58)).toContain('lies inside the 56.8 to 59 kg');
    expect(at(60)).toContain('Going back to the diet is not the answer.');
    expect(at(55)).toContain('there is room to eat more');
    expect(at(60)).not.toMatch(/fail|fault|cheat|bad|slip/i);
    expect(after(7).standing).toBeUndefined();
  });

  it('[CRS-32] the next season waits as long as the preparation took, and for the healthy range', () => {
    const { nextSeason, plan } = after(7);
    expect(nextSeason.soonest >= '2027-09-29').toBe(true);
    expect(nextSeason.soonest >= (plan.reachedBy ?? '')).toBe(true);
    expect(nextSeason.why[0]).toBe('The preparation took 22 weeks; the way back takes at least as long.');
  });

  it('[CRS-32] three months without menses send to a physician', () => {
    const cautions = after(7, (scribe) =>
      scribe.write('2027-02-01', '07:00', 'cycle-noted', { event: 'menses began' }),
    ).plan.cautions.join(' ');
    expect(cautions).toContain('No menses for three months: see a physician');
  });

  it('[CRS-32] without a show or a log it says what is lacking', () => {
    const bare: AfterwardsAsk = {
      today: SHOW,
      pace: 'in steps',
      sex: 'male',
      log: [],
      body: [bodyOn(SHOW, 80)],
    };
    const none = afterwardsNow(createLedger(), bare);
    expect(!none.ok && none.problem.code).toBe('course/no-show');
    const scribe = createScribe(4, utc);
    scribe.write(SHOW, '06:00', 'show-set', { show: 'cup', name: 'Cup', date: SHOW, target: {} });
    const unlogged = afterwardsNow(createLedger(scribe.entries), bare);
    expect(!unlogged.ok && unlogged.problem.code).toBe('course/way-back-unknown');
  });
});

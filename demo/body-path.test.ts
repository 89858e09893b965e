import { describe, expect, it } from 'vitest';
import { bodyLog } from '#core/cycle/body-log.ts';
import { readBody } from '#core/cycle/body-now.ts';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { bodyPath } from './body-path.ts';
import { demoJournal } from './journal.ts';
import { storyMs } from './scribe.ts';
import { story, utc } from './story.ts';

/** Energy of a kilogram, kcal: Hall et al. 2011, web appendix (39.5, 7.6 and 17.6 MJ), written out again here. */
const DENSITY = { fat: 39_500 / 4.184, lean: 7_600 / 4.184, glycogen: 17_600 / 4.184 };
const DAYS = 7 * story.weeks;

const path = bodyPath(1);
const on = (number: number) => {
  const day = path[number];
  if (!day) throw new RangeError(`no day ${number}`);
  return day;
};
const between = (from: number, until: number) => path.slice(from, until);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const spentIn = (from: number, until: number) =>
  sum(between(from, until).map(({ truth }) => truth.spentKcal)) / (until - from);

describe('the body of the invented athlete', () => {
  it('[DEM-02] energy closes on each day and over sixteen weeks: eaten less spent is what the tissues gained', () => {
    const stored = (number: number) => {
      const { fatKg, leanKg, glycogenKg } = on(number).truth;
      return DENSITY.fat * fatKg + DENSITY.lean * leanKg + DENSITY.glycogen * glycogenKg;
    };
    for (let number = 0; number < DAYS; number++) {
      const { eatenKcal, spentKcal } = on(number).truth;
      expect(stored(number + 1) - stored(number)).toBeCloseTo(eatenKcal - spentKcal, 5);
    }
    const balance = sum(between(0, DAYS).map(({ truth }) => truth.eatenKcal - truth.spentKcal));
    expect(balance).toBeLessThan(-20_000);
    expect(stored(DAYS) - stored(0)).toBeCloseTo(balance, 4);
  });

  it('[DEM-02] most of what goes is fat, expenditure falls along, and the scale strays from the body as scales do', () => {
    const [first, last] = [on(0).truth, on(DAYS).truth];
    const fatLost = first.fatKg - last.fatKg;
    const share = fatLost / (fatLost + first.leanKg - last.leanKg);
    expect(fatLost).toBeGreaterThan(2);
    expect(share).toBeGreaterThan(0.7);
    expect(share).toBeLessThan(0.9);
    expect(spentIn(0, 28) - spentIn(84, 112)).toBeGreaterThan(60);
    // Day-to-day spread of a morning's reading about the body: 0.35 kg (Robinson and Watson 1965) and below.
    const errors = path.map(({ scaleKg, truth }) => scaleKg - truth.massKg);
    const sd = Math.sqrt(sum(errors.map((error) => error ** 2)) / errors.length);
    expect(sd).toBeGreaterThan(0.15);
    expect(sd).toBeLessThan(0.4);
  });

  it('[DEM-03] the estimate of her journal finds her fat and what she spends, week by week', () => {
    const { answer } = ofJournal(1);
    const written = between(0, DAYS);
    const loggedShare =
      sum(written.map(({ logged }) => logged.energyKcal)) / sum(written.map(({ truth }) => truth.eatenKcal));
    const answered = answer.days.filter(({ date }) => daysBetween(story.begins, date) % 7 === 0);
    const within = (mean: number, sd: number, truth: number) => Math.abs(mean - truth) <= 1.645 * sd;
    const checks = answered.slice(2).flatMap(({ date, fatKg, maintenanceKcal }) => {
      const number = daysBetween(story.begins, date);
      // Maintenance is in her own logged kilocalories, averaged over the last seven days (EST-04).
      const spentKcal = loggedShare * spentIn(number - 7, number);
      return [
        within(fatKg.mean, fatKg.sd, on(number).truth.fatKg),
        within(maintenanceKcal.mean, maintenanceKcal.sd, spentKcal),
      ];
    });
    expect(checks.length).toBe(30);
    expect(checks.filter((fits) => fits).length).toBeGreaterThanOrEqual(27);
  });

  it('[DEM-07] what the path says she ate and weighed is what the journal adds up to', () => {
    const rows = ofJournal(1).request.days;
    for (const { date, intake, weightKg } of rows) {
      const { logged, scaleKg } = on(daysBetween(story.begins, date));
      if (weightKg !== undefined) expect(weightKg).toBeCloseTo(scaleKg, 0);
      if (date === story.today) continue;
      for (const name of ['energyKcal', 'proteinG', 'carbohydrateG', 'fatG', 'sodiumMg'] as const)
        expect(intake?.[name]).toBeCloseTo(logged[name], 0);
    }
    expect(rows.at(-2)?.date).toBe(addDays(story.today, -1));
  });
});

function ofJournal(seed: number) {
  const ledger = createLedger(demoJournal(seed));
  const { read } = kitchenNow(ledger, storyMs(story.today, story.opensAt, utc));
  const log = bodyLog(ledger, story.today, read);
  const body = log.ok ? readBody(log.value) : log;
  if (!body.ok) throw new Error(body.problem.message);
  return body.value;
}

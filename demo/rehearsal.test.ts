import { describe, expect, it } from 'vitest';
import { planLastWeek } from '#core/course/last-week.ts';
import { stretchesOf } from '#core/course/read-course.ts';
import { readBody } from '#core/cycle/body-now.ts';
import { courseAsk } from '#core/cycle/course-ask.ts';
import { jumpOf, openAsk } from '#core/cycle/course-now.ts';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { lastWeekNow } from '#core/cycle/last-week-now.ts';
import { createLedger, type Ledger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { bodyPath } from './body-path.ts';
import { demoJournal } from './journal.ts';
import { heldRehearsal } from './rehearsal.ts';
import { storyMs } from './scribe.ts';
import { story, utc } from './story.ts';

const entries = demoJournal(1);
const path = bodyPath(1);
const { fromDay, loadDays, plannedOn, target } = heldRehearsal;
const AFTER = fromDay + loadDays;
const truthOn = (number: number) => {
  const truth = path[number]?.truth;
  if (!truth) throw new RangeError(`no day ${number}`);
  return truth;
};

function courseOn(ledger: Ledger, today: string) {
  const { read } = kitchenNow(ledger, storyMs(today, '05:59', utc));
  const ask = courseAsk(ledger, today, read);
  if (!ask.ok) throw new Error(ask.problem.message);
  const body = readBody(ask.value.log);
  if (!body.ok) throw new Error(body.problem.message);
  return { ask: ask.value, course: openAsk(ask.value, body.value), read };
}

describe('the rehearsal', () => {
  it('[DEM-06] its load is the one the tool plans for her body of that week', () => {
    const { massKg, fatKg } = truthOn(plannedOn);
    const week = planLastWeek({
      show: addDays(story.begins, AFTER),
      today: addDays(story.begins, plannedOn),
      massKg,
      leanKg: massKg - fatKg,
      habit: { proteinG: 140, carbohydrateG: 171, fatG: 47, fibreG: 25 },
      wish: { loadGPerKg: target.gPerKg, loadDays },
      rehearsed: false,
    });
    const load = week.ok ? week.value.days.find(({ role }) => role === 'load') : undefined;
    expect(load).toMatchObject({
      proteinG: target.p,
      carbohydrateG: target.c,
      fatG: target.f,
      fibreMaxG: 15,
    });
  });

  it('[DEM-06] glycogen and fluid lift the scale as the tool foretold when it was planned, and are gone in a week', () => {
    const planned = addDays(story.begins, plannedOn);
    const ledger = createLedger(entries.filter(({ day }) => day <= planned));
    const [stretch] = stretchesOf(ledger);
    if (!stretch) throw new Error('no rehearsal was planned');
    const foretold = jumpOf(courseOn(ledger, planned).course, stretch)?.riseKg;
    const water = (number: number) => 3.7 * truthOn(number).glycogenKg + truthOn(number).fluidKg;
    const rise = water(AFTER) - water(fromDay);
    expect(rise).toBeGreaterThan(foretold?.q05 ?? Number.POSITIVE_INFINITY);
    expect(rise).toBeLessThan(foretold?.q95 ?? Number.NEGATIVE_INFINITY);
    // The meals of the weeks after hold more carbohydrate than the days before did.
    expect(water(AFTER + 7) - water(fromDay)).toBeLessThan(0.35 * rise);
  });

  it('[DEM-06] it was judged and is carried over; the dress rehearsal is four weeks before the show', () => {
    const ledger = createLedger(entries);
    const { ask, course, read } = courseOn(ledger, story.today);
    const { startMassKg: massKg, startFatKg: fatKg } = course;
    const now = lastWeekNow(ledger, ask, { massKg, fatKg }, {}, read);
    if (!now.ok) throw new Error(now.problem.message);
    const { rehearsals, rehearse, loadGPerKg, plan } = now.value;
    const [held, ahead] = rehearsals;
    expect(held).toMatchObject({ state: 'over', judged: { look: 4, gut: 3, again: 'as it was' } });
    expect((held?.massKg.after ?? 0) - (held?.massKg.before ?? 0)).toBeGreaterThan(1);
    expect([loadGPerKg, plan.why.some((words) => words.includes('has not been rehearsed'))]).toEqual([
      target.gPerKg,
      false,
    ]);
    expect(ahead?.state).toBe('ahead');
    expect(daysBetween(addDays(ahead?.until ?? '', 1), story.show.date)).toBe(28);
    expect(rehearse?.dressFrom).toBe(addDays(story.show.date, -35));
  });
});

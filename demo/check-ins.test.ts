import { describe, expect, it } from 'vitest';
import { acceptCorrection } from '#core/course/accept-correction.ts';
import { readBody } from '#core/cycle/body-now.ts';
import { courseAsk } from '#core/cycle/course-ask.ts';
import { courseNow, openAsk } from '#core/cycle/course-now.ts';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { standingTargets } from '#core/cycle/standing-targets.ts';
import { weekNow } from '#core/cycle/week-now.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { bodyPath } from './body-path.ts';
import { correction } from './check-ins.ts';
import { demoJournal } from './journal.ts';
import { storyMs } from './scribe.ts';
import { story, utc } from './story.ts';

const entries = demoJournal(1);
const all = createLedger(entries);
const path = bodyPath(1);
const TODAY = 7 * story.weeks;

/** Her journal as it stood on a morning, once she had weighed in, and what the tool then said of the week. */
function asked(number: number) {
  const day = addDays(story.begins, number);
  const ledger = createLedger(
    entries.filter((entry) => entry.day < day || (entry.day === day && entry.kind === 'body-weighed')),
  );
  const { read } = kitchenNow(ledger, storyMs(day, '06:20', utc));
  const ask = courseAsk(ledger, day, read);
  if (!ask.ok) throw new Error(ask.problem.message);
  const body = readBody(ask.value.log);
  if (!body.ok) throw new Error(body.problem.message);
  const now = courseNow(ask.value, body.value, openAsk(ask.value, body.value));
  const closed = all.of('check-in-closed').find((fact) => fact.day === day);
  const { proposal } = weekNow(
    ask.value,
    now,
    { sleep: 3, hunger: 3, mood: 4, joints: 3 },
    undefined,
    undefined,
  );
  return { ledger, now, proposal, decision: closed?.data.decision };
}

const trueFat = (number: number) => path[number]?.truth.fatKg ?? Number.NaN;
const change = (of: (number: number) => number, from: number, until: number) => of(until) - of(from);

/** What the estimate of a morning holds of an earlier one. */
function believed({ now }: ReturnType<typeof asked>, what: 'fatKg' | 'maintenanceKcal') {
  return (number: number) =>
    now.past.find(({ date }) => daysBetween(story.begins, date) === number)?.[what].mean ?? Number.NaN;
}

/** Slope of the morning's scale by least squares, kg a week. */
function slopeOf(from: number, until: number): number {
  const rows = path.slice(from, until + 1).map(({ scaleKg }, at) => ({ at, scaleKg }));
  const mean = (of: (row: (typeof rows)[number]) => number) =>
    rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  const [middle, level] = [mean(({ at }) => at), mean(({ scaleKg }) => scaleKg)];
  const moved = mean(({ at, scaleKg }) => (at - middle) * (scaleKg - level));
  return (7 * moved) / mean(({ at }) => (at - middle) ** 2);
}

const today = asked(TODAY);

describe('the plateau that is real', () => {
  const morning = asked(correction.day);

  it('[DEM-04] her fat stands still for three weeks, and goes again after the correction', () => {
    expect(Math.abs(change(trueFat, 44, 63))).toBeLessThan(0.1);
    expect(slopeOf(42, 63)).toBeGreaterThan(0);
    expect(change(trueFat, 64, 91)).toBeLessThan(-0.7);
    expect(change(believed(today, 'fatKg'), 64, 91)).toBeLessThan(-0.7);
  });

  it('[DEM-04] the tool sees her spend less by then, and asks to correct', () => {
    expect(change(believed(morning, 'maintenanceKcal'), 28, 63)).toBeLessThan(-80);
    expect(morning.now.answer.verdict).toBe('behind');
    expect([morning.proposal.decision, morning.decision]).toEqual(['correct', 'correct']);
  });

  it('[DEM-04] the correction is the smallest of food alone that it offers, and its targets are the ones that stand', () => {
    const { ledger, now } = morning;
    const { fatKg, massKg, from, goesOn } = now;
    const offered = now.answer.corrections.filter(({ change: one }) => one.cardioKcal === undefined);
    expect(offered[0]?.change).toEqual({ energyKcal: correction.energyKcal });
    expect(now.answer.probability).toBeCloseTo(correction.before, 2);
    expect(offered[0]?.probabilityAfter).toBeCloseTo(correction.after, 2);
    const accepted = acceptCorrection({
      change: { energyKcal: correction.energyKcal },
      from,
      probabilityBefore: correction.before,
      probabilityAfter: correction.after,
      why: [],
      macro: 'both',
      standing: standingTargets(ledger, from, goesOn),
      sex: story.sex,
      massKg,
      leanKg: massKg - fatKg,
    });
    const written = all.of('target-set').filter(({ data }) => data.from === from);
    expect(accepted.ok && accepted.value.targets).toEqual(written.map(({ data }) => data));
  });
});

describe('the plateau that is water', () => {
  it('[DEM-05] the scale stands for three weeks while her fat goes, held up by water that the model knows', () => {
    expect(slopeOf(91, TODAY)).toBeGreaterThan(-0.15);
    expect(change(trueFat, 91, TODAY)).toBeLessThan(-0.4);
    expect(change(believed(today, 'fatKg'), 91, TODAY)).toBeLessThan(-0.3);
    const water = (number: number) => {
      const {
        glycogenKg = Number.NaN,
        fluidKg = Number.NaN,
        otherWaterKg = Number.NaN,
      } = path[number]?.truth ?? {};
      return 3.7 * glycogenKg + fluidKg + otherWaterKg;
    };
    expect(change(water, 94, TODAY)).toBeGreaterThan(0.4);
  });

  it('[DEM-05] the tool holds, for she spends what she spent: so the week before, so today', () => {
    const spent = believed(today, 'maintenanceKcal');
    expect(change(spent, 91, TODAY)).toBeGreaterThan(-20);
    const before = asked(TODAY - 7);
    expect([before.now.answer.verdict, before.proposal.decision, before.decision]).toEqual([
      'on course',
      'hold',
      'hold',
    ]);
    expect([today.now.answer.verdict, today.proposal.decision]).toEqual(['on course', 'hold']);
  });
});

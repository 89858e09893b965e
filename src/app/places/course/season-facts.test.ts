import { describe, expect, it } from 'vitest';
import { createScribe } from '../../../../demo/scribe.ts';
import { demoJournal } from '../../../../demo/journal.ts';
import { story, utc } from '../../../../demo/story.ts';
import { planLastWeek } from '#core/course/last-week.ts';
import { stretchIds } from '#core/course/stretch-ids.ts';
import { showsFrom, stretchesOf } from '#core/course/read-course.ts';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import { afterwardsNow } from '#core/cycle/afterwards-now.ts';
import { shapeOfDay } from '#core/day/shape-of-day.ts';
import { targetsOfDay } from '#core/day/targets-of-day.ts';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import { oneEntry } from '../../../../test/journal/one-entry.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { NewFact } from '../../state/open-journal.ts';
import { afterwardsFacts } from './afterwards-facts.ts';
import { draftOfDate, datesFrom } from './date-draft.ts';
import { lastWeekFacts, rehearsalFacts, rehearsalOff, type Writing } from './last-week-facts.ts';
import { draftOfShow, showFrom } from './show-draft.ts';
import { stretchTitle } from './stretch-title.ts';
import { draftOfTimes, shapeOfShowDay, timesFrom } from './show-times-draft.ts';

const { today } = story;
const SHOW = addDays(today, 3);
const ids = stretchIds(story.show.id);
/** The demonstration before any rehearsal was planned. */
const demo = demoJournal(1).filter(
  ({ kind, data }) => kind !== 'stretch-planned' && !(kind === 'event-dated' && data['type'] === 'rehearsal'),
);

function near(): GrowingLedger {
  const ledger = createLedger(demo);
  const scribe = createScribe(9, utc);
  const show = ledger.latest('show-set')?.data;
  if (!show) throw new Error('the story has no show');
  scribe.write(today, '11:00', 'show-set', { ...show, date: SHOW });
  ledger.add(scribe.entries);
  return ledger;
}

/** Takes facts in as the state does: what gives way is removed, what is new stands on its day. */
function take(ledger: GrowingLedger, { facts, removing }: Writing): void {
  for (const id of removing)
    ledger.add([oneEntry({ kind: 'entry-removed', data: {}, day: today, replaces: id })]);
  for (const fact of facts) ledger.add([entryOf(fact)]);
}

function entryOf({ kind, data, day = today }: NewFact): Entry {
  return oneEntry({ kind, data, day, at: `${day}T12:00:00+00:00` });
}

/** A last week of so many loading days, as its door answers it. */
function weekOf(loadDays: number, loadGPerKg = 8): LastWeekNow {
  const shows = showsFrom(near(), today);
  const [show] = shows;
  const plan = planLastWeek({
    show: SHOW,
    today,
    massKg: 62,
    leanKg: 50,
    habit: { proteinG: 130, carbohydrateG: 200, fatG: 40, waterMl: 3000 },
    wish: { loadDays, loadGPerKg },
    rehearsed: true,
  });
  if (!show || !plan.ok) throw new Error('the week cannot be planned');
  return {
    show: show.data,
    daysOut: 3,
    usual: { proteinG: 130, carbohydrateG: 200, fatG: 40, loggedDays: 14 },
    loadGPerKg,
    loadDays,
    plan: plan.value,
    load: undefined,
    mayAdopt: true,
    adopted: undefined,
    rehearsals: [],
    rehearse: undefined,
  };
}

const carbohydrateOn = (ledger: GrowingLedger, day: string) =>
  targetsOfDay(ledger, day, shapeOfDay(ledger, day)?.dayKind ?? 'rest')?.data.carbohydrateG;

describe('[CRS-28] the last week adopted', () => {
  it('[CRS-28] Day plans from its targets, the forecast knows its stretches, the last two days train nothing', () => {
    const ledger = near();
    take(ledger, lastWeekFacts(ledger, weekOf(2)));
    expect([1, 2, 3].map((d) => carbohydrateOn(ledger, addDays(today, d)))).toEqual([495, 495, 248]);
    expect(carbohydrateOn(ledger, today)).toBe(185);
    expect(targetsOfDay(ledger, addDays(today, 1), 'rest')?.data).toMatchObject({
      fibreMaxG: 15,
      waterMl: 3000,
    });
    expect(stretchesOf(ledger).map(({ from, until }) => [from, until])).toEqual([
      [addDays(today, 1), addDays(today, 2)],
      [SHOW, SHOW],
    ]);
    // Friday and Saturday are training days of hers.
    const trains = [0, 1, 2].map((d) => shapeOfDay(ledger, addDays(today, d))?.training !== undefined);
    expect(trains).toEqual([true, false, false]);
    expect(shapeOfDay(ledger, addDays(today, 1))?.cardio).toHaveLength(1);
  });

  it('[CRS-28] adopted anew it replaces what was adopted, and no load takes the stretches back', () => {
    const ledger = near();
    take(ledger, lastWeekFacts(ledger, weekOf(2)));
    take(ledger, lastWeekFacts(ledger, weekOf(1, 7)));
    expect([1, 2, 3].map((d) => carbohydrateOn(ledger, addDays(today, d)))).toEqual([135, 435, 218]);
    take(ledger, lastWeekFacts(ledger, weekOf(0)));
    expect(carbohydrateOn(ledger, addDays(today, 2))).toBe(135);
    expect(stretchesOf(ledger)).toEqual([]);
  });
});

describe('[CRS-29] the rehearsal planned', () => {
  it('[CRS-29] has the same load before its morning, and a date for photographs; moved, nothing stays behind', () => {
    const ledger = near();
    const on = (day: string) => ({ today, on: day, event: `rehearsal ${day}` });
    take(ledger, rehearsalFacts(ledger, weekOf(2), on(addDays(today, 10))));
    expect([8, 9, 10].map((d) => carbohydrateOn(ledger, addDays(today, d)))).toEqual([495, 495, 135]);
    take(ledger, rehearsalFacts(ledger, weekOf(2), on(addDays(today, 12))));
    expect([9, 10, 11].map((d) => carbohydrateOn(ledger, addDays(today, d)))).toEqual([185, 495, 495]);
    const dated = ledger.of('event-dated').filter(({ data }) => data.type === 'rehearsal');
    expect(dated.map(({ data }) => data.date)).toEqual([addDays(today, 12)]);
    expect(stretchesOf(ledger).map(({ from }) => from)).toEqual([addDays(today, 10)]);
    expect(ids.rehearsal).not.toBe(ids.load);
  });

  it('[CRS-29] called off, its load, its targets and its date are gone; on Course it has its own name and screen', () => {
    const ledger = near();
    const morning = addDays(today, 10);
    take(ledger, rehearsalFacts(ledger, weekOf(2), { today, on: morning, event: 'rehearsal' }));
    const [stretch] = stretchesOf(ledger);
    if (!stretch) throw new Error('nothing was planned');
    const { title, href } = stretchTitle(ledger, story.show.id, stretch);
    expect([title, href]).toEqual(['Rehearsal of the load, 12 March to 13 March', '#/course/rehearsal']);
    take(ledger, rehearsalOff(ledger, story.show.id, today));
    expect(stretchesOf(ledger)).toEqual([]);
    expect(carbohydrateOn(ledger, addDays(morning, -1))).toBe(185);
    expect(ledger.of('event-dated').some(({ data }) => data.date === morning)).toBe(false);
  });
});

describe('[CRS-32] the way back adopted', () => {
  const wayBack = (pace: 'at once' | 'in steps') => {
    const ledger = near();
    const believed = (mean: number) => ({ mean, sd: 1 });
    const now = afterwardsNow(ledger, {
      today: SHOW,
      pace,
      sex: 'female',
      log: [{ date: today, intake: { energyKcal: 1700, proteinG: 140, carbohydrateG: 160, fatG: 48 } }],
      body: [
        {
          date: SHOW,
          massKg: believed(60),
          fatKg: believed(9),
          leanKg: believed(51),
          maintenanceKcal: believed(2100),
        },
      ],
    });
    if (!now.ok) throw new Error(now.problem.message);
    const facts = afterwardsFacts(ledger, now.value, { pace, today: SHOW, event: 'panel' });
    take(ledger, { facts, removing: [] });
    return ledger;
  };
  const kcalOn = (ledger: GrowingLedger, daysAfter: number) => {
    const day = addDays(SHOW, daysAfter);
    const target = targetsOfDay(ledger, day, shapeOfDay(ledger, day)?.dayKind ?? 'rest')?.data;
    return target && 4 * target.proteinG + 4 * target.carbohydrateG + 9 * target.fatG;
  };
  const tensOf = (kcal: number | undefined) => Math.round((kcal ?? 0) / 10);

  it('[CRS-32] sets a target at each rise of energy and dates a physician once', () => {
    const atOnce = wayBack('at once');
    expect([1, 8, 60].map((d) => tensOf(kcalOn(atOnce, d)))).toEqual([210, 227, 227]);
    const inSteps = wayBack('in steps');
    expect([1, 8, 15, 22, 80].map((d) => tensOf(kcalOn(inSteps, d)))).toEqual([185, 200, 215, 227, 227]);
    const panels = atOnce.of('event-dated').filter(({ data }) => data.title.startsWith('Blood panel'));
    expect(panels.map(({ data }) => data.date)).toEqual([addDays(SHOW, 75)]);
    expect(atOnce.latest('way-back-adopted')?.data.weeks).toHaveLength(12);
  });
});

describe('[CRS-30] the times of the show day as typed', () => {
  it('[CRS-30] kept and read back the same; the day is shaped from waking to well after the last call', () => {
    const typed = { wake: 330, travelMinutes: 40, checkIn: undefined, stage: 1200, finals: 1320 };
    const times = timesFrom(typed, 'cup');
    if (!times.ok) throw new Error(times.problem.message);
    expect(times.value).toEqual({
      show: 'cup',
      wake: '05:30',
      stage: '20:00',
      finals: '22:00',
      travelMinutes: 40,
    });
    expect(draftOfTimes(times.value, undefined)).toEqual(typed);
    expect(shapeOfShowDay(times.value, undefined)).toEqual({
      scope: { of: 'day' },
      wake: '05:30',
      sleep: '25:00',
      dayKind: 'rest',
    });
  });

  it('[CRS-30] what is lacking or cannot be is said at its field', () => {
    const path = (change: object) => {
      const times = timesFrom({ wake: 330, travelMinutes: 40, stage: 780, ...change }, 'cup');
      return times.ok ? undefined : times.problem.path;
    };
    expect([
      path({ wake: undefined }),
      path({ stage: undefined }),
      path({ travelMinutes: undefined }),
      path({ wake: 700 }),
      path({ finals: 600 }),
    ]).toEqual(['wake', 'stage', 'travelMinutes', 'wake', 'finals']);
  });
});

describe('[CRS-26] dates and shows as typed', () => {
  const show = { show: 'cup', date: '2027-05-01' };

  it('[CRS-26] a date without a name takes that of its kind; weekly ones go up to the show', () => {
    const typed = { ...draftOfDate(undefined), date: '2027-04-10', at: 1080, minutes: 30 };
    const once = datesFrom(typed, show);
    expect(once).toEqual({
      ok: true,
      value: [
        {
          title: 'Posing practice',
          type: 'posing practice',
          date: '2027-04-10',
          at: '18:00',
          minutes: 30,
          show: 'cup',
        },
      ],
    });
    const weekly = datesFrom({ ...typed, weekly: true }, show);
    expect(weekly.ok && weekly.value.map(({ date }) => date)).toEqual([
      '2027-04-10',
      '2027-04-17',
      '2027-04-24',
    ]);
    const late = datesFrom({ ...typed, date: '2027-05-02', weekly: true }, show);
    expect(!late.ok && late.problem.path).toBe('date');
    const none = datesFrom({ ...typed, date: '' }, show);
    expect(!none.ok && none.problem.path).toBe('date');
  });

  it('[CRS-26] a show keeps the clocks of its city and the caps of its class', () => {
    const typed = {
      ...draftOfShow(undefined),
      name: 'Harbour Cup',
      date: '2027-05-01',
      zone: 'Pacific/Auckland',
      classMaxKg: 70,
      classMinKg: 62,
      classHeightMaxCm: 168,
    };
    const kept = showFrom(typed, 'cup', '2027-03-01');
    expect(kept.ok && kept.value).toMatchObject({
      zone: 'Pacific/Auckland',
      class: {
        name: 'up to 70 kg, from 62 kg, up to 168 cm',
        massMaxKg: 70,
        massMinKg: 62,
        heightMaxCm: 168,
      },
    });
    const crossed = showFrom({ ...typed, classMinKg: 71 }, 'cup', '2027-03-01');
    expect(!crossed.ok && crossed.problem.path).toBe('classMinKg');
  });
});

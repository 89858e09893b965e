import { beforeAll, describe, expect, it } from 'vitest';
import { createScribe } from '../../../demo/scribe.ts';
import { demoJournal } from '../../../demo/journal.ts';
import { story, utc } from '../../../demo/story.ts';
import { stretchIds } from '../course/stretch-ids.ts';
import type { Entry } from '../journal/entry.ts';
import { createLedger, type Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { readBody } from './body-now.ts';
import { courseAsk, plannedDays } from './course-ask.ts';
import { jumpOf, openAsk } from './course-now.ts';
import { kitchenNow } from './kitchen-now.ts';
import { lastWeekNow, type LastWeekWish } from './last-week-now.ts';
import { rehearsalsOf } from './rehearsals.ts';

const SHOW = '2027-03-10';
const body = { massKg: 62.1, fatKg: 12.4 };
const { load, rehearsal } = stretchIds(story.show.id);
/** The demonstration before any rehearsal was planned. */
const demo = demoJournal(1).filter(({ kind }) => kind !== 'stretch-planned' && kind !== 'rehearsal-judged');

/** The demonstration with its show so near, and more written since. */
function near(date: string, ...more: readonly Entry[]): Ledger {
  const ledger = createLedger(demo);
  const scribe = createScribe(9, utc);
  const show = ledger.latest('show-set')?.data;
  if (!show) throw new Error('the story has no show');
  scribe.write(story.today, '11:00', 'show-set', { ...show, date });
  ledger.add([...scribe.entries, ...more]);
  return ledger;
}

function written(write: (scribe: ReturnType<typeof createScribe>) => void): readonly Entry[] {
  const scribe = createScribe(10, utc);
  write(scribe);
  return scribe.entries;
}

function weekOf(ledger: Ledger, wish: LastWeekWish = {}, today: string = story.today) {
  const { read } = kitchenNow(ledger, Date.parse(`${today}T12:00:00Z`));
  const ask = courseAsk(ledger, today, read);
  if (!ask.ok) throw new Error(ask.problem.message);
  const week = lastWeekNow(ledger, ask.value, body, wish, read);
  if (!week.ok) throw new Error(week.problem.message);
  return week.value;
}

describe('[CRS-28] the last week as the journal has it', () => {
  it('[CRS-28] habits come from the log, the load from the body; unknown water stays unknown until it is said', () => {
    const week = weekOf(near(SHOW));
    expect(week.mayAdopt).toBe(true);
    expect(week.usual.loggedDays).toBe(13);
    expect(week.usual.fibreG).toBeGreaterThan(10);
    expect(week.usual.waterMl).toBeUndefined();
    expect(week.plan.days[0]).toMatchObject({ date: story.today, role: 'taper' });
    expect(week.load).toMatchObject({ from: '2027-03-08', until: '2027-03-09', carbohydrateG: 495 });
    const said = weekOf(near(SHOW), { usualWaterMl: 3500, loadGPerKg: 6, loadDays: 1 });
    expect(said.plan.days.at(-1)?.waterMl).toBe(3500);
    expect(said.load).toMatchObject({ from: '2027-03-09', until: '2027-03-09', carbohydrateG: 375 });
  });

  it('[CRS-28] three drinks a fortnight tell how much is drunk', () => {
    const drunk = written((scribe) => {
      for (const back of [5, 4, 3])
        for (const clock of ['10:00', '15:00'])
          scribe.write(addDays(story.today, -back), clock, 'water-drunk', {
            drink: 'water',
            millilitres: 1500,
          });
    });
    expect(weekOf(near(SHOW, ...drunk)).usual.waterMl).toBe(3000);
  });

  it('[CRS-28] further out than three weeks it is a look ahead that cannot be adopted', () => {
    const week = weekOf(near('2027-05-01'));
    expect([week.mayAdopt, week.adopted]).toEqual([false, undefined]);
    expect(week.plan.days.at(-1)).toMatchObject({ date: '2027-05-01', role: 'show' });
    expect(week.rehearse).toEqual({ from: '2027-03-05', dressFrom: '2027-03-27', until: '2027-04-10' });
  });
});

describe('[CRS-29] the rehearsal', () => {
  const held = (again: 'as it was' | 'with less' | 'not at all') =>
    written((scribe) => {
      scribe.write('2027-02-20', '09:00', 'stretch-planned', {
        stretch: rehearsal,
        type: 'higher-carbohydrate days',
        from: '2027-02-23',
        until: '2027-02-24',
        carbohydrateG: 440,
      });
      for (const [day, photo] of [
        ['2027-02-22', 'before'],
        ['2027-02-25', 'after'],
      ] as const)
        scribe.write(day, '08:00', 'photo-taken', { photo, view: 'front', widthPx: 900, heightPx: 1600 });
      scribe.write('2027-02-26', '08:00', 'rehearsal-judged', {
        show: story.show.id,
        from: '2027-02-23',
        until: '2027-02-24',
        loadGPerKg: 7,
        loadDays: 2,
        look: 4,
        gut: 2,
        again,
        lessons: 'White rice sat well, oats did not.',
      });
    });

  it('[CRS-29] both mornings and both photographs stand beside each other', () => {
    const [one] = rehearsalsOf(near(SHOW, ...held('as it was')), story.show.id, story.today);
    expect(one).toMatchObject({ state: 'over', carbohydrateG: 440 });
    expect(one?.massKg.before).toBeGreaterThan(55);
    expect(one?.massKg.after).toBeGreaterThan(55);
    expect(one?.photos.map(({ before, after }) => [before.data.photo, after.data.photo])).toEqual([
      ['before', 'after'],
    ]);
  });

  it('[CRS-29] its judgement is the default of the load, and it counts as rehearsed', () => {
    const loads = (['as it was', 'with less', 'not at all'] as const).map((again) => {
      const { loadGPerKg, loadDays, plan } = weekOf(near(SHOW, ...held(again)));
      return [loadGPerKg, loadDays, plan.why.some((words) => words.includes('has not been rehearsed'))];
    });
    expect(loads).toEqual([
      [7, 2, false],
      [5.5, 2, false],
      [7, 0, false],
    ]);
  });

  it('[CRS-29] one still ahead gives way to the newest, one that was held stays', () => {
    const plan = (from: string) =>
      ({ stretch: rehearsal, type: 'higher-carbohydrate days', from, until: addDays(from, 1) }) as const;
    const planned = written((scribe) => {
      scribe.write('2027-02-01', '09:00', 'stretch-planned', plan('2027-02-10'));
      scribe.write('2027-02-20', '09:00', 'stretch-planned', plan('2027-03-14'));
      scribe.write('2027-02-21', '09:00', 'stretch-planned', plan('2027-03-20'));
    });
    expect(rehearsalsOf(near(SHOW, ...planned), story.show.id, story.today).map(({ from }) => from)).toEqual([
      '2027-02-10',
      '2027-03-20',
    ]);
  });
});

describe('[CRS-29] when a rehearsal is held', () => {
  const judgedWith = (date: string, until: string) =>
    weekOf(
      near(
        date,
        ...written((scribe) => {
          scribe.write('2027-02-01', '09:00', 'stretch-planned', {
            stretch: rehearsal,
            type: 'higher-carbohydrate days',
            from: addDays(until, -1),
            until,
            carbohydrateG: 440,
          });
          scribe.write('2027-03-03', '09:00', 'rehearsal-judged', {
            show: story.show.id,
            from: addDays(until, -1),
            until,
            loadGPerKg: 7,
            loadDays: 2,
            again: 'as it was',
          });
        }),
      ),
    ).rehearse;

  it('[CRS-29] from twelve weeks before on; an early one leaves the dress rehearsal to be held', () => {
    expect(weekOf(near('2027-06-20')).rehearse?.from).toBe('2027-03-28');
    expect(judgedWith('2027-05-01', '2027-02-24')?.dressFrom).toBe('2027-03-27');
  });

  it('[CRS-29] once the dress rehearsal was judged, none is asked for; nor later than three weeks before', () => {
    expect(judgedWith('2027-03-27', '2027-02-24')).toBeUndefined();
    expect(judgedWith('2027-04-05', '2027-02-24')?.until).toBe('2027-03-15');
    expect(weekOf(near('2027-03-25')).rehearse).toBeUndefined();
  });
});

describe('[CRS-33] a stretch with its targets written', () => {
  let rises: (number | undefined)[] = [];

  beforeAll(() => {
    const target = { from: '2027-03-08', until: '2027-03-09', dayKind: 'every', basis: 'course' } as const;
    const adopted = written((scribe) => {
      scribe.write(story.today, '12:00', 'stretch-planned', {
        stretch: load,
        type: 'higher-carbohydrate days',
        from: target.from,
        until: target.until,
        energyKcal: 2800,
        carbohydrateG: 495,
      });
      scribe.write(story.today, '12:00', 'target-set', {
        ...target,
        proteinG: 115,
        carbohydrateG: 495,
        fatG: 31,
      });
    });
    const stretch = {
      type: 'higher-carbohydrate days',
      from: target.from,
      until: target.until,
      energyKcal: 2800,
      carbohydrateG: 495,
    } as const;
    rises = [near(SHOW), near(SHOW, ...adopted)].map((ledger) => {
      const ask = courseAsk(ledger, story.today, () => undefined);
      if (!ask.ok) throw new Error(ask.problem.message);
      const read = readBody(ask.value.log);
      if (!read.ok) throw new Error(read.problem.message);
      return jumpOf(openAsk(ask.value, read.value), stretch)?.riseKg.mean;
    });
  });

  it('[CRS-33] foretells the same rise after it was adopted as before', () => {
    expect(rises[0]).toBeGreaterThan(0.5);
    expect(rises[1]).toBeCloseTo(rises[0] ?? 0, 1);
  });

  it('[CRS-33] the targets of its days are the plan of Day all the same', () => {
    const adopted = near(
      SHOW,
      ...written((scribe) =>
        scribe.write(story.today, '12:00', 'target-set', {
          from: '2027-03-08',
          until: '2027-03-09',
          dayKind: 'every',
          basis: 'course',
          proteinG: 115,
          carbohydrateG: 495,
          fatG: 31,
        }),
      ),
    );
    const days = plannedDays(adopted, '2027-03-08', '2027-03-10').map(({ carbohydrateG }) => carbohydrateG);
    expect(days.slice(0, 2)).toEqual([495, 495]);
    expect(days[2]).toBeLessThan(200);
  });
});

describe('[CRS-28] the load in the estimate', () => {
  it('[CRS-28] a load eaten as planned, and a scale that rises by its water, are not read as fat', () => {
    const ledger = near(SHOW);
    const ask = courseAsk(ledger, story.today, () => undefined);
    if (!ask.ok) throw new Error(ask.problem.message);
    const last = ask.value.log.days.findLast(({ weightKg }) => weightKg !== undefined)?.weightKg ?? 0;
    const intake = { energyKcal: 2770, proteinG: 115, carbohydrateG: 505, fatG: 32 };
    const loaded = [0, 0.8, 1.5].map((riseKg, d) => ({
      date: addDays(story.today, d + 1),
      weightKg: last + riseKg,
      ...(d < 2 && { intake }),
    }));
    const days = [...ask.value.log.days.filter(({ date }) => date <= story.today), ...loaded];
    const read = readBody({ ...ask.value.log, days, asOf: addDays(story.today, 3) });
    if (!read.ok) throw new Error(read.problem.message);
    const on = (d: number) => read.value.answer.days.find(({ date }) => date === addDays(story.today, d));
    const rise = (on(3)?.massKg.mean ?? 0) - (on(1)?.massKg.mean ?? 0);
    const fat = (on(3)?.fatKg.mean ?? 0) - (on(1)?.fatKg.mean ?? 0);
    expect(rise).toBeGreaterThan(0.5);
    expect(fat).toBeLessThan(0.2);
  });
});

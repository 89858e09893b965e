import { describe, expect, it } from 'vitest';
import { demoJournal } from '../../../demo/journal.ts';
import { createScribe } from '../../../demo/scribe.ts';
import { story, utc } from '../../../demo/story.ts';
import { createLedger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { readBody } from './body-now.ts';
import { courseAsk, type CourseAsk } from './course-ask.ts';
import { courseNow, openAsk, tryChange } from './course-now.ts';
import { openDays } from './open-days.ts';
import { standingTargets } from './standing-targets.ts';
import { isCheckInDue, weekNow } from './week-now.ts';

const ledger = createLedger(demoJournal(1));

function opened() {
  const ask = courseAsk(ledger, story.today, () => undefined);
  if (!ask.ok) throw new Error(ask.problem.message);
  const read = readBody(ask.value.log);
  if (!read.ok) throw new Error(read.problem.message);
  const course = openAsk(ask.value, read.value);
  return { ask: ask.value, course, now: courseNow(ask.value, read.value, course) };
}

/** A journal of one's own with a show and so many days of mornings and food. */
function young(days: number) {
  const scribe = createScribe(2, utc);
  const first = '2027-01-04';
  scribe.write(first, '06:00', 'athlete-described', {
    birthYear: 1994,
    sex: 'female',
    heightCm: 170,
    units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
    cautionsRead: [],
  });
  scribe.write(first, '06:01', 'show-set', {
    show: 'one',
    name: 'Harbour Cup',
    date: '2027-05-08',
    target: { bodyFatPercentMax: 16 },
  });
  for (let d = 0; d < days; d++)
    scribe.write(addDays(first, d), '06:10', 'body-weighed', { massKg: 68.4 - 0.1 * d });
  return { ledger: createLedger(scribe.entries), today: addDays(first, days - 1), scribe };
}

describe('[RUN-25] the course as the journal has it', () => {
  it('[RUN-25] the plan is the targets day by day, and the demonstration lands with a chance', () => {
    const { ask, now } = opened();
    expect(ask.planned.filter(({ date }) => date > story.today).length).toBe(58);
    expect(now.plannedDays).toBe(58);
    expect(now.answer.probability).toBeGreaterThan(0.1);
    expect(now.answer.probability).toBeLessThan(0.9);
    expect(now.fan.dates.at(-1)?.date).toBe(story.show.date);
    expect(now.held.at(-1)?.date).toBe(story.today);
  });

  it('[RUN-25] a change tried is the same chance at other food, and names the limit it runs against', () => {
    const { course, now } = opened();
    const less = tryChange(course, { energyKcal: -300 });
    expect(less.fan.probability).toBeGreaterThan(now.answer.probability);
    expect(less.limit?.limit).toBe('energy-availability');
    expect(tryChange(course, { energyKcal: 100 }).limit).toBeUndefined();
  });

  it('[RUN-25] two days of data are answered, wide, and called too little', () => {
    const { ledger: two, today } = young(2);
    const ask = courseAsk(two, today, () => undefined);
    if (!ask.ok) throw new Error(ask.problem.message);
    const read = readBody(ask.value.log);
    if (!read.ok) throw new Error(read.problem.message);
    const now = courseNow(ask.value, read.value, openAsk(ask.value, read.value));
    expect(now.answer.verdict).toBe('too little evidence');
    const { q05, q95 } = now.answer.arrival.bodyFatPercent;
    expect(q95 - q05).toBeGreaterThan(8);
  });

  it('[CRS-15] two shows in one season have a landing each, and holding is set beside going on', () => {
    const { scribe, today } = young(20);
    scribe.write(today, '07:00', 'show-set', {
      show: 'two',
      name: 'Autumn Cup',
      date: '2027-06-05',
      target: { bodyFatPercentMax: 16 },
    });
    const ask = courseAsk(createLedger(scribe.entries), today, () => undefined);
    if (!ask.ok) throw new Error(ask.problem.message);
    const read = readBody(ask.value.log);
    if (!read.ok) throw new Error(read.problem.message);
    const { season } = courseNow(ask.value, read.value, openAsk(ask.value, read.value));
    expect(season?.landings.map(({ show }) => show)).toEqual(['one', 'two']);
    expect(season?.between).toHaveLength(1);
    expect(season?.between[0]?.weeks).toBe(4);
  });

  it('[RUN-25] no show, no target, a show too far: what is lacking is said', () => {
    const lacking = (change: (scribe: ReturnType<typeof young>['scribe']) => void) => {
      const { scribe, today } = young(3);
      change(scribe);
      const ask = courseAsk(createLedger(scribe.entries), today, () => undefined);
      return ask.ok ? undefined : ask.problem.code;
    };
    const show = { show: 'one', name: 'Harbour Cup', date: '2027-05-08', target: {} } as const;
    expect(lacking((scribe) => scribe.write('2027-01-06', '07:00', 'show-set', show))).toBe(
      'course/no-target-yet',
    );
    expect(
      lacking((scribe) => scribe.write('2027-01-06', '07:00', 'show-set', { ...show, withdrawn: true })),
    ).toBe('course/no-show');
    expect(
      lacking((scribe) => scribe.write('2027-01-06', '07:00', 'show-set', { ...show, date: '2029-05-08' })),
    ).toBe('course/show-too-far');
  });
});

describe('[RUN-24] days that are asked about', () => {
  it('[RUN-24] a day with some meals, or none, is asked until it is closed or totalled', () => {
    const { scribe, today } = young(5);
    expect(openDays(createLedger(scribe.entries), today).map(({ day }) => day)).toEqual([
      '2027-01-07',
      '2027-01-06',
      '2027-01-05',
      '2027-01-04',
    ]);
    scribe.write('2027-01-08', '07:00', 'intake-totalled', { of: '2027-01-06', energyKcal: 0, fasted: true });
    scribe.write('2027-01-08', '07:01', 'intake-totalled', { of: '2027-01-05', energyKcal: 1900 });
    expect(openDays(createLedger(scribe.entries), today).map(({ day }) => day)).toEqual([
      '2027-01-07',
      '2027-01-04',
    ]);
    expect(openDays(ledger, story.today)).toEqual([]);
  });
});

describe('[RUN-26] targets that stand', () => {
  it('[RUN-26] the week by kind of day; without any, what is eaten on average', () => {
    const { now } = opened();
    const standing = standingTargets(ledger, now.from, now.goesOn);
    const days = new Map(standing.map(({ target, daysAWeek }) => [target.dayKind, daysAWeek]));
    expect(days).toEqual(
      new Map([
        ['rest', 2],
        ['training', 5],
      ]),
    );
    const none = standingTargets(createLedger(), now.from, now.goesOn);
    expect(none).toMatchObject([{ daysAWeek: 7, target: { dayKind: 'every', proteinG: 140 } }]);
  });
});

describe('[RUN-27] the weekly check-in', () => {
  it('[RUN-27] is due a week after the last one, and gathers the week that ended yesterday', () => {
    expect(isCheckInDue(ledger, story.today)).toBe(true);
    expect(isCheckInDue(ledger, addDays(story.today, -1))).toBe(false);
    const { ask, now } = opened();
    const week = weekNow(ask, now, { sleep: 4 }, undefined, undefined);
    expect(week.evidence.thisWeek).toMatchObject({ until: '2027-03-03', loggedDays: 7 });
    expect(week.proposal.decision).toBe('hold');
    const thin: CourseAsk = {
      ...ask,
      log: { ...ask.log, days: ask.log.days.filter(({ date }) => date < '2027-02-27') },
    };
    expect(weekNow(thin, now, {}, undefined, undefined).proposal.decision).toBe('more evidence');
  });
});

import { describe, expect, it } from 'vitest';
import { momentInZone, offsetInZone } from '#outside/time-zones/time-zones.ts';
import { DAY, type DayStep, dayJournal, dayMs } from '../../../test/journal/day-journal.ts';
import { parseClock } from '../units/clock.ts';
import { daySheet } from './day-sheet.ts';
import { clockThere, daysOutThere, todayThere } from './days-out.ts';
import { runSheet } from './run-sheet.ts';
import { showDayNow } from './show-day-now.ts';

const show = { show: 'cup', name: 'Harbour Cup', date: DAY, target: { bodyFatPercentMax: 12 } } as const;
const showDay: readonly DayStep[] = [
  ['04:00', 'show-set', show],
  ['04:01', 'day-shaped', { scope: { of: 'day' }, wake: '05:30', sleep: '22:00' }],
  [
    '04:02',
    'target-set',
    {
      from: DAY,
      until: DAY,
      dayKind: 'every',
      basis: 'course',
      proteinG: 120,
      carbohydrateG: 250,
      fatG: 32,
    },
  ],
  [
    '04:03',
    'show-day-timed',
    { show: 'cup', wake: '05:30', checkIn: '09:00', stage: '13:00', finals: '18:00', travelMinutes: 45 },
  ],
];

const here = (clock: string) => ({ nowMs: dayMs(clock), hereMinutes: 0, thereMinutes: 0 });
const nowOf = (clock: string, ...more: readonly DayStep[]) =>
  showDayNow(dayJournal(...showDay, ...more), show, DAY, here(clock), () => undefined);
const rowAt = (day: ReturnType<typeof nowOf>, type: string) =>
  day.rows.find(({ task }) => task.type === type)?.task.at;

describe('[CRS-30] the show day as the journal has it', () => {
  it('[CRS-30] the day stands in time order with its meals sharing out the day of targets', () => {
    const day = nowOf('05:00');
    expect(day.rows.map(({ task }) => task.type)).toEqual([
      'wake',
      'meal',
      'leave',
      'meal',
      'check-in',
      'meal',
      'last touches',
      'pump-up',
      'stage',
      'finals',
    ]);
    const carbohydrate = day.rows.reduce((sum, { task }) => sum + (task.meal?.carbohydrateG ?? 0), 0);
    expect(carbohydrate).toBe(250);
    expect([day.daysOut, day.stageAt, day.movedBy]).toEqual([0, 780, 0]);
  });

  it('[CRS-30] next is the first line still to come; what was left out long ago is left out', () => {
    const nextAt = (clock: string, ...more: readonly DayStep[]) =>
      nowOf(clock, ...more).rows.find(({ next }) => next)?.task.type;
    expect(nextAt('06:10')).toBe('meal');
    expect(nextAt('08:05', ['08:00', 'show-task-done', { show: 'cup', task: 'leave' }])).toBe('meal');
    expect(nextAt('12:55')).toBe('last touches');
    expect(nextAt('12:55', ['12:50', 'show-task-done', { show: 'cup', task: 'pump-up' }])).toBe('stage');
  });

  it('[CRS-30] a stage moved twice moves what hangs on it twice, and new times begin anew', () => {
    const late: readonly DayStep[] = [
      ['11:00', 'stage-moved', { show: 'cup', stage: '13:30', now: '11:00' }],
      ['12:30', 'stage-moved', { show: 'cup', stage: '14:00', now: '12:30' }],
    ];
    const moved = nowOf('12:31', ...late);
    expect([moved.stageAt, moved.movedBy]).toEqual([840, 60]);
    // The last meal was due at 12:15 after the first move and is past at the second.
    expect(moved.rows.filter(({ task }) => task.type === 'meal').at(-1)?.task.at).toBe(735);
    expect([rowAt(moved, 'pump-up'), rowAt(moved, 'finals'), rowAt(moved, 'check-in')]).toEqual([
      815, 1140, 540,
    ]);
    const anew = nowOf('12:40', ...late, [
      '12:35',
      'show-day-timed',
      { show: 'cup', wake: '05:30', stage: '15:00', travelMinutes: 45 },
    ]);
    expect([anew.stageAt, anew.movedBy]).toEqual([900, 0]);
  });

  it('[CRS-30] many small delays come to a bite as one long one does', () => {
    const steps: DayStep[] = ['13:20', '13:50', '14:20', '14:40'].map((stage, k) => [
      `12:${10 + k}`,
      'stage-moved',
      { show: 'cup', stage, now: '12:10' },
    ]);
    const titles = nowOf('12:20', ...steps).rows.map(({ task }) => task.title);
    expect(titles).toContain('A bite more for the wait');
  });

  it('[CRS-30] it stands on the run sheet of its day, done lines done, until the meals are planned', () => {
    const ledger = dayJournal(...showDay, ['08:10', 'show-task-done', { show: 'cup', task: 'leave' }]);
    const rows = runSheet(
      daySheet(ledger, DAY, 500, () => undefined),
      ledger,
      500,
    );
    const shown = rows.flatMap(({ thing, state }) =>
      thing.type === 'show' ? [`${thing.task.type}: ${state}`] : [],
    );
    expect(shown).toEqual([
      'meal: missed',
      'leave: done',
      'meal: next',
      'check-in: ahead',
      'meal: ahead',
      'last touches: ahead',
      'pump-up: ahead',
      'stage: ahead',
      'finals: ahead',
    ]);
  });

  it('[CRS-30] without times it says what is lacking', () => {
    const bare = showDayNow(dayJournal(), show, DAY, here('09:00'), () => undefined);
    expect([bare.times, bare.rows, bare.macros]).toEqual([undefined, [], undefined]);
    expect(!bare.tasks.ok && bare.tasks.problem.code).toBe('course/show-day-not-timed');
  });
});

describe('[CRS-31] the bag', () => {
  it('[CRS-31] the last word on each thing counts, and one of your own stands with the usual', () => {
    const { bag } = nowOf(
      '05:00',
      ['04:10', 'thing-packed', { show: 'cup', thing: 'Elastic bands for the pump-up', packed: true }],
      ['04:11', 'thing-packed', { show: 'cup', thing: 'Grandmother’s brooch', packed: true }],
      ['04:12', 'thing-packed', { show: 'cup', thing: 'Grandmother’s brooch', packed: false }],
      ['04:13', 'thing-packed', { show: 'other', thing: 'Tan, applicator and old towels', packed: true }],
    );
    expect(bag.filter(({ packed }) => packed).map(({ thing }) => thing)).toEqual([
      'Elastic bands for the pump-up',
    ]);
    expect(bag.at(-1)).toEqual({ thing: 'Grandmother’s brooch', packed: false, own: true });
  });
});

describe('[CRS-26] days out at the place of the show', () => {
  const at = (moment: string, zone: string, here: string) => {
    const nowMs = Date.parse(moment);
    return {
      nowMs,
      hereMinutes: offsetInZone(here, nowMs) ?? Number.NaN,
      thereMinutes: offsetInZone(zone, nowMs) ?? Number.NaN,
    };
  };

  it('[CRS-26] across the date line a day is neither lost nor gained', () => {
    // Friday evening in Honolulu (UTC-10) is Saturday in Auckland (UTC+12 in May) and the show is on Sunday there.
    const eve = at('2027-04-30T20:00:00-10:00', 'Pacific/Auckland', 'Pacific/Honolulu');
    expect(todayThere('2027-04-30', eve)).toBe('2027-05-01');
    expect(daysOutThere('2027-04-30', '2027-05-02', eve)).toBe(1);
    // The same moment looked at the other way round: it is still Friday at a show in Honolulu.
    const back = at('2027-05-01T18:00:00+12:00', 'Pacific/Honolulu', 'Pacific/Auckland');
    expect(daysOutThere('2027-05-01', '2027-05-02', back)).toBe(2);
  });

  it('[CRS-26] the flight there and the clock of the day itself: after the landing both agree', () => {
    const landed = at('2027-05-01T09:00:00+12:00', 'Pacific/Auckland', 'Pacific/Auckland');
    expect(daysOutThere('2027-05-01', '2027-05-02', landed)).toBe(1);
    const stage = momentInZone('Pacific/Auckland', '2027-05-02', parseClock('13:00') ?? 0) ?? 0;
    for (const zone of ['Pacific/Honolulu', 'Pacific/Auckland', 'Europe/Lisbon'])
      expect(clockThere('2027-05-02', at(new Date(stage).toISOString(), 'Pacific/Auckland', zone))).toBe(780);
  });
});

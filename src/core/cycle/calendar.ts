import { stretchIds } from '../course/stretch-ids.ts';
import { showsFrom } from '../course/read-course.ts';
import { showTasks } from '../course/show-times.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import { capital } from '../units/capital.ts';

/**
 * When a date of the calendar is: whole days, a moment anywhere on earth, or a time of the clock wherever one is (RFC 5545,
 * 3.3.5, form 1), for what is done at home.
 */
export type CalendarTime =
  | { readonly is: 'days'; readonly from: string; readonly until: string }
  | { readonly is: 'moment'; readonly epochMs: number; readonly minutes: Minutes }
  | {
      readonly is: 'clock';
      readonly date: string;
      readonly at: ClockMinutes;
      readonly minutes: Minutes;
    };

/** One date for another calendar. */
export interface CalendarDate {
  /** The same for as long as the thing it stands for is there, however often it is corrected. */
  readonly id: string;
  /** When its present version was written. */
  readonly writtenMs: number;
  readonly title: string;
  readonly category: string;
  readonly time: CalendarTime;
  readonly place?: string;
  readonly says?: string;
}

/** The moment of a local time in a zone; undefined where the zone is not known. */
export type MomentIn = (zone: string, date: string, at: ClockMinutes) => number | undefined;

const USUAL_MINUTES = 30;
/** Kinds of task that happen where the show is, by the clocks there. */
const AT_THE_SHOW: readonly DataOf<'event-dated'>['type'][] = ['check-in', 'tanning'];

/** Every show, dated task, stretch and time of a show day as dates for another calendar (CRS-27). */
export function calendarOf(ledger: Ledger, momentIn: MomentIn): readonly CalendarDate[] {
  const shows = showsFrom(ledger, '0001-01-01').map(({ data }) => data);
  return [
    ...shows.map((show) => showDate(ledger, show)),
    ...shows.flatMap((show) => timesOfShow(ledger, show, momentIn)),
    ...ledger.of('event-dated').map((fact) => taskDate(ledger, fact, shows, momentIn)),
    ...stretchDates(ledger),
  ].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

function showDate(ledger: Ledger, show: DataOf<'show-set'>): CalendarDate {
  const facts = ledger.of('show-set').filter(({ data }) => data.show === show.show);
  return {
    id: originOf(ledger, facts[0]?.entry.id ?? show.show),
    writtenMs: facts.at(-1)?.epochMs ?? 0,
    title: show.name,
    category: 'show',
    time: { is: 'days', from: show.date, until: show.date },
    ...(show.place !== undefined && { place: show.place }),
    ...(show.class && { says: `Class: ${show.class.name}` }),
  };
}

/** Leaving, check-in, stage and finals as last timed; small meals stay on the run sheet. */
function timesOfShow(ledger: Ledger, show: DataOf<'show-set'>, momentIn: MomentIn): readonly CalendarDate[] {
  const timed = ledger.of('show-day-timed').findLast(({ data }) => data.show === show.show);
  const tasks = showTasks(ledger, show.show, { carbohydrateG: 0, proteinG: 0, fatG: 0 });
  if (!timed || !tasks.ok) return [];
  const base = originOf(ledger, timed.entry.id);
  return tasks.value
    .filter(({ type }) => type !== 'wake' && type !== 'meal')
    .map(({ at, title, type }) => ({
      id: `${base}-${type.replaceAll(' ', '-')}`,
      writtenMs: timed.epochMs,
      title: `${title}: ${show.name}`,
      category: 'show',
      time: timeOf(show.date, at, USUAL_MINUTES, show.zone, momentIn),
      ...(show.place !== undefined && { place: show.place }),
    }));
}

function taskDate(
  ledger: Ledger,
  { data, entry, epochMs }: Fact<'event-dated'>,
  shows: readonly DataOf<'show-set'>[],
  momentIn: MomentIn,
): CalendarDate {
  const show = shows.find((one) => one.show === data.show);
  const at = data.at === undefined ? undefined : parseClock(data.at);
  const zone = AT_THE_SHOW.includes(data.type) ? show?.zone : undefined;
  return {
    id: originOf(ledger, entry.id),
    writtenMs: epochMs,
    title: data.title,
    category: data.type,
    time:
      at === undefined
        ? { is: 'days', from: data.date, until: data.date }
        : timeOf(data.date, at, data.minutes ?? USUAL_MINUTES, zone, momentIn),
    ...(zone !== undefined && show?.place !== undefined && { place: show.place }),
    ...(show && { says: `For ${show.name}` }),
  };
}

/** Diet breaks, higher-carbohydrate days, loads: whole days. */
function stretchDates(ledger: Ledger): readonly CalendarDate[] {
  const newest = new Map(ledger.of('stretch-planned').map((fact) => [fact.data.stretch, fact]));
  const ofShows = new Map(
    showsFrom(ledger, '0001-01-01').flatMap(({ show }) => {
      const { load, day, rehearsal } = stretchIds(show);
      return [
        [load, 'Carbohydrate loading'],
        [day, undefined],
        [rehearsal, 'Rehearsal: carbohydrate loading'],
      ] as const;
    }),
  );
  return [...newest.values()]
    .filter(({ data }) => data.cancelled !== true)
    .flatMap(({ data, entry, epochMs }) => {
      const title = ofShows.has(data.stretch) ? ofShows.get(data.stretch) : capital(data.type);
      if (title === undefined) return [];
      const { from, until } = data;
      return [
        {
          id: originOf(ledger, entry.id),
          writtenMs: epochMs,
          title,
          category: data.type,
          time: { is: 'days', from, until },
        },
      ];
    });
}

function timeOf(
  date: string,
  at: ClockMinutes,
  minutes: Minutes,
  zone: string | undefined,
  momentIn: MomentIn,
): CalendarTime {
  const epochMs = zone === undefined ? undefined : momentIn(zone, date, at);
  if (epochMs !== undefined) return { is: 'moment', epochMs, minutes };
  const days = Math.floor(at / 1440);
  return { is: 'clock', date: addDays(date, days), at: at - 1440 * days, minutes };
}

/** The id of the first version of an entry: corrections keep the date they correct. */
function originOf(ledger: Ledger, id: string): string {
  return ledger.history(id)[0]?.id ?? id;
}

import { type DatedEvent, showsFrom } from '../course/read-course.ts';
import type { SeasonShow } from '../course/season.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { REHEARSE_DAYS } from './rehearsals.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { Minutes } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';

export type DatedShow = ReturnType<typeof showsFrom>[number];

/** A task with a date, or a show itself. */
export type SeasonDate =
  | { readonly type: 'show'; readonly date: string; readonly show: DatedShow }
  | { readonly type: 'task'; readonly date: string; readonly fact: Fact<'event-dated'> };

/** Shows and dated tasks from a day on, in the order of the calendar (CRS-26). */
export function seasonDates(ledger: Ledger, from: string): readonly SeasonDate[] {
  const shows = showsFrom(ledger, from).map((show) => ({
    type: 'show' as const,
    date: show.date,
    show,
  }));
  const tasks = ledger
    .of('event-dated')
    .filter(({ data }) => data.date >= from)
    .map((fact) => ({ type: 'task' as const, date: fact.data.date, fact }));
  return [...shows, ...tasks].sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
}

function orderOf(one: SeasonDate): string {
  return one.type === 'show' ? `${one.date} 99` : `${one.date} ${one.fact.data.at ?? ''}`;
}

type Usual = Pick<DatedEvent, 'title' | 'type' | 'at' | 'minutes'> & {
  readonly daysBefore: number;
  /** Comes back every week from then to the show. */
  readonly weekly?: boolean;
  readonly says: string;
};

/** What most shows ask for, and when. Common practice, no source: the organiser's own dates come first. */
const USUAL: readonly Usual[] = [
  {
    type: 'posing practice',
    title: 'Posing practice',
    at: '18:00',
    minutes: 30,
    daysBefore: 56,
    weekly: true,
    says: 'every week from eight weeks out',
  },
  {
    type: 'registration',
    title: 'Registration closes',
    daysBefore: 42,
    says: 'six weeks before; look up the true date',
  },
  { type: 'rehearsal', title: 'Rehearse the last week', daysBefore: 28, says: 'four weeks before' },
  { type: 'travel', title: 'Travel to the show', at: '10:00', daysBefore: 1, says: 'the day before' },
  {
    type: 'check-in',
    title: 'Athlete check-in',
    at: '16:00',
    minutes: 60,
    daysBefore: 1,
    says: 'the day before, as the organiser says',
  },
  {
    type: 'tanning',
    title: 'First coat of tan',
    at: '18:00',
    minutes: 60,
    daysBefore: 1,
    says: 'the evening before',
  },
];

/** A usual date of a show that is not in the journal yet, with the dates it stands for. */
export interface Suggested {
  readonly title: string;
  readonly says: string;
  readonly events: readonly Omit<DatedEvent, 'event'>[];
}

const DAY_MINUTES: Minutes = 1440;
/** So much of a difference between clocks the body gets over in a day. Common practice, no source. */
const MINUTES_A_DAY: Minutes = 90;
/** Nobody is asked to leave sooner than this for the sake of a clock. */
const SOONEST_DAYS = 8;

/**
 * Travel a day before the show, sooner across time zones: what counts is how far the clocks are apart on the dial, so that the
 * date line itself asks for no day.
 */
function travelFor(minutesApart: Minutes): Pick<Usual, 'daysBefore' | 'says'> {
  const round = Math.abs(minutesApart) % DAY_MINUTES;
  const apart = Math.min(round, DAY_MINUTES - round);
  if (apart === 0) return { daysBefore: 1, says: 'the day before' };
  const daysBefore = Math.min(SOONEST_DAYS, 1 + Math.ceil(apart / MINUTES_A_DAY));
  return {
    daysBefore,
    says: `${daysBefore} days before: the clocks are ${roundTo(apart / 60, 1)} h apart, and the body follows by about ${MINUTES_A_DAY / 60} h a day`,
  };
}

/** `minutesApart`: how far the clocks at the show stand from those here. */
export function usualDates(
  ledger: Ledger,
  show: SeasonShow,
  today: string,
  minutesApart: Minutes = 0,
): readonly Suggested[] {
  const had = new Set(
    ledger
      .of('event-dated')
      .filter(({ data }) => (data.show ?? show.show) === show.show && !wasEarly(data, show.date))
      .map(({ data }) => data.type),
  );
  const travel = travelFor(minutesApart);
  return USUAL.filter(({ type }) => !had.has(type)).flatMap((one) => {
    const usual = one.type === 'travel' ? { ...one, ...travel } : one;
    const events = daysOf(usual, show.date)
      .filter((date) => date > today)
      .map((date) => eventOf(usual, date, show.show));
    return events.length === 0 ? [] : [{ title: usual.title, says: usual.says, events }];
  });
}

/** An early rehearsal that was held leaves the dress rehearsal to be dated (CRS-29). */
function wasEarly({ type, date, done }: DatedEvent, show: string): boolean {
  return type === 'rehearsal' && done === true && date < addDays(show, -REHEARSE_DAYS.dress);
}

/** A weekly one keeps its weekday up to the week of the show. */
function daysOf({ daysBefore, weekly }: Usual, show: string): readonly string[] {
  if (weekly !== true) return [addDays(show, -daysBefore)];
  return weeklyUntil(addDays(show, -daysBefore), show);
}

/** A date and the same weekday of every week after it, before `until`; the date itself in any case. */
export function weeklyUntil(from: string, until: string): readonly string[] {
  const weeks = Math.max(1, Math.ceil(daysBetween(from, until) / 7));
  return Array.from({ length: weeks }, (_, week) => addDays(from, 7 * week));
}

function eventOf({ type, title, at, minutes }: Usual, date: string, show: string): Suggested['events'][0] {
  return {
    type,
    title,
    date,
    show,
    ...(at !== undefined && { at }),
    ...(minutes !== undefined && { minutes }),
  };
}

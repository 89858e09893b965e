import type { Fact, Ledger } from '../journal/ledger.ts';
import type { DayKind } from './shape-of-day.ts';

/**
 * The targets in force on a day of a kind (RUN-02): the newest that covers the day and its kind. Targets for every day and
 * for this kind of day compete by when they were set, so that whatever was decided last counts; but what was decided for
 * named days (a diet break, the last week) stands against a course set for all days since. Undefined where none was set. `counts` leaves
 * some out: what would stand without them.
 */
export function targetsOfDay(
  ledger: Ledger,
  day: string,
  dayKind: DayKind,
  counts: (fact: Fact<'target-set'>) => boolean = () => true,
): Fact<'target-set'> | undefined {
  const covers = ({ data }: Fact<'target-set'>) =>
    data.from <= day &&
    (data.until === undefined || data.until >= day) &&
    (data.dayKind === 'every' || data.dayKind === dayKind);
  let found: Fact<'target-set'> | undefined;
  for (const fact of ledger.of('target-set'))
    if (covers(fact) && counts(fact) && (found === undefined || countsBefore(fact, found))) found = fact;
  return found;
}

function countsBefore(one: Fact<'target-set'>, other: Fact<'target-set'>): boolean {
  const [newer, older] = one.entry.stamp > other.entry.stamp ? [one, other] : [other, one];
  const set = isForNamedDays(older) && isCourseForAllDays(newer) ? older : newer;
  return set === one;
}

function isForNamedDays({ data }: Fact<'target-set'>): boolean {
  return data.until !== undefined;
}

function isCourseForAllDays({ data }: Fact<'target-set'>): boolean {
  return data.until === undefined && data.basis === 'course';
}

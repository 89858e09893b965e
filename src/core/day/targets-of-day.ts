import type { Fact, Ledger } from '../journal/ledger.ts';
import type { DayKind } from './shape-of-day.ts';

/**
 * The targets in force on a day of a kind: the newest that covers the day and its kind. Targets for every day and for
 * this kind of day compete by when they were set, so that whatever was decided last counts (RUN-02). Undefined where
 * none was ever set.
 */
export function targetsOfDay(ledger: Ledger, day: string, dayKind: DayKind): Fact<'target-set'> | undefined {
  const covers = ({ data }: Fact<'target-set'>) =>
    data.from <= day &&
    (data.until === undefined || data.until >= day) &&
    (data.dayKind === 'every' || data.dayKind === dayKind);
  let newest: Fact<'target-set'> | undefined;
  for (const fact of ledger.of('target-set')) {
    if (covers(fact) && (newest === undefined || fact.entry.stamp > newest.entry.stamp)) newest = fact;
  }
  return newest;
}

import { stretchIds } from '../course/stretch-ids.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { Kilograms } from '../units/quantities.ts';
import { weighInsOf } from './body-log.ts';

/** Two photographs of one view, before the load and after it. */
export interface PhotosBeside {
  readonly before: Fact<'photo-taken'>;
  readonly after: Fact<'photo-taken'>;
}

/** A load rehearsed, or to be rehearsed, weeks before the show. */
export interface Rehearsal {
  readonly from: string;
  readonly until: string;
  readonly state: 'ahead' | 'running' | 'over';
  readonly carbohydrateG: number | undefined;
  /** The weigh-ins of its first morning and of the morning after it. */
  readonly massKg: { readonly before?: Kilograms; readonly after?: Kilograms };
  readonly photos: readonly PhotosBeside[];
  readonly judged: DataOf<'rehearsal-judged'> | undefined;
}

/**
 * So many days before the show, at most, a load is rehearsed: early it tries the gut, the times and the mirror; the
 * dress rehearsal meets the condition of the show too (common practice, no source).
 */
export const REHEARSE_DAYS = { early: 84, dress: 35 } as const;
/** A photograph taken so many days before or after the load still shows it (common practice, no source). */
const PHOTO_DAYS = 3;

/** Every rehearsal of a show (CRS-29), the earliest first: what was planned, what it did, what was learnt. */
export function rehearsalsOf(ledger: Ledger, show: string, today: string): readonly Rehearsal[] {
  const planned = new Map<string, DataOf<'stretch-planned'>>();
  const { rehearsal } = stretchIds(show);
  for (const { day, data } of ledger.of('stretch-planned')) {
    if (data.stretch !== rehearsal) continue;
    // One that was over by then stays; one still ahead gives way to the newest.
    for (const [from, other] of planned) if (other.until >= day) planned.delete(from);
    if (data.cancelled !== true) planned.set(data.from, data);
  }
  return [...planned.values()].map((data) => rehearsalOf(ledger, show, data, today));
}

function rehearsalOf(
  ledger: Ledger,
  show: string,
  { from, until, carbohydrateG }: DataOf<'stretch-planned'>,
  today: string,
): Rehearsal {
  const weighed = new Map(weighInsOf(ledger, today).map(({ day, massKg }) => [day, massKg]));
  const [before, after] = [weighed.get(from), weighed.get(addDays(until, 1))];
  return {
    from,
    until,
    state: today > until ? 'over' : today >= from ? 'running' : 'ahead',
    carbohydrateG,
    massKg: { ...(before !== undefined && { before }), ...(after !== undefined && { after }) },
    photos: photosBeside(ledger, from, until),
    judged: ledger.of('rehearsal-judged').findLast(({ data }) => data.show === show && data.from === from)
      ?.data,
  };
}

/** For each view the last picture before the load began beside the first after it ended. */
function photosBeside(ledger: Ledger, from: string, until: string): readonly PhotosBeside[] {
  const taken = ledger.of('photo-taken');
  const views = [...new Set(taken.map(({ data }) => data.view))];
  return views.flatMap((view) => {
    const ofView = taken.filter(({ data }) => data.view === view);
    const before = ofView.findLast(({ day }) => day <= from && daysBetween(day, from) <= PHOTO_DAYS);
    const after = ofView.find(({ day }) => day > until && daysBetween(until, day) <= PHOTO_DAYS);
    return before && after ? [{ before, after }] : [];
  });
}

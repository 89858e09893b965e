import { stretchPurpose } from '#core/course/stretch-ids.ts';
import type { Stretch } from '#core/course/stretches.ts';
import { capital } from '#core/units/capital.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { pathTo } from '../../shell/route.ts';

const PURPOSES = {
  rehearsal: { name: 'Rehearsal of the load', page: 'rehearsal' },
  load: { name: 'Loading before the show', page: 'last-week' },
  day: { name: 'The show day', page: 'last-week' },
} as const;

/** What a stretch is called, and the screen it is changed on: a load belongs to its rehearsal or to its last week. */
export function stretchTitle(
  ledger: Ledger,
  show: string,
  { type, from, until }: Stretch,
): { readonly title: string; readonly href: string } {
  const planned = ledger
    .of('stretch-planned')
    .findLast(({ data }) => data.from === from && data.until === until && data.type === type);
  const purpose = planned && stretchPurpose(planned.data.stretch, show);
  const { name, page } = purpose ? PURPOSES[purpose] : { name: capital(type), page: 'stretch' };
  const days = from === until ? dayAndMonth(from) : `${dayAndMonth(from)} to ${dayAndMonth(until)}`;
  return { title: `${name}, ${days}`, href: pathTo('course', page) };
}

import { computed } from '@preact/signals';
import { daysOutThere, type MomentThere, todayThere } from '#core/cycle/days-out.ts';
import { showsFrom } from '#core/course/read-course.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { addDays } from '#core/units/civil-date.ts';
import { weeksOut } from '#core/words/dates.ts';
import { offsetInZone } from '#outside/time-zones/time-zones.ts';
import { now, offsetMinutesAt, today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';

type Show = DataOf<'show-set'>;

/** The next show that is not withdrawn, today's among them; today is that of its place, which may still be yesterday here. */
export const nextShow = computed(
  () =>
    showsFrom(ledger.value, addDays(today.value, -1)).find(
      ({ data }) => daysOutThere(today.value, data.date, momentThere(data)) >= 0,
    )?.data,
);

/** This moment here and where a show is; a show without a zone is here. */
export function momentThere({ zone }: Pick<Show, 'zone'>): MomentThere {
  const nowMs = now.value;
  const hereMinutes = offsetMinutesAt(nowMs);
  return {
    nowMs,
    hereMinutes,
    thereMinutes: (zone === undefined ? undefined : offsetInZone(zone, nowMs)) ?? hereMinutes,
  };
}

/** "8 weeks 2 days out", counted by the calendar where the show is. */
export function outWords(show: Pick<Show, 'zone' | 'date'>): string {
  return weeksOut(todayThere(today.value, momentThere(show)), show.date);
}

/** The detail of a place's front page, and how far the next show is. */
export function withWeeksOut(detail: string | undefined): string | undefined {
  const show = nextShow.value;
  return [detail, show && outWords(show)].filter((part) => part).join(' · ') || undefined;
}

import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';

/** A day whose food the estimate does not know, and what the journal has of it. */
export interface OpenDay {
  readonly day: string;
  readonly meals: number;
}

/** Further back than this nobody remembers what was eaten. Common practice, no source. */
const ASKED_DAYS = 7;

/**
 * Days before today that were neither closed nor totalled, newest first: was the log complete, was it a fast, or was it
 * not logged? It is asked, never guessed (RUN-24). Only days from the first weigh-in on, within the last week.
 */
export function openDays(ledger: Ledger, today: string): readonly OpenDay[] {
  const first = ledger.of('body-weighed')[0]?.day;
  if (first === undefined) return [];
  const totalled = new Set(ledger.of('intake-totalled').map(({ data }) => data.of));
  return Array.from({ length: ASKED_DAYS }, (_, k) => addDays(today, -1 - k)).flatMap((day) => {
    if (day < first || totalled.has(day)) return [];
    const facts = ledger.onDay(day);
    if (facts.some((fact) => fact.kind === 'day-closed')) return [];
    return [{ day, meals: facts.filter((fact) => fact.kind === 'meal-eaten').length }];
  });
}

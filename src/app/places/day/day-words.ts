import type { DaySheet } from '#core/cycle/day-sheet.ts';
import { dateWords, weeksOut } from '#core/words/dates.ts';
import { ledger } from '../../state/open-journal.ts';

/** "Thursday 4 March, 8 weeks 2 days out": the date, and how far the next show is. */
export function dayDetail(sheet: DaySheet): string {
  const shows = ledger.value.of('show-set').filter((fact) => fact.data.withdrawn !== true);
  const next = shows
    .map((fact) => fact.data.date)
    .filter((date) => date >= sheet.day)
    .sort()[0];
  return next === undefined ? dateWords(sheet.day) : `${dateWords(sheet.day)}, ${weeksOut(sheet.day, next)}`;
}

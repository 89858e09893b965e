import type { DaySheet } from '#core/cycle/day-sheet.ts';
import { dateWords } from '#core/words/dates.ts';
import { nextShow, outWords } from '../../views/show-view.ts';

/** "Thursday 4 March, 8 weeks 2 days out": the date, and how far the next show is. */
export function dayDetail(sheet: DaySheet): string {
  const show = nextShow.value;
  return show ? `${dateWords(sheet.day)}, ${outWords(show)}` : dateWords(sheet.day);
}

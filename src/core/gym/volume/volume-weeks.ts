import { wordsOfMuscle } from '#core/tables/muscles.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { ExerciseBook } from '../book/exercise-book.ts';
import type { SetDone } from '../session/counted-sets.ts';
import { NOTABLE_SETS, setsOfMuscles } from './hard-sets.ts';

/** Hard sets of one muscle in every whole week of a time, oldest first. */
export interface MuscleWeeks {
  readonly muscle: string;
  readonly words: string;
  readonly weeks: readonly number[];
  readonly trend: string;
}

const WEEK = 7;
/** Weeks at either end that are held against each other. Common practice, no source. */
const END_WEEKS = 4;

/** Hard sets for each muscle week by week between two days, most trained first (GYM-72); weeks end on the last day. */
export function volumeWeeks(
  hardSets: readonly SetDone[],
  book: ExerciseBook,
  from: string,
  until: string,
): readonly MuscleWeeks[] {
  const count = Math.max(0, Math.floor((daysBetween(from, until) + 1) / WEEK));
  const rows = new Map<string, number[]>();
  for (const fact of hardSets) {
    const back = Math.floor(daysBetween(fact.day, until) / WEEK);
    if (fact.day > until || back >= count) continue;
    for (const [muscle, sets] of setsOfMuscles(fact, book)) {
      const weeks = rows.get(muscle) ?? Array.from({ length: count }, () => 0);
      rows.set(muscle, weeks);
      const place = count - 1 - back;
      weeks[place] = (weeks[place] ?? 0) + sets;
    }
  }
  return [...rows]
    .map(([muscle, weeks]) => ({
      muscle,
      words: wordsOfMuscle(muscle),
      weeks,
      trend: trendWords(weeks),
    }))
    .sort((a, b) => sum(b.weeks) - sum(a.weeks) || (a.muscle < b.muscle ? -1 : 1));
}

function trendWords(weeks: readonly number[]): string {
  if (weeks.length < 2 * END_WEEKS) return 'not eight weeks of log yet';
  const [first, last] = [weeks.slice(0, END_WEEKS), weeks.slice(-END_WEEKS)].map((end) => mean(end));
  const change = (last ?? 0) - (first ?? 0);
  const now = roundTo(last ?? 0, 1);
  if (Math.abs(change) < NOTABLE_SETS) return `${now} a week, as at the start`;
  return `${now} a week, ${roundTo(Math.abs(change), 1)} ${change > 0 ? 'more' : 'fewer'} than at the start`;
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

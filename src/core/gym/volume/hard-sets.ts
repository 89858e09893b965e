import { wordsOfMuscle } from '#core/tables/muscles.ts';
import { addDays } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { ExerciseBook } from '../book/exercise-book.ts';
import type { SetDone } from '../session/counted-sets.ts';

/** Hard sets of one muscle: the last seven days, and what a week of the four before had. */
export interface MuscleVolume {
  readonly muscle: string;
  /** The muscle in plain words. */
  readonly words: string;
  readonly sets: number;
  /** Undefined where nothing was logged four weeks back. */
  readonly usual: number | undefined;
  readonly trend: string;
}

/** A set with more left than this is no hard set. Common practice, no source. */
const MOST_RESERVE = 4;
/** A set counts in part for a muscle that assists. Common practice, no source. */
const ASSISTING_SHARE = 0.5;
const WEEK = 7;
const USUAL_WEEKS = 4;
/** Less than this is not told from a week like the others. Common practice, no source. */
export const NOTABLE_SETS = 2;

/** Hard sets for each muscle in the week up to a day, most first (GYM-71). */
export function hardSetsByMuscle(
  hardSets: readonly SetDone[],
  book: ExerciseBook,
  until: string,
): readonly MuscleVolume[] {
  const week = countBetween(hardSets, book, addDays(until, 1 - WEEK), until);
  const beforeFrom = addDays(until, 1 - WEEK * (USUAL_WEEKS + 1));
  const before = countBetween(hardSets, book, beforeFrom, addDays(until, -WEEK));
  const logged = hardSets.some(({ day }) => day <= addDays(beforeFrom, WEEK));
  const muscles = new Set([...week.keys(), ...before.keys()]);
  return [...muscles]
    .map((muscle) => {
      const sets = week.get(muscle) ?? 0;
      const usual = logged ? (before.get(muscle) ?? 0) / USUAL_WEEKS : undefined;
      return { muscle, words: wordsOfMuscle(muscle), sets, usual, trend: trendWords(sets, usual) };
    })
    .sort((a, b) => b.sets - a.sets || (a.muscle < b.muscle ? -1 : 1));
}

function countBetween(
  hardSets: readonly SetDone[],
  book: ExerciseBook,
  from: string,
  until: string,
): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const fact of hardSets) {
    if (fact.day < from || fact.day > until) continue;
    for (const [muscle, sets] of setsOfMuscles(fact, book))
      counts.set(muscle, (counts.get(muscle) ?? 0) + sets);
  }
  return counts;
}

/** What one set counts for each muscle; nothing where too much was left, or where the lift was missed. */
export function setsOfMuscles(
  { data }: SetDone,
  book: ExerciseBook,
): readonly (readonly [muscle: string, sets: number])[] {
  if ((data.rir ?? 0) > MOST_RESERVE || data.reps === 0) return [];
  // Left and right of one exercise are one set each for half the body: two of them make one.
  const whole = data.side === undefined ? 1 : 0.5;
  const { prime, assisting } = book.exercise(data.exercise);
  return [
    ...prime.map((muscle) => [muscle, whole] as const),
    ...assisting.map((muscle) => [muscle, whole * ASSISTING_SHARE] as const),
  ];
}

function trendWords(sets: number, usual: number | undefined): string {
  if (usual === undefined) return 'not four weeks of log yet';
  const change = sets - usual;
  if (Math.abs(change) < NOTABLE_SETS) return 'as in the four weeks before';
  const words = `${roundTo(Math.abs(change), 1)} ${change > 0 ? 'more' : 'fewer'} than in the four weeks before`;
  return words;
}

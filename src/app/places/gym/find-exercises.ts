import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { wordsOfMuscle } from '#core/tables/muscles.ts';

const MOST = 12;

/**
 * Exercises whose name or muscles (by anatomy or in plain words) hold every word that was typed; described ones first, as
 * the book has them (GYM-99).
 */
export function findExercises(all: readonly Exercise[], typed: string): readonly Exercise[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const holds = ({ name, prime }: Exercise) => {
    const text = [name, ...prime, ...prime.map(wordsOfMuscle)].join(' ').toLowerCase();
    return words.every((word) => text.includes(word));
  };
  return all.filter(holds).slice(0, MOST);
}

/** What may stand in for an exercise: others that move the same muscle, those done before first (GYM-99). */
export function standIns(
  all: readonly Exercise[],
  of: Exercise,
  done: ReadonlySet<string>,
): readonly Exercise[] {
  const alike = all.filter(
    (other) => other.exercise !== of.exercise && other.prime.some((muscle) => of.prime.includes(muscle)),
  );
  const rank = ({ exercise }: Exercise): number => (done.has(exercise) ? 0 : 1);
  return alike.toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST);
}

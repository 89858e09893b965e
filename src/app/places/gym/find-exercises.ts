import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { wordsOfMuscle } from '#core/tables/muscles.ts';

const MOST = 12;

/** Exercises whose name, muscle or its plain words hold every word typed; names first (GYM-99). */
export function findExercises(exercises: readonly Exercise[], typed: string): readonly Exercise[] {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const holds = (text: string): boolean => words.every((word) => text.toLowerCase().includes(word));
  const byName = exercises.filter(({ name }) => holds(name));
  const byMuscle = exercises.filter(
    (exercise) =>
      !byName.includes(exercise) &&
      holds([exercise.name, ...exercise.prime, ...exercise.prime.map(wordsOfMuscle)].join(' ')),
  );
  return [...byName, ...byMuscle].slice(0, MOST);
}

/** What may stand in for an exercise: others that move the same muscle first, those done before first. */
export function standIns(
  exercises: readonly Exercise[],
  of: Exercise,
  done: ReadonlySet<string>,
): readonly Exercise[] {
  const alike = exercises.filter(
    (other) => other.exercise !== of.exercise && other.prime.some((muscle) => of.prime.includes(muscle)),
  );
  const rank = ({ exercise }: Exercise): number => (done.has(exercise) ? 0 : 1);
  return alike.toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST);
}

import type { SetDone } from '#core/gym/session/counted-sets.ts';
import type { SessionWalk } from '#core/gym/session/session-walk.ts';
import type { TrainingSession } from '#core/gym/session/training-sessions.ts';
import { exerciseBook } from '#core/gym/book/exercise-book.ts';
import type { Ledger } from '#core/journal/ledger.ts';

/** One exercise of a session beside the last time it was done. */
export interface ExerciseSummary {
  readonly exercise: string;
  readonly name: string;
  readonly sets: readonly SetDone[];
  readonly before: { readonly day: string; readonly sets: readonly SetDone[] } | undefined;
  readonly verdict: 'more' | 'same' | 'less' | 'another load' | 'first';
}

/** Each exercise of the session against the session before that had it (GYM-100). */
export function summaryOf(
  walk: SessionWalk,
  ledger: Ledger,
  sessions: readonly TrainingSession[],
): readonly ExerciseSummary[] {
  const book = exerciseBook(ledger);
  const hard = walk.sets.filter(isHard);
  const earlier = sessions.slice(
    0,
    sessions.findIndex(({ session }) => session === walk.session.session),
  );
  return [...new Set(hard.map(({ data }) => data.exercise))].map((exercise) => {
    const sets = hard.filter(({ data }) => data.exercise === exercise);
    const before = lastWith(exercise, ledger, earlier);
    return {
      exercise,
      name: book.exercise(exercise).name,
      sets,
      before,
      verdict: verdictOf(sets, before?.sets),
    };
  });
}

function isHard({ data }: SetDone): boolean {
  return data.set !== 'warm-up';
}

function lastWith(
  exercise: string,
  ledger: Ledger,
  earlier: readonly TrainingSession[],
): ExerciseSummary['before'] {
  const all = ledger.of('set-done').filter((set) => isHard(set) && set.data.exercise === exercise);
  const session = earlier.findLast(({ names }) => all.some(({ data }) => names.includes(data.session)));
  return (
    session && { day: session.day, sets: all.filter(({ data }) => session.names.includes(data.session)) }
  );
}

/** By the repetitions over as many sets as both times had, load for load; another load is no verdict of its own. */
function verdictOf(
  sets: readonly SetDone[],
  before: readonly SetDone[] | undefined,
): ExerciseSummary['verdict'] {
  if (!before) return 'first';
  const count = Math.min(sets.length, before.length);
  const pairs = sets.slice(0, count).map((set, i) => [set.data, before[i]?.data] as const);
  if (pairs.some(([now, then]) => JSON.stringify(now.load) !== JSON.stringify(then?.load)))
    return 'another load';
  const gained = pairs.reduce((sum, [now, then]) => sum + now.reps - (then?.reps ?? 0), 0);
  if (gained === 0) return 'same';
  return gained > 0 ? 'more' : 'less';
}

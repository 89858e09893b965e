import { curveOf } from '../strength/repetition-curve.ts';
import { STRENGTH_BELIEFS } from '../strength/strength-beliefs.ts';
import type { LoggedSet } from '../strength/strength-log.ts';

/** More repetitions to failure than this say little of strength, so such a set is never the best. */
const MOST_REPS = 15;

/**
 * The set that showed most strength: the highest maximum by the curve of the running estimate, from repetitions done and
 * felt to be left; a reserve that was not noted counts as none. Undefined where all were too long or missed.
 */
export function bestSet(sets: readonly LoggedSet[]): LoggedSet | undefined {
  let best: { set: LoggedSet; shown: number } | undefined;
  for (const set of sets) {
    const reps = set.reps + (set.rir ?? 0);
    if (set.reps < 1 || reps > MOST_REPS) continue;
    const shown = Math.log(set.loadKg) + STRENGTH_BELIEFS.bend.mean * curveOf(reps);
    if (!best || shown > best.shown) best = { set, shown };
  }
  return best?.set;
}

/**
 * The set of the session before that the set to come is held against: the same number of the same kind, else the same
 * kind's last, else the heaviest of that session. `session` is the one under way, which does not count.
 */
export function lastComparable(
  sets: readonly LoggedSet[],
  session: string | undefined,
  kind: string,
  number: number,
): LoggedSet | undefined {
  const earlier = sets.filter((set) => set.session !== session);
  const before = earlier.at(-1)?.session;
  const last = earlier.filter((set) => set.session === before);
  const alike = last.filter(({ fact }) => fact.data.set === kind);
  return (
    alike.find(({ fact }, place) => (fact.data.number ?? place + 1) === number) ??
    alike.at(-1) ??
    last.reduce<LoggedSet | undefined>(
      (most, set) => (most && most.loadKg >= set.loadKg ? most : set),
      undefined,
    )
  );
}

import { STRENGTH_BELIEFS } from './strength-beliefs.ts';
import { openBelief, takeIn, type Normal, type StrengthBelief, type StrengthSet } from './strength-filter.ts';

/** How many of the last noted reserves make a habit, and how few make none yet. */
const HABIT = { latest: 20, fewest: 5, leastSd: 1 } as const;

export interface SeriesRun<Set extends StrengthSet> {
  readonly belief: StrengthBelief | undefined;
  /** Sets that were far from everything before them: a slip of the thumb, another machine, another day. */
  readonly suspects: readonly { readonly set: Set; readonly surprise: number }[];
}

/** Beyond so many standard deviations a set is shown as suspect. */
const SUSPECT = 4;

/** So many sets may have been light ones: a far heavier one after them shows strength that they hid. */
const FIRST_SETS = 3;

/** Runs the estimate over a series, oldest first, with days whose level is remembered, ascending (GYM-23). */
export function runSeries<Set extends StrengthSet>(
  sets: readonly Set[],
  marks: readonly number[] = [],
): SeriesRun<Set> {
  let belief: StrengthBelief | undefined;
  const suspects: { set: Set; surprise: number }[] = [];
  const noted: number[] = [];
  for (const set of sets) {
    const usual = habitOf(noted);
    if (belief === undefined) belief = openBelief(set, marks, usual);
    else {
      const taken = takeIn(belief, set, usual);
      belief =
        belief.sets <= FIRST_SETS && taken.surprise > SUSPECT ? openBelief(set, marks, usual) : taken.belief;
      if (Math.abs(taken.surprise) > SUSPECT) suspects.push({ set, surprise: taken.surprise });
    }
    if (set.rir !== undefined && set.reps > 0) noted.push(set.rir);
  }
  return { belief, suspects };
}

/** What this lifter usually has left when they note it stands for the sets where they did not. */
function habitOf(noted: readonly number[]): Normal {
  const latest = noted.slice(-HABIT.latest);
  if (latest.length < HABIT.fewest) return STRENGTH_BELIEFS.unknownReserve;
  const mean = latest.reduce((sum, rir) => sum + rir, 0) / latest.length;
  const variance = latest.reduce((sum, rir) => sum + (rir - mean) ** 2, 0) / latest.length;
  return { mean, sd: Math.max(HABIT.leastSd, Math.sqrt(variance)) };
}

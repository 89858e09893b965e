import type { BodySide } from '#core/journal/kinds/gym-scheme.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { runSeries } from '../strength/run-series.ts';
import { levelAt } from '../strength/strength-ahead.ts';
import { changeSince } from '../strength/strength-filter.ts';
import type { StrengthLog, StrengthSeries } from '../strength/strength-log.ts';
import { asymmetryPercent } from './asymmetry.ts';

/** One exercise trained one side at a time, and how the sides compare. */
export interface SideDifference {
  readonly exercise: string;
  readonly name: string;
  /** Above nought the right side is stronger, percent of the stronger side. */
  readonly percent: number;
  readonly sdPercent: number;
  /** Beyond the athlete's own variation from set to set; only then is a side called weaker. */
  readonly weaker: BodySide | undefined;
  /** Change of the difference over six weeks, percent; towards nought is closing. */
  readonly trendPercent: number | undefined;
  readonly words: string;
}

/** Normal quantile for nine of ten within. */
const Q90 = 1.645;
const TREND_DAYS = 42;
const LEAST_SETS = 4;

/** Exercises logged for both sides in the same way, each with its difference (GYM-50, GYM-51). */
export function sideDifferences(log: StrengthLog, until: string): readonly SideDifference[] {
  return log.series.flatMap((left) => {
    if (left.side !== 'left') return [];
    const right = log.series.find(
      ({ exercise, variant, side }) =>
        side === 'right' && exercise === left.exercise && variant === left.variant,
    );
    return right && enough(left) && enough(right) ? [differenceOf(log, left, right, until)] : [];
  });
}

function enough({ sets }: StrengthSeries): boolean {
  return sets.length >= LEAST_SETS;
}

function differenceOf(
  log: StrengthLog,
  left: StrengthSeries,
  right: StrengthSeries,
  until: string,
): SideDifference {
  const mark = parseDate(addDays(until, -TREND_DAYS)) ?? 0;
  const [l, r] = [left, right].map(({ sets }) => runSeries(sets, [mark]).belief);
  const reps = usualReps([...left.sets, ...right.sets]);
  const [levelL, levelR] = [l && levelAt(l, reps), r && levelAt(r, reps)];
  const name = log.book.exercise(left.exercise).name;
  if (!l || !r || !levelL || !levelR)
    throw new RangeError(`a series of ${left.exercise} without a set has no level`);
  const percent = asymmetryPercent(Math.exp(levelL.mean), Math.exp(levelR.mean), 'one side at a time');
  const sdPercent = 100 * Math.hypot(levelL.sd, levelR.sd);
  const weaker: BodySide | undefined =
    Math.abs(percent) > Q90 * sdPercent ? (percent > 0 ? 'left' : 'right') : undefined;
  const [movedL, movedR] = [changeSince(l, 0), changeSince(r, 0)];
  const trendPercent = movedL && movedR ? 100 * (movedR.mean - movedL.mean) : undefined;
  const difference = { percent, sdPercent, weaker, trendPercent };
  return { exercise: left.exercise, name, ...difference, words: differenceWords(difference) };
}

/** Repetitions to failure in the middle of those trained: sides are compared there. */
function usualReps(sets: StrengthSeries['sets']): number {
  const reps = sets.map((set) => set.reps + (set.rir ?? 0)).sort((a, b) => a - b);
  return reps[reps.length >> 1] ?? 1;
}

function differenceWords(difference: Omit<SideDifference, 'exercise' | 'name' | 'words'>): string {
  const { percent, sdPercent, weaker, trendPercent } = difference;
  if (weaker === undefined)
    return `No difference beyond your own variation from set to set (${roundTo(Math.abs(percent), 1)} %, give or take ${roundTo(sdPercent, 1)}).`;
  const trend = trendPercent === undefined ? '' : trendWords(percent, trendPercent, sdPercent);
  return `The ${weaker} side is ${roundTo(Math.abs(percent), 1)} % weaker, give or take ${roundTo(sdPercent, 1)}: it goes first, and the other does no more than it.${trend}`;
}

function trendWords(percent: number, trend: number, sdPercent: number): string {
  if (Math.abs(trend) < sdPercent) return ' Over six weeks it has not moved beyond the noise.';
  return Math.sign(trend) === Math.sign(percent)
    ? ' Over six weeks it has grown.'
    : ' Over six weeks it has shrunk.';
}

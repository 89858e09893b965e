/**
 * Shares of the top set's load for so many warm-up sets: from a light start up to just below the top set, in steps
 * that shrink, because near the top each kilogram counts for more. One set 60 %; two 50 and 80 %; three 45 to 85 %;
 * four 40, 60, 77, 90 %. Common practice, no source.
 */
export function idealShares(warmUps: number): readonly number[] {
  if (warmUps <= 0) return [];
  if (warmUps === 1) return [0.6];
  const first = Math.max(0.3, 0.6 - 0.05 * warmUps);
  const last = Math.min(0.9, 0.7 + 0.05 * warmUps);
  return Array.from(
    { length: warmUps },
    (_, i) => first + (last - first) * (1 - (1 - i / (warmUps - 1)) ** 1.25),
  );
}

/** Repetitions by the share reached: enough to move well while light, few once heavy (common practice, no source). */
const REPS_BY_SHARE = [
  { upTo: 0.5, reps: 8 },
  { upTo: 0.65, reps: 5 },
  { upTo: 0.8, reps: 3 },
  { upTo: 0.88, reps: 2 },
] as const;

/** Nobody needs more repetitions than this to warm up for a set of fewer. */
const FEW_REPS = 5;

/** Repetitions of a warm-up at a share of the top set's load. */
export function warmUpReps(share: number, topReps: number): number {
  const reps = REPS_BY_SHARE.find((row) => share <= row.upTo)?.reps ?? 1;
  return Math.min(reps, Math.max(FEW_REPS, topReps));
}

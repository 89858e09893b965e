import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { figure } from './figure.ts';

export interface Split {
  /** Multiples of the scale's step. */
  readonly portionsG: readonly Grams[];
  /** What stays in the pan; below zero by at most half a step a portion where weights were rounded. */
  readonly restG: Grams;
}

const DUST = 1e-9;

/**
 * So many portions as equal as can be: they differ by one step at most and never weigh more than the pan (BAT-20). The rest is
 * less than a step.
 */
export function splitEqually(cookedG: Grams, count: number, stepG: Grams): Outcome<Split> {
  const steps = Math.floor(cookedG / stepG + DUST);
  if (steps < count) return tooSmall(cookedG, count, stepG);
  const base = Math.floor(steps / count);
  const larger = steps - base * count;
  return answered(
    inSteps(
      Array.from({ length: count }, (_, index) => base + (index < larger ? 1 : 0)),
      stepG,
      cookedG,
    ),
  );
}

/**
 * Portions of given weights, each brought to the scale's step so that their sum moves as little as can be (largest remainders
 * first). Together they may weigh a step more than the pan, no more.
 */
export function splitAsGiven(cookedG: Grams, weightsG: readonly Grams[], stepG: Grams): Outcome<Split> {
  const wantedG = weightsG.reduce((sum, grams) => sum + grams, 0);
  if (wantedG > cookedG + stepG + DUST) {
    return refused(
      'kitchen/portions-outweigh-the-pan',
      'portions',
      `The portions come to ${figure(wantedG)} g, the pan holds ${figure(cookedG)} g.`,
      `Take ${figure(wantedG - cookedG)} g off the portions, or weigh the pan again.`,
    );
  }
  let steps = Math.round(wantedG / stepG);
  if (steps * stepG > cookedG + stepG + DUST) steps = Math.floor(cookedG / stepG + DUST);
  const counts = weightsG.map((grams) => Math.floor(grams / stepG + DUST));
  const byRemainder = weightsG
    .map((grams, index) => ({ index, remainder: grams / stepG - (counts[index] ?? 0) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  let missing = steps - counts.reduce((sum, count) => sum + count, 0);
  for (const { index } of byRemainder) {
    if (missing <= 0) break;
    counts[index] = (counts[index] ?? 0) + 1;
    missing -= 1;
  }
  if (counts.some((count) => count < 1)) return tooSmall(cookedG, weightsG.length, stepG);
  return answered(inSteps(counts, stepG, cookedG));
}

function inSteps(counts: readonly number[], stepG: Grams, cookedG: Grams): Split {
  const portionsG = counts.map((count) => roundTo(count * stepG, 6));
  const packedG = portionsG.reduce((sum, grams) => sum + grams, 0);
  return { portionsG, restG: roundTo(cookedG - packedG, 6) };
}

function tooSmall(cookedG: Grams, count: number, stepG: Grams): Outcome<Split> {
  return refused(
    'kitchen/portions-too-small',
    'portions',
    `${count} portions of ${figure(cookedG)} g: at least one would weigh less than the scale's step of ${figure(stepG, 2)} g.`,
    'Make fewer portions, or use a finer scale step.',
  );
}

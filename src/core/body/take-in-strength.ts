import { ADULT_ENERGY } from '#core/science/adult-energy-parameters.ts';
import { BELIEFS } from './beliefs.ts';
import type { LeanEvidence } from './estimate-request.ts';
import { update } from './kalman.ts';
import type { Member } from './member.ts';
import { STATE } from './state-layout.ts';

/**
 * Strength kept as evidence on the lean share of loss. Along the Forbes curve lean tissue has changed by
 * 10.4 m ln(F / F0) kg (m the state's multiple), and strength is taken to fall by the same share as lean mass; what
 * strength does for other reasons is in its error. The tilt on m carries over to fat and lean by their covariance.
 */
export function takeInStrength(member: Member, evidence: LeanEvidence): void {
  const { belief, reference } = member;
  const fatKg = Math.max(1, belief.mean[STATE.fat] ?? 0);
  const leanKg = belief.mean[STATE.lean] ?? 0;
  const lostKg = reference.fatKg + reference.leanKg - fatKg - leanKg;
  const multiple = belief.mean[STATE.partition] ?? 0;
  const startFatKg = fatAtStart(fatKg, lostKg, multiple);
  const perMultiple = (ADULT_ENERGY.forbesKg * Math.log(fatKg / startFatKg)) / (leanKg + lostKg / 4);
  const innovation = evidence.strengthKept - (1 + perMultiple * multiple);
  const noise = evidence.sd ** 2 + BELIEFS.strengthWithoutMuscle ** 2;
  update(belief, { places: [STATE.partition], factors: [perMultiple] }, innovation, noise);
}

/** Fat at the start so that fat lost and lean lost along the scaled Forbes curve add to the tissue lost (Newton). */
function fatAtStart(fatKg: number, lostKg: number, multiple: number): number {
  const scaled = ADULT_ENERGY.forbesKg * multiple;
  let start = Math.max(fatKg / 2, fatKg + lostKg);
  for (let i = 0; i < 8; i++) {
    const miss = start - fatKg + scaled * Math.log(start / fatKg) - lostKg;
    start = Math.max(fatKg / 4, start - miss / (1 + scaled / start));
  }
  return start;
}

import type { BodyReference } from '#core/body/day-balance.ts';
import type { Gaussian } from '#core/body/gaussian.ts';
import { STATE } from '#core/body/state-layout.ts';
import type { Kilograms, KilocaloriesPerDay } from '#core/units/quantities.ts';

/** One hypothesis about the athlete and what it believes on the last day known. */
export interface StandingMember {
  /** Share of belief; the members' weights add to 1. */
  readonly weight: number;
  readonly reference: BodyReference;
  readonly belief: Gaussian;
  readonly driftSdKcal: KilocaloriesPerDay;
  readonly slowWaterSdKg: Kilograms;
}

/** Where the body stands on the last day known: the start of every path. */
export interface Standing {
  readonly asOf: string;
  readonly members: readonly StandingMember[];
}

/** Logged kcal a day that would keep the balance without cardio, as believed on the last day known. */
export function balanceOf(standing: Standing): KilocaloriesPerDay {
  let sum = 0;
  for (const { weight, belief } of standing.members) {
    const at = (place: number) => belief.mean[place] ?? 0;
    sum += weight * (at(STATE.baseline) + at(STATE.adaptation) + at(STATE.drift));
  }
  return sum;
}

import type { BodyReference } from '#core/body/day-balance.ts';
import type { Gaussian } from '#core/body/gaussian.ts';
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

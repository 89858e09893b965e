import type { BodyEstimate, PosteriorMember } from '#core/body/estimate-body.ts';
import { STATE } from '#core/body/state-layout.ts';
import type { KilocaloriesPerDay } from '#core/units/quantities.ts';

/** One hypothesis about the athlete and what it believes on the last day known; the members' weights add to 1. */
export interface StandingMember extends PosteriorMember {
  /** Body mass of a date is that before the day's food: the belief stands a day's food further on. */
  readonly beforeFood: boolean;
}

/** Where the body stands on the last day known: the start of every path. */
export interface Standing {
  readonly asOf: string;
  readonly members: readonly StandingMember[];
}

/** The estimate's posterior, with when in the day each member reads the body. */
export function standingOf({ posterior, run }: BodyEstimate): Standing {
  return {
    asOf: posterior.asOf,
    members: posterior.members.map((member, k) => ({
      ...member,
      beforeFood: run.members[k]?.hypothesis.weighed === 'before-food',
    })),
  };
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

/** Share of belief that reads the body before the day's food. */
export function earlyShareOf(standing: Standing): number {
  return standing.members.reduce((sum, { weight, beforeFood }) => sum + (beforeFood ? weight : 0), 0);
}

import type { RandomStream } from '#core/random/random-stream.ts';
import type { PlanKind } from './athlete-world.ts';

/** What the athlete really eats and does on one day. */
export interface EatenDay {
  readonly energyKcal: number;
  readonly proteinG: number;
  readonly carbohydrateG: number;
  readonly sodiumMg: number;
  /** Net energy of cardio as the athlete writes it down. */
  readonly cardioKcal: number;
}

/** The day's true intake under a plan: a share of baseline by phase, with the spread of real days about it. */
export function plannedDay(
  plan: PlanKind,
  day: number,
  dayCount: number,
  baselineKcal: number,
  deficitShare: number,
  startMassKg: number,
  stream: RandomStream,
): EatenDay {
  const share = shareOfBaseline(plan, day, dayCount, deficitShare);
  const refeed = isRefeed(plan, day);
  const energyKcal =
    baselineKcal * share * (1 + 0.05 * stream.normal()) + (refeed ? 700 + 150 * stream.normal() : 0);
  const proteinG = startMassKg * (1.9 + 0.08 * stream.normal());
  const carbohydrateShare = refeed ? 0.56 : 0.42 - 0.06 * (day / dayCount) + 0.03 * stream.normal();
  const progress = Math.max(0, day) / dayCount;
  return {
    energyKcal: Math.max(900, energyKcal),
    proteinG,
    carbohydrateG: Math.max(40, (energyKcal * carbohydrateShare) / 4),
    sodiumMg: Math.max(1200, 4200 + 800 * stream.normal() + (refeed ? 900 : 0)),
    cardioKcal: Math.max(0, 60 + 150 * progress + 35 * stream.normal()),
  };
}

function isRefeed(plan: PlanKind, day: number): boolean {
  return (
    (plan === 'refeeds' || plan === 'stepped') &&
    day > 10 &&
    (day % 8 === 0 || (day % 24 === 17 && day % 3 === 2))
  );
}

function shareOfBaseline(plan: PlanKind, day: number, dayCount: number, deficitShare: number): number {
  const progress = day / dayCount;
  const falling = 1 - deficitShare - 0.1 * Math.max(0, progress);
  switch (plan) {
    case 'level':
      return 1 - 0.03 * progress;
    case 'breaks':
      return day > 0 && day % 49 >= 35 ? 0.97 : falling;
    case 'regain':
      return progress > 0.65 ? 1.12 : falling;
    case 'stepped':
      return 1 - deficitShare * (0.6 + 0.35 * Math.floor(progress * 4));
    default:
      return falling;
  }
}

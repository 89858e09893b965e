import { BELIEFS } from './beliefs.ts';
import type { EstimateAthlete } from './estimate-request.ts';

/** One guess about what cannot be put into the state: each has a filter of its own, and the readings weigh them. */
export interface Hypothesis {
  readonly weighed: 'before-food' | 'after-food';
  /** How far expenditure may drift from the model, logged kcal per day. */
  readonly driftSdKcal: number;
  /** Error of one reading of the scale. */
  readonly scaleSdKg: number;
  /** Water that comes and goes over days for reasons not logged. */
  readonly slowWaterSdKg: number;
  /** The first reading is one of those that are not believed. */
  readonly firstReadingStray: boolean;
  /** Belief before any reading. */
  readonly prior: number;
}

const EXPENDITURE = [
  { driftSdKcal: 35, prior: 0.8 },
  { driftSdKcal: 140, prior: 0.2 },
] as const;

/** Scale and water: a calm pair, an ordinary one, a poor scale, restless water. */
const SCALES = [
  { scaleSdKg: 0.2, slowWaterSdKg: 0.06, prior: 0.25 },
  { scaleSdKg: 0.32, slowWaterSdKg: 0.09, prior: 0.45 },
  { scaleSdKg: 0.55, slowWaterSdKg: 0.15, prior: 0.15 },
  { scaleSdKg: 0.28, slowWaterSdKg: 0.4, prior: 0.15 },
] as const;

/** Water of the unlogged cycle joins what comes and goes over days. */
const CYCLING_WATER_KG = 0.16;

/** Every hypothesis for one athlete; their priors add to 1. */
export function hypothesesFor(athlete: EstimateAthlete, cycleLogged: boolean): Hypothesis[] {
  const timings: Hypothesis['weighed'][] = athlete.weighed
    ? [athlete.weighed]
    : ['before-food', 'after-food'];
  const cycling = athlete.sex === 'female' && !cycleLogged ? CYCLING_WATER_KG : 0;
  const { share } = BELIEFS.strayWeight;
  return timings.flatMap((weighed) =>
    EXPENDITURE.flatMap((expenditure) =>
      SCALES.flatMap((scale) =>
        [false, true].map((firstReadingStray) => ({
          weighed,
          driftSdKcal: expenditure.driftSdKcal,
          scaleSdKg: scale.scaleSdKg,
          slowWaterSdKg: Math.hypot(scale.slowWaterSdKg, cycling),
          firstReadingStray,
          prior: (expenditure.prior * scale.prior * (firstReadingStray ? share : 1 - share)) / timings.length,
        })),
      ),
    ),
  );
}

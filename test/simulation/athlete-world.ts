import type { RandomStream } from '#core/random/random-stream.ts';

/**
 * What may differ between athletes of a simulated cohort. Each world draws its athletes from wide ranges; none is
 * fitted to anyone. Ranges are closed; a draw is uniform unless said.
 */
export interface AthleteWorld {
  readonly name: string;
  readonly femaleShare: number;
  readonly days: Range;
  readonly activityFactor: Range;
  /** Logged energy as a share of true energy. */
  readonly loggedShare: Range;
  /** Error of one day's log, a share of its energy. */
  readonly logError: Range;
  readonly sodiumLogError: Range;
  readonly sodiumLoggedShare: number;
  /** Multiple of the Forbes curve, or a constant lean share of loss where `constantPartition`. */
  readonly partition: Range;
  readonly constantPartitionShare: number;
  readonly wobbleSdKcal: Range;
  readonly wobbleKept: Range;
  /** Random walk of expenditure, kcal per square root of a day. */
  readonly driftKcal: Range;
  readonly adaptationShare: Range;
  readonly cardioKept: Range;
  readonly scaleSdKg: Range;
  readonly gutSdKg: Range;
  readonly slowWaterSdKg: Range;
  readonly waterAnswer: Range;
  readonly cycleKg: Range;
  readonly weekRhythmKg: Range;
  readonly strayShare: Range;
  readonly missingWeights: Range;
  readonly missingIntake: Range;
  readonly gapShare: number;
  readonly beforeFoodShare: number;
  readonly bodyFatBiasSd: number;
  readonly bodyFatNoise: Range;
  readonly bodyFatEveryDays: readonly number[];
  readonly plans: readonly PlanKind[];
}

export type PlanKind = 'steady' | 'refeeds' | 'breaks' | 'regain' | 'stepped' | 'level' | 'under-way';
export type Range = readonly [low: number, high: number];

export function drawn(stream: RandomStream, range: Range): number {
  return range[0] + (range[1] - range[0]) * stream.uniform();
}

/** An ordinary preparation: weighed food, one scale, folds every two weeks. */
export const ordinaryWorld: AthleteWorld = {
  name: 'ordinary',
  femaleShare: 0.25,
  days: [84, 168],
  activityFactor: [1.45, 2],
  loggedShare: [0.84, 1.03],
  logError: [0.04, 0.06],
  sodiumLogError: [0.1, 0.2],
  sodiumLoggedShare: 1,
  partition: [0.1, 0.9],
  constantPartitionShare: 0,
  wobbleSdKcal: [100, 130],
  wobbleKept: [0.7, 0.78],
  driftKcal: [0, 0],
  adaptationShare: [0.1, 0.18],
  cardioKept: [0.85, 1],
  scaleSdKg: [0.26, 0.34],
  gutSdKg: [0.15, 0.22],
  slowWaterSdKg: [0, 0],
  waterAnswer: [0.9, 1.1],
  cycleKg: [0, 0.3],
  weekRhythmKg: [0, 0],
  strayShare: [0.01, 0.03],
  missingWeights: [0.06, 0.14],
  missingIntake: [0.03, 0.08],
  gapShare: 0.5,
  beforeFoodShare: 0,
  bodyFatBiasSd: 2,
  bodyFatNoise: [0.5, 0.8],
  bodyFatEveryDays: [14],
  plans: ['steady', 'refeeds', 'refeeds'],
};

/** Everything at once, far outside the ordinary: other noise, other bias, other partition, other habits. */
export const wideWorld: AthleteWorld = {
  name: 'wide',
  femaleShare: 0.5,
  days: [90, 170],
  activityFactor: [1.35, 2.2],
  loggedShare: [0.75, 1.1],
  logError: [0.02, 0.13],
  sodiumLogError: [0.05, 0.45],
  sodiumLoggedShare: 0.75,
  partition: [0, 1.2],
  constantPartitionShare: 0.4,
  wobbleSdKcal: [40, 190],
  wobbleKept: [0.3, 0.88],
  driftKcal: [0, 16],
  adaptationShare: [0.03, 0.25],
  cardioKept: [0.45, 1.1],
  scaleSdKg: [0.08, 0.5],
  gutSdKg: [0.1, 0.4],
  slowWaterSdKg: [0, 0.3],
  waterAnswer: [0.55, 1.5],
  cycleKg: [0, 0.9],
  weekRhythmKg: [0, 0.15],
  strayShare: [0, 0.06],
  missingWeights: [0, 0.45],
  missingIntake: [0, 0.2],
  gapShare: 0.4,
  beforeFoodShare: 0.6,
  bodyFatBiasSd: 2.8,
  bodyFatNoise: [0.3, 1.6],
  bodyFatEveryDays: [7, 14, 28, 400],
  plans: ['steady', 'refeeds', 'breaks', 'regain', 'stepped', 'level', 'under-way'],
};

/** Ordinary in all but one respect: each of these breaks one assumption of the estimator. */
export const oneSidedWorlds: readonly AthleteWorld[] = [
  { ...ordinaryWorld, name: 'noisy scale', scaleSdKg: [0.5, 0.8], gutSdKg: [0.3, 0.5] },
  { ...ordinaryWorld, name: 'stray readings', strayShare: [0.06, 0.1] },
  { ...ordinaryWorld, name: 'loose logs', logError: [0.12, 0.2], missingIntake: [0.15, 0.3] },
  { ...ordinaryWorld, name: 'far logs', loggedShare: [0.65, 0.8] },
  { ...ordinaryWorld, name: 'all fat', partition: [0, 0.1] },
  { ...ordinaryWorld, name: 'much lean', partition: [0.9, 1.3] },
  { ...ordinaryWorld, name: 'constant partition', partition: [0.05, 0.45], constantPartitionShare: 1 },
  { ...ordinaryWorld, name: 'restless expenditure', driftKcal: [12, 22], wobbleSdKcal: [150, 220] },
  { ...ordinaryWorld, name: 'strong adaptation', adaptationShare: [0.22, 0.32] },
  { ...ordinaryWorld, name: 'cycling water', femaleShare: 1, cycleKg: [0.5, 1] },
  { ...ordinaryWorld, name: 'restless water', slowWaterSdKg: [0.3, 0.5], waterAnswer: [0.5, 1.6] },
  { ...ordinaryWorld, name: 'week rhythm', weekRhythmKg: [0.15, 0.3] },
  { ...ordinaryWorld, name: 'weighed before food', beforeFoodShare: 1 },
  { ...ordinaryWorld, name: 'few weigh-ins', missingWeights: [0.55, 0.75], gapShare: 1 },
  { ...ordinaryWorld, name: 'no body fat', bodyFatEveryDays: [400] },
  { ...ordinaryWorld, name: 'breaks and regain', plans: ['breaks', 'regain', 'stepped', 'under-way'] },
];

/**
 * What is believed before the first reading, and how fast things may change. Each figure says where it comes from;
 * none is fitted to one group of athletes. Changing one changes every estimate: run `bench/estimate.ts` before and after.
 */
export const BELIEFS = {
  /** Expenditure over resting, without logged cardio: people who lift and walk. The model's own range is 1.4 to 2.4. */
  activityFactor: { mean: 1.72, sd: 0.17 },
  /** True kcal in a logged one: even weighed logs run some percent low. Common practice, no source. */
  trueShare: { mean: 1.08, sd: 0.07 },
  /**
   * Lean share of loss as a multiple of the Forbes curve. The published preparations (Kistler 2014, Robinson 2015,
   * Michailidis 2025, Halliday 2016) lose 14 to 43 % lean, which is 0.15 to 0.8 of the curve.
   */
  partition: { mean: 0.54, sd: 0.23 },
  /** Drift of that multiple per square root of a day. */
  partitionWalk: 0.005,
  carbohydrateFluid: { mean: 1, sd: 0.35 },
  /** Logged sodium is far from what was eaten, which weakens its answer on the scale. */
  sodiumFluid: { mean: 0.75, sd: 0.35 },
  /** Net cardio is partly made up for over the rest of the day. Common practice, no source. */
  cardioShare: { mean: 0.85, sd: 0.2 },
  glycogenKg: { mean: 0.47, sd: 0.08 },
  fluidSdKg: 0.5,
  adaptationSdKcal: 40,
  /** Day-to-day swing of expenditure: a share of baseline, and how much of it is left the next day. */
  wobble: { share: 0.043, kept: 0.74 },
  driftKeptPerDay: Math.exp(-1 / 60),
  /** Error of a day's logged energy, a share of it. */
  logErrorShare: 0.06,
  /** Error of carbohydrate beyond that of energy. */
  carbohydrateErrorShare: 0.06,
  /** Spread of a day that was not logged, a share of the recent average, beside the spread of the logged days. */
  unloggedShare: 0.12,
  /** Fluid that comes and goes within a day or two, with and without logged sodium. */
  fluidNoiseKg: 0.08,
  fluidNoiseWithoutSodiumKg: 0.2,
  slowWater: { kept: 0.85 },
  /** Gut content and what else moves the scale for a day or two; 0.35 kg in all with the reading (robinson-watson-1965). */
  gut: { sdKg: 0.25, kept: 0.57 },
  /** Cosine and sine of the week, kg: 0.35 % within the week, most of it eaten and logged (turicchi-2020). */
  weekRhythmSdKg: 0.06,
  /** Water at the onset of menses, about 0.5 kg; from memory. */
  cycleKg: { mean: 0.4, sd: 0.25 },
  /** Water of a first creatine loading, 1 to 2 kg; from memory. */
  creatineKg: { mean: 1.2, sd: 0.6 },
  /** Zero offset of an unknown scale (yorkin-2013, dial scales). */
  otherScaleSdKg: 0.9,
  /** Wrong scale, shoes, a typing slip: share of readings, and their error. */
  strayWeight: { share: 0.025, sdKg: 1.8 },
  strayBodyFat: { share: 0.03, sdPercent: 5 },
  /** Drift of a method's bias as the body changes, points of percent per square root of a day. */
  methodWalkPercent: 0.04,
  /** Body fat at the start of a preparation, a share of mass. Common practice, no source. */
  fatShare: { male: { mean: 0.16, sd: 0.045 }, female: { mean: 0.24, sd: 0.05 } },
  /** Strength moves for reasons other than muscle: 1 sd, a share. Common practice, no source. */
  strengthWithoutMuscle: 0.04,
} as const;

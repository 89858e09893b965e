/**
 * What is believed before the first reading, and how fast things may change. Every figure states where it comes
 * from; none is fitted to one group of athletes.
 */
export const BELIEFS = {
  /** Activity factor without logged cardio: mean and sd for people who lift (range of the model 1.4 to 2.4). */
  activityFactor: { mean: 1.7, sd: 0.16 },
  /** True kcal in a logged one: weighed food logs run a few percent low. Common practice, no source. */
  trueShare: { mean: 1.07, sd: 0.065 },
  /**
   * Multiple of the Forbes curve. A lifting, high-protein preparation loses about 22 % lean, sd 12 % (our reading of the
   * published preparations), which is 0.35 of the curve at 13 kg of fat; case studies reach the whole curve.
   */
  partition: { mean: 0.5, sd: 0.25 },
  carbohydrateFluid: { mean: 1, sd: 0.35 },
  /** Logged sodium is far from what was eaten, which weakens its answer on the scale. */
  sodiumFluid: { mean: 0.75, sd: 0.35 },
  /** Net cardio is partly made up for over the rest of the day. */
  cardioShare: { mean: 0.85, sd: 0.2 },
  glycogenKg: { mean: 0.47, sd: 0.08 },
  fluidSdKg: 0.5,
  adaptationSdKcal: 40,
  /** Day-to-day swing of expenditure: share of baseline, and how much of it is left the next day. */
  wobble: { share: 0.042, kept: 0.72 },
  driftKeptPerDay: Math.exp(-1 / 60),
  /** Error of a day's logged energy, a share of it. */
  logErrorShare: 0.07,
  /** Error of carbohydrate beyond that of energy. */
  carbohydrateErrorShare: 0.1,
  /** Fluid that comes and goes within a day or two: salt that was not logged. */
  fluidNoiseKg: 0.1,
  fluidNoiseWithoutSodiumKg: 0.22,
  slowWater: { sdKg: 0.12, sdKgCycling: 0.22, kept: 0.85 },
  gut: { sdKg: 0.22, kept: 0.55 },
  weekRhythmSdKg: 0.06,
  cycleKg: { mean: 0.4, sd: 0.25 },
  creatineKg: { mean: 1.2, sd: 0.6 },
  otherScaleSdKg: 0.9,
  /** Wrong scale, shoes, a typing slip: share of readings and their error. */
  strayWeight: { share: 0.025, sdKg: 1.8 },
} as const;

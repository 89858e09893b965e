import { restingMifflin } from '#core/science/resting-energy-mifflin.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { BELIEFS } from './beliefs.ts';
import type { BodyReference } from './day-balance.ts';
import type { EstimateAthlete } from './estimate-request.ts';
import { gaussian, type Gaussian, spread } from './gaussian.ts';
import { GLYCOGEN_WITH_WATER } from './glycogen-water.ts';
import type { Hypothesis } from './hypothesis.ts';
import type { Uses } from './uses.ts';
import { SPENT_DAYS, STATE, STATE_SIZE } from './state-layout.ts';

/** A hypothesis with the belief it has come to so far. Mutable: the filter moves it from day to day. */
export interface Member {
  readonly hypothesis: Hypothesis;
  readonly reference: BodyReference;
  readonly belief: Gaussian;
  /** Logarithm of prior times likelihood so far. */
  logWeight: number;
  /** Readings in a row that were not believed, signed by the side they lie on. */
  straysInARow: number;
}

/** What is believed of the mass before the filter starts. */
export interface StartMass {
  readonly meanKg: Kilograms;
  readonly sdKg: Kilograms;
}

/** Spread of resting energy between people of one size (mifflin-1990: R2 0.71), a share, beyond that of activity. */
const RESTING_SHARE_SD = 0.04;

/** A member that has seen nothing: beliefs spread out over the state for this athlete and mass. */
export function startMember(
  athlete: EstimateAthlete,
  hypothesis: Hypothesis,
  start: StartMass,
  uses: Uses,
): Member {
  const belief = gaussian(STATE_SIZE);
  const { mean: fatShare, sd: fatShareSd } = BELIEFS.fatShare[athlete.sex];
  const massKg = start.meanKg;
  const restingKcal = restingMifflin({ ...athlete, massKg });
  const fatKg = fatShare * massKg;
  const leanKg = massKg - fatKg - GLYCOGEN_WITH_WATER * BELIEFS.glycogenKg.mean;
  belief.mean[STATE.fat] = fatKg;
  belief.mean[STATE.lean] = leanKg;
  const tissue = [STATE.fat, STATE.lean];
  spread(belief, { places: tissue, factors: [massKg, -massKg] }, fatShareSd ** 2);
  spread(belief, { places: tissue, factors: [fatShare, 1 - fatShare] }, start.sdKg ** 2);
  believeWater(belief, hypothesis, uses);
  believeExpenditure(belief, hypothesis, restingKcal);
  return {
    hypothesis,
    reference: { fatKg, leanKg, restingKcal, massKg },
    belief,
    logWeight: Math.log(hypothesis.prior),
    straysInARow: 0,
  };
}

function believe(belief: Gaussian, place: number, mean: number, sd: number): void {
  belief.mean[place] = mean;
  belief.covariance[place * STATE_SIZE + place] = sd * sd;
}

function believeWater(belief: Gaussian, hypothesis: Hypothesis, uses: Uses): void {
  believe(belief, STATE.glycogen, BELIEFS.glycogenKg.mean, BELIEFS.glycogenKg.sd);
  believe(belief, STATE.fluid, 0, BELIEFS.fluidSdKg);
  believe(belief, STATE.slowWater, 0, hypothesis.slowWaterSdKg);
  believe(belief, STATE.gut, 0, BELIEFS.gut.sdKg);
  believe(belief, STATE.carbohydrateFluid, BELIEFS.carbohydrateFluid.mean, BELIEFS.carbohydrateFluid.sd);
  believe(belief, STATE.sodiumFluid, BELIEFS.sodiumFluid.mean, BELIEFS.sodiumFluid.sd);
  believe(belief, STATE.weekCosine, 0, BELIEFS.weekRhythmSdKg);
  believe(belief, STATE.weekSine, 0, BELIEFS.weekRhythmSdKg);
  if (uses.cycle) believe(belief, STATE.cycle, BELIEFS.cycleKg.mean, BELIEFS.cycleKg.sd);
  if (uses.creatine) believe(belief, STATE.creatine, BELIEFS.creatineKg.mean, BELIEFS.creatineKg.sd);
  if (uses.otherScale) believe(belief, STATE.scaleOffset, 0, BELIEFS.otherScaleSdKg);
  for (const { place, biasPercent } of uses.methods) believe(belief, place, 0, biasPercent);
}

/** Baseline in logged kcal is resting times activity over the true share: a log that runs low makes it look low. */
function believeExpenditure(belief: Gaussian, hypothesis: Hypothesis, restingKcal: number): void {
  const { activityFactor, trueShare, partition, cardioShare, wobble } = BELIEFS;
  const baseline = (activityFactor.mean * restingKcal) / trueShare.mean;
  believe(
    belief,
    STATE.baseline,
    baseline,
    Math.hypot((activityFactor.sd / activityFactor.mean) * baseline, RESTING_SHARE_SD * baseline),
  );
  believe(belief, STATE.trueShare, trueShare.mean, 0);
  spread(
    belief,
    { places: [STATE.baseline, STATE.trueShare], factors: [-baseline / trueShare.mean, 1] },
    trueShare.sd ** 2,
  );
  believe(belief, STATE.partition, partition.mean, partition.sd);
  believe(belief, STATE.cardioShare, cardioShare.mean, cardioShare.sd);
  believe(belief, STATE.adaptation, 0, BELIEFS.adaptationSdKcal);
  believe(belief, STATE.drift, 0, hypothesis.driftSdKcal / 2);
  believe(belief, STATE.wobble, 0, wobble.share * baseline);
  for (let i = 0; i < SPENT_DAYS; i++) believe(belief, STATE.spent + i, baseline, 300);
}

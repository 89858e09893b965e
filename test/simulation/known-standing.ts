import { gaussian, spread } from '#core/body/gaussian.ts';
import { STATE, STATE_SIZE } from '#core/body/state-layout.ts';
import type { Standing } from '#core/course/standing.ts';

/** A body whose posterior is written down by hand, so that the course can be tested apart from the estimate. */
export interface KnownBody {
  readonly asOf?: string;
  readonly fatKg: number;
  readonly leanTissueKg: number;
  /** True expenditure in balance without cardio, kcal a day; logs are taken as true. */
  readonly baselineKcal: number;
  readonly restingKcal: number;
  /** Lean share of loss as a multiple of the Forbes curve. */
  readonly partition?: number;
  readonly partitionSd?: number;
  /** 0: every path is the same body and meets no noise but that of days. */
  readonly doubt?: number;
}

export function knownStanding(body: KnownBody): Standing {
  const { fatKg, leanTissueKg, baselineKcal, restingKcal, doubt = 1 } = body;
  const belief = gaussian(STATE_SIZE);
  const set = (place: number, mean: number, sd: number) => {
    belief.mean[place] = mean;
    belief.covariance[place * STATE_SIZE + place] = (doubt * sd) ** 2;
  };
  set(STATE.fat, fatKg, 0);
  set(STATE.lean, leanTissueKg, 0.1);
  // Fat and lean are told apart less well than their sum.
  spread(belief, { places: [STATE.fat, STATE.lean], factors: [1, -1] }, (doubt * 0.8) ** 2);
  set(STATE.glycogen, 0.45, 0.03);
  set(STATE.fluid, 0, 0.15);
  set(STATE.baseline, baselineKcal, 70);
  set(STATE.trueShare, 1, 0.02);
  set(STATE.partition, body.partition ?? 0.45, 0);
  spread(belief, { places: [STATE.partition], factors: [1] }, (body.partitionSd ?? doubt * 0.15) ** 2);
  set(STATE.carbohydrateFluid, 1, 0.2);
  set(STATE.sodiumFluid, 0.75, 0.2);
  set(STATE.cardioShare, 0.9, 0.1);
  return {
    asOf: body.asOf ?? '2027-03-01',
    members: [
      {
        weight: 1,
        reference: { fatKg, leanKg: leanTissueKg, restingKcal, massKg: fatKg + leanTissueKg + 3.7 * 0.45 },
        belief,
        driftSdKcal: doubt * 60,
        slowWaterSdKg: doubt * 0.12,
        beforeFood: false,
      },
    ],
  };
}

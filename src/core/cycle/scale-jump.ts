import type { BodyEstimate } from '../body/estimate-body.ts';
import type { Row } from '../body/gaussian.ts';
import { transitionOf } from '../body/day-transition.ts';
import type { Step } from '../body/run-filter.ts';
import {
  backOverDay,
  backOverNewScale,
  backOverUpdate,
  emptyAdjoint,
  smoothedAlong,
} from '../body/smooth.ts';
import { STATE } from '../body/state-layout.ts';
import type { Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';

export type JumpCause = 'tissue' | 'carbohydrate' | 'salt' | 'other water' | 'gut' | 'scale';

/** What the scale's move from one weigh-in to the next is believed to be made of. */
export interface ScaleJump {
  readonly from: string;
  readonly to: string;
  readonly jumpKg: Kilograms;
  /** In fixed order; they add up to the jump. `scale` is what nothing else explains. */
  readonly parts: readonly { readonly cause: JumpCause; readonly kg: Kilograms }[];
}

/** Glycogen with the water bound to it, kg per kg (hall-2011: 2.7 kg of water per kg). */
const GLYCOGEN_WITH_WATER = 3.7;

/**
 * Splits the last move of the scale into tissue, glycogen, fluid, other water and gut, each as believed on either day
 * in the light of the other (RUN-23). Needs an estimate that kept its steps; undefined with fewer than two weigh-ins.
 */
export function scaleJump(estimate: BodyEstimate): ScaleJump | undefined {
  const { run, lived } = estimate;
  const weighed = run.days.flatMap((_, index) => {
    const day = lived[index];
    return day?.weightKg === undefined ? [] : [{ index, date: day.date, kg: day.weightKg }];
  });
  const [before, now] = weighed.slice(-2);
  if (!before || !now) return undefined;
  const parts = { tissue: 0, carbohydrate: 0, salt: 0, 'other water': 0, gut: 0 };
  for (const [k, weight] of run.weights.entries()) {
    const steps = run.steps[k] ?? [];
    const at = (index: number) => rowsAt(estimate, index);
    const then = meansOn(steps, before.index, at(before.index));
    const since = meansOn(steps, now.index, at(now.index));
    for (const cause of CAUSES) parts[cause] += weight * ((since[cause] ?? 0) - (then[cause] ?? 0));
  }
  const jumpKg = now.kg - before.kg;
  const explained = CAUSES.reduce((sum, cause) => sum + parts[cause], 0);
  return {
    from: before.date,
    to: now.date,
    jumpKg: roundTo(jumpKg, 2),
    parts: [
      ...CAUSES.map((cause) => ({ cause, kg: roundTo(parts[cause], 2) })),
      { cause: 'scale' as const, kg: roundTo(jumpKg - explained, 2) },
    ],
  };
}

const CAUSES = ['tissue', 'carbohydrate', 'salt', 'other water', 'gut'] as const;
type Explained = (typeof CAUSES)[number];

function rowsAt({ lived }: BodyEstimate, index: number): Readonly<Record<Explained, Row>> {
  const mass = lived[index]?.mass;
  const factorOf = (place: number) => mass?.factors[mass.places.indexOf(place)] ?? 0;
  return {
    tissue: { places: [STATE.fat, STATE.lean], factors: [1, 1] },
    carbohydrate: { places: [STATE.glycogen], factors: [GLYCOGEN_WITH_WATER] },
    salt: { places: [STATE.fluid], factors: [1] },
    'other water': {
      places: [STATE.slowWater, STATE.cycle, STATE.creatine],
      factors: [1, factorOf(STATE.cycle), factorOf(STATE.creatine)],
    },
    gut: { places: [STATE.gut], factors: [1] },
  };
}

/** Means along the rows on one day, in the light of every later reading of the run. */
function meansOn(
  steps: readonly Step[],
  day: number,
  rows: Readonly<Record<Explained, Row>>,
): Partial<Record<Explained, number>> {
  const adjoint = emptyAdjoint();
  for (const step of steps.toReversed()) {
    if (step.kind === 'predict') backOverDay(adjoint, transitionOf(step.jacobian));
    else if (step.kind === 'update') backOverUpdate(adjoint, step.update);
    else if (step.kind === 'new-scale') backOverNewScale(adjoint);
    else if (step.what === 'body' && step.day === day) {
      const { belief } = step;
      const means: Partial<Record<Explained, number>> = {};
      for (const cause of CAUSES) means[cause] = smoothedAlong(belief, adjoint, rows[cause]).mean;
      return means;
    }
  }
  return {};
}

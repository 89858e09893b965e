import { readEstimate, type ReadEstimate } from '../body/estimate.ts';
import type { EstimateAnswer, EstimateRequest } from '../body/estimate-request.ts';
import type { DoubtfulWeight } from '../body/suspect-units.ts';
import type { Outcome } from '../problems/problem.ts';
import { scaleJump, type ScaleJump } from './scale-jump.ts';

/** What the body did, as the screens show it: plain data that a worker can hand over. */
export interface BodyNow {
  /** Every day since the first weigh-in, each in the light of all days up to the last. */
  readonly answer: EstimateAnswer;
  readonly jump: ScaleJump | undefined;
  /** Readings that cannot be what they say, to be asked about. */
  readonly doubtful: readonly DoubtfulWeight[];
  /** How much was logged, for what is said beside the figures. */
  readonly log: { readonly days: number; readonly weighIns: number; readonly loggedDays: number };
}

/** Reads a body log with what the charts need kept. */
export function readBody(request: EstimateRequest): Outcome<ReadEstimate> {
  return readEstimate(request, true);
}

/** What the Body place shows of an estimate that kept its steps. */
export function bodyNow({ request, answer, estimate }: ReadEstimate): BodyNow {
  return {
    answer,
    jump: scaleJump(estimate),
    doubtful: estimate.doubtful,
    log: {
      days: answer.days.length,
      weighIns: request.days.filter((day) => day.weightKg !== undefined).length,
      loggedDays: request.days.filter((day) => day.intake !== undefined).length,
    },
  };
}

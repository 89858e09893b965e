import { readShape } from '#core/problems/from-issues.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import { checkDays } from './check-days.ts';
import { type BodyEstimate, estimateBody } from './estimate-body.ts';
import { type EstimateAnswer, estimateRequest, type EstimateRequest } from './estimate-request.ts';
import { estimateWhy } from './estimate-why.ts';
import { believedOf, foretoldOf } from './mixture.ts';
import type { DayParts } from './run-filter.ts';
import { smoothRun } from './smooth-run.ts';

/** The answer with what it was drawn from: the beliefs day by day, the posterior. */
export interface ReadEstimate {
  readonly request: EstimateRequest;
  readonly answer: EstimateAnswer;
  readonly estimate: BodyEstimate;
}

/**
 * What the body did and where the plan leads: a request of any shape in; the answer or a problem out (EST-01).
 * Filtered, so that each day knows only what was known on it; `smooth` sees each day in the light of all up to the last.
 */
export function answerEstimate(input: unknown, smooth = false): Outcome<EstimateAnswer> {
  const request = readShape(estimateRequest, input, 'body');
  if (!request.ok) return request;
  const read = readEstimate(request.value, smooth);
  return read.ok ? answered(read.value.answer) : read;
}

/** The same for a request whose shape is known: for the course and the app, which need more than the answer. */
export function readEstimate(request: EstimateRequest, smooth = false): Outcome<ReadEstimate> {
  const checked = checkDays(request);
  if (!checked.ok) return checked;
  const estimate = estimateBody(request, smooth);
  if (!estimate.ok) return estimate;
  const { past, future, run, lived } = estimate.value;
  const days = smooth ? smoothRun(run, lived) : past;
  const answer: EstimateAnswer = {
    ...(request.id === undefined ? {} : { id: request.id }),
    days: days.map(dayOf),
    forecast: future.map(({ date, massKg, fatKg }) => ({
      date,
      massKg: foretoldOf(massKg, 4),
      fatKg: foretoldOf(fatKg, 4),
    })),
    why: [],
  };
  const why = estimateWhy({ request, answer, estimate: estimate.value, smooth });
  return answered({ request, answer: { ...answer, why }, estimate: estimate.value });
}

function dayOf({ date, massKg, fatKg, leanKg, maintenanceKcal }: DayParts): EstimateAnswer['days'][number] {
  return {
    date,
    massKg: believedOf(massKg, 4),
    fatKg: believedOf(fatKg, 4),
    leanKg: believedOf(leanKg, 4),
    maintenanceKcal: believedOf(maintenanceKcal, 2),
  };
}

import type { AnsweredMeal, DayAnswer } from '#core/day/day-answer.ts';
import type { DayRequest } from '#core/day/day-request.ts';
import { planDay } from '#core/day/plan-day.ts';
import type { Outcome } from '#core/problems/problem.ts';
import { solvePlates } from '#outside/solver/plate-solver.ts';

export interface PlanQuestion {
  readonly number: number;
  readonly request: DayRequest;
}

export type PlanReply =
  | { readonly number: number; readonly better: readonly AnsweredMeal[] }
  | { readonly number: number; readonly outcome: Outcome<DayAnswer> };

/** Plans beside the screen, which never waits for it. */
self.addEventListener('message', (event: MessageEvent<PlanQuestion>) => {
  const { number, request } = event.data;
  const reply = (message: PlanReply): void => self.postMessage(message);
  const outcome = planDay(request, {
    solver: solvePlates,
    clockMs: () => performance.now(),
    onBetter: (better) => reply({ number, better }),
  });
  reply({ number, outcome });
});

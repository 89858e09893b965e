import loadHighs, { type Highs } from 'highs';
import wasmUrl from 'highs/runtime?url';
import { refused, type Outcome } from '#core/problems/problem.ts';
import type { WeekPlan } from '#core/week/week-plan.ts';
import type { WeekRequest } from '#core/week/week-request.ts';
import { solveWeek } from '#outside/week-solver/solve-week.ts';

export interface WeekQuestion {
  readonly number: number;
  readonly request: WeekRequest;
}

export interface WeekReply {
  readonly number: number;
  readonly outcome: Outcome<WeekPlan>;
}

let solver: Promise<Highs> | undefined;

/** Plans weeks beside the screen; the solver is loaded with the first question. */
self.addEventListener('message', (event: MessageEvent<WeekQuestion>) => {
  const { number, request } = event.data;
  void answer(request).then((outcome) => {
    const reply: WeekReply = { number, outcome };
    self.postMessage(reply);
  });
});

async function answer(request: WeekRequest): Promise<Outcome<WeekPlan>> {
  try {
    solver ??= loadHighs({ locateFile: () => wasmUrl });
    return solveWeek(await solver, request);
  } catch (fault) {
    solver = undefined;
    const words = fault instanceof Error ? fault.message : String(fault);
    return refused(
      'week/solver-failed',
      '',
      `The week's solver stopped: ${words}.`,
      'Ask again; if it stays so, load the page anew while online.',
    );
  }
}

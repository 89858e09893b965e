import { refused, type Outcome } from '#core/problems/problem.ts';
import type { WeekPlan } from '#core/week/week-plan.ts';
import type { WeekRequest } from '#core/week/week-request.ts';
import type { WeekQuestion, WeekReply } from './week-worker.ts';

const waiting = new Map<number, (outcome: Outcome<WeekPlan>) => void>();
let worker: Worker | undefined;
let asked = 0;

/** Has the worker plan a week. */
export function weekInWorker(request: WeekRequest): Promise<Outcome<WeekPlan>> {
  worker ??= startWorker();
  asked += 1;
  const question: WeekQuestion = { number: asked, request };
  return new Promise((done) => {
    waiting.set(question.number, done);
    worker?.postMessage(question);
  });
}

function startWorker(): Worker {
  const started = new Worker(new URL('./week-worker.ts', import.meta.url), { type: 'module' });
  started.addEventListener('message', (event: MessageEvent<WeekReply>) => {
    const { number, outcome } = event.data;
    waiting.get(number)?.(outcome);
    waiting.delete(number);
  });
  started.addEventListener('error', () => {
    // The worker is gone with whatever it was asked; the next question starts another.
    worker = undefined;
    started.terminate();
    const lost = refused<WeekPlan>(
      'week/planner-stopped',
      '',
      'The planner stopped in the middle.',
      'Ask for the week again.',
    );
    for (const done of waiting.values()) done(lost);
    waiting.clear();
  });
  return started;
}

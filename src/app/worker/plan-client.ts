import type { AnsweredMeal, DayAnswer } from '#core/day/day-answer.ts';
import type { DayRequest } from '#core/day/day-request.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import type { PlanQuestion, PlanReply } from './plan-worker.ts';

interface Waiting {
  readonly onBetter: (meals: readonly AnsweredMeal[]) => void;
  readonly done: (outcome: Outcome<DayAnswer>) => void;
}

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let asked = 0;

/** Has the worker plan a day; `onBetter` is called with the best meals so far while it improves. */
export function answerInWorker(
  request: DayRequest,
  onBetter: (meals: readonly AnsweredMeal[]) => void,
): Promise<Outcome<DayAnswer>> {
  worker ??= startWorker();
  asked += 1;
  const question: PlanQuestion = { number: asked, request };
  return new Promise((done) => {
    waiting.set(question.number, { onBetter, done });
    worker?.postMessage(question);
  });
}

function startWorker(): Worker {
  const started = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  started.addEventListener('message', (event: MessageEvent<PlanReply>) => {
    const reply = event.data;
    const asker = waiting.get(reply.number);
    if (!asker) return;
    if ('better' in reply) {
      asker.onBetter(reply.better);
      return;
    }
    waiting.delete(reply.number);
    asker.done(reply.outcome);
  });
  started.addEventListener('error', () => {
    // The worker is gone with whatever it was asked; the next question starts another.
    worker = undefined;
    started.terminate();
    const lost = refused<DayAnswer>(
      'day/planner-stopped',
      '',
      'The planner stopped in the middle.',
      'Ask for the plan again.',
    );
    for (const asker of waiting.values()) asker.done(lost);
    waiting.clear();
  });
  return started;
}

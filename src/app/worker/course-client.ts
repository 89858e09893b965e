import { refused } from '#core/problems/problem.ts';
import type { CourseQuestion, CourseQuestions, CourseReply, QuestionName } from './course-worker.ts';

const waiting = new Map<number, (outcome: CourseReply['outcome']) => void>();
let worker: Worker | undefined;
let asked = 0;

/** Has the worker estimate or forecast. A worker that dies answers everyone with a problem; the next question starts another. */
export function askCourse<Name extends QuestionName>(
  name: Name,
  asks: CourseQuestions[Name]['asks'],
): Promise<CourseQuestions[Name]['answers']> {
  worker ??= startWorker();
  asked += 1;
  // The pairing of name and question is that of the parameter; the compiler cannot carry it into the union.
  const question = { number: asked, name, asks } as CourseQuestion;
  return new Promise((done) => {
    waiting.set(question.number, (outcome) => done(outcome as CourseQuestions[Name]['answers']));
    worker?.postMessage(question);
  });
}

function startWorker(): Worker {
  const started = new Worker(new URL('./course-worker.ts', import.meta.url), { type: 'module' });
  started.addEventListener('message', (event: MessageEvent<CourseReply>) => {
    const { number, outcome } = event.data;
    waiting.get(number)?.(outcome);
    waiting.delete(number);
  });
  started.addEventListener('error', () => {
    worker = undefined;
    started.terminate();
    const lost = refused(
      'course/forecast-stopped',
      '',
      'The forecast stopped in the middle.',
      'Go to another place and come back; the log itself is whole.',
    );
    for (const done of waiting.values()) done(lost);
    waiting.clear();
  });
  return started;
}

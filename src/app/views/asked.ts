import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { openName } from '../state/journals.ts';

/** What the worker is asked and what it has answered so far. */
export type Asked<Value> =
  | { readonly status: 'working' }
  /** `stale`: the journal has moved on and a newer answer is on its way. */
  | { readonly status: 'answered'; readonly outcome: Outcome<Value>; readonly stale: boolean };

/**
 * A figure that a worker keeps up to date: asked anew whenever the question changes, only while a screen looks at it.
 * The last answer stays in sight until the next is there, but never that of another journal.
 */
export function keptAsked<Question, Value>(
  question: ReadonlySignal<Outcome<Question>>,
  ask: (question: Question) => Promise<Outcome<Value>>,
): ReadonlySignal<Asked<Value>> {
  let [askedFor, turn] = ['', 0];
  let stop: (() => void) | undefined;
  const now = signal<Asked<Value>>(
    { status: 'working' },
    {
      watched: () => {
        stop = effect(follow);
      },
      unwatched: () => {
        stop?.();
      },
    },
  );
  function follow(): void {
    const next = question.value;
    const key = `${openName.value} ${JSON.stringify(next)}`;
    if (key === askedFor) return;
    const sameJournal = askedFor.startsWith(`${openName.value} `);
    askedFor = key;
    turn += 1;
    const mine = turn;
    if (!next.ok) {
      now.value = { status: 'answered', outcome: next, stale: false };
      return;
    }
    const last = now.peek();
    now.value =
      sameJournal && last.status === 'answered' && last.outcome.ok
        ? { ...last, stale: true }
        : { status: 'working' };
    void ask(next.value).then(
      (outcome) => {
        if (mine === turn) now.value = { status: 'answered', outcome, stale: false };
      },
      (fault: unknown) => {
        askedFor = '';
        if (mine === turn) now.value = { status: 'answered', outcome: notAsked(fault), stale: false };
      },
    );
  }
  return now;
}

/** The question did not reach the worker. */
function notAsked(fault: unknown): Outcome<never> {
  const words = fault instanceof Error ? fault.message : String(fault);
  return refused(
    'course/not-asked',
    '',
    `The forecast could not be asked: ${words}.`,
    'Go to another place and come back; the log itself is whole.',
  );
}

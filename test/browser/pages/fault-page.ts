import { importText, journalText } from '../../../src/app/state/copies.ts';
import { start } from '../../../src/app/state/journals.ts';
import * as journal from '../../../src/app/state/open-journal.ts';

/** How a step of the browser's storage goes wrong; killed: behind it the page stands still until its process is ended. */
type Fault = 'throws' | 'aborts' | 'is full' | 'is the last';

let [fault, at, steps]: [Fault, number, number] = ['throws', 0, 0];

/** One step: a transaction begun, a record written, an answer that is about to be given, one that was given. */
function step<Result>(carryOut: () => Result, abort: (done: Result) => void): Result {
  steps += 1;
  if (steps !== at) return carryOut();
  if (fault === 'throws') throw new DOMException('the disk failed', 'UnknownError');
  if (fault === 'is full') throw new DOMException('no room', 'QuotaExceededError');
  const done = carryOut();
  if (fault === 'is the last') standStill();
  else abort(done);
  return done;
}

function standStill(): void {
  Reflect.get(globalThis, 'bringDown')();
  const until = performance.now() + 3000;
  while (performance.now() < until);
}

/** From now on a call of this method is a step where `counts` says so; `changeOf` finds its transaction. */
function watch(
  owner: object,
  verb: string,
  counts: (args: readonly unknown[]) => boolean,
  changeOf: (self: unknown, done: unknown) => unknown,
): void {
  const original = Reflect.get(owner, verb);
  Reflect.set(owner, verb, function (this: unknown, ...args: unknown[]): unknown {
    const carryOut = (): unknown => Reflect.apply(original, this, args);
    const abort = (done: unknown): void => {
      const change = changeOf(this, done);
      if (change instanceof IDBTransaction) change.abort();
    };
    return counts(args) ? step(carryOut, abort) : carryOut();
  });
}

watch(
  IDBDatabase.prototype,
  'transaction',
  ([, mode]) => mode === 'readwrite',
  (_self, done) => done,
);
watch(
  IDBObjectStore.prototype,
  'add',
  () => true,
  (self) => (self instanceof IDBObjectStore ? self.transaction : undefined),
);

/** What the tests call from outside the page. */
const faultPage = {
  start: () => start(),

  /** A weigh-in, an import and another weigh-in, each said as soon as it is answered; a fault at one step of them. */
  async writeWithFault(text: string, how: Fault, atStep: number): Promise<{ reached: boolean }> {
    // Opening the journal tidies it behind the scenes; that is none of these steps.
    await new Promise((resolve) => setTimeout(resolve, 30));
    [fault, at, steps] = [how, atStep, 0];
    const writes = [
      () => journal.record('body-weighed', { massKg: 81 }),
      () => importText(text),
      () => journal.record('body-weighed', { massKg: 80 }),
    ];
    for (const [i, write] of writes.entries()) {
      const { status } = await write();
      if (fault === 'is the last') step(Boolean, () => undefined);
      await Reflect.get(globalThis, 'answered')(i, status);
    }
    const reached = steps >= at;
    at = 0;
    return { reached };
  },

  importText,
  journalText,
  retrySaving: journal.retrySaving,
  look: () => ({
    saving: journal.saving.value.status,
    masses: journal.ledger.value
      .of('body-weighed')
      .filter(({ entry }) => !entry.id.startsWith('file'))
      .map(({ data }) => data.massKg),
    size: journal.ledger.value.size,
  }),
};
export type FaultPage = typeof faultPage;

Reflect.set(globalThis, 'faultPage', faultPage);

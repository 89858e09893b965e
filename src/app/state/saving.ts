import { signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { AppendOutcome } from '#outside/store-port/journal-store.ts';
import type { Keeper, Saving } from './keeper.ts';
import { takeIn } from './ledger.ts';
import type { Tabs } from './tabs.ts';

export type { Saving } from './keeper.ts';

/** What an entry of the open journal goes to: its store, and the other tabs that have it open. */
interface Outlet {
  readonly keeper: Keeper;
  readonly tabs: Tabs;
}

const state = signal<Saving>({ status: 'saved' });
export const saving: ReadonlySignal<Saving> = state;

let outlet: Outlet | undefined;
let refusal: Problem | undefined;

const NO_JOURNAL: Problem = {
  code: 'store/no-journal',
  path: 'store',
  message: 'No journal is open.',
  remedy: 'Reload the app; entries already saved are still there.',
};

/** From now on entries go here. Called together with replacing the ledger, so that no entry meets the wrong journal. */
export function pointTo(next: Outlet, stands: Saving): void {
  outlet?.tabs.close();
  outlet = next;
  refusal = undefined;
  state.value = stands;
}

/** From now on nothing can be written, and this is why. */
export function closeTo(why: Problem): void {
  outlet?.tabs.close();
  outlet = undefined;
  refusal = why;
  state.value = { status: 'saved' };
}

/** How the keeper of the open journal says how saving stands; one that was left behind is not listened to. */
export function sayFor(keeper: () => Keeper | undefined): (saving: Saving) => void {
  return (stands) => {
    if (outlet && outlet.keeper === keeper()) state.value = stands;
  };
}

/** Why entries have nowhere to go, said on the status line as well; undefined where they have. */
export function notWritable(): Problem | undefined {
  if (outlet) return undefined;
  const problem = refusal ?? NO_JOURNAL;
  state.value = { status: 'notSaved', held: 0, problem };
  return problem;
}

/** Takes entries into the ledger at once, keeps them, and tells the other tabs. */
export async function commit(entries: readonly Entry[]): Promise<AppendOutcome> {
  const to = outlet;
  if (!to) return { status: 'notSaved', problem: refusal ?? NO_JOURNAL };
  takeIn(entries);
  const outcome = await to.keeper.keep(entries);
  to.tabs.tell(entries);
  return outcome;
}

/** Tries the held entries again. */
export function retrySaving(): Promise<AppendOutcome> {
  return commit([]);
}

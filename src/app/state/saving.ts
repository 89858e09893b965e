import { signal, type ReadonlySignal } from '@preact/signals';
import { canonicalLine } from '#core/journal/canonical-line.ts';
import type { Entry } from '#core/journal/entry.ts';
import { readJournal } from '#core/journal/read-journal.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { AppendOutcome, JournalStore } from '#outside/store-port/journal-store.ts';
import { localMemory } from './local-memory.ts';

/** How writing stands, for the line that says so. `held` entries are in the ledger but not yet in the store. */
export type Saving =
  | { readonly status: 'saved' | 'saving' }
  | { readonly status: 'notSaved' | 'maybeSaved'; readonly held: number; readonly problem: Problem };

const state = signal<Saving>({ status: 'saved' });
export const saving: ReadonlySignal<Saving> = state;

interface Target {
  readonly which: string;
  readonly store: JournalStore;
}

let target: Target | undefined;
let held: readonly Entry[] = [];
let queue: Promise<unknown> = Promise.resolve();

/** From now on entries are kept in this store. What a lifeboat holds from an earlier day goes in first. */
export async function saveInto(which: string, store: JournalStore): Promise<readonly Entry[]> {
  await queue;
  target = { which, store };
  held = readJournal(localMemory.get(lifeboat(which)) ?? '').entries;
  const rescued = held;
  state.value = { status: 'saved' };
  if (rescued.length > 0) await retrySaving();
  return rescued;
}

/** Keeps entries in the open store, one save after the other. Those that fail are held and tried again with the next. */
export function keep(entries: readonly Entry[]): Promise<AppendOutcome> {
  const saved = queue.then(() => save(entries));
  queue = saved;
  return saved;
}

/** Tries the held entries again. */
export function retrySaving(): Promise<AppendOutcome> {
  return keep([]);
}

/** Entries in the ledger that the store does not have. */
export function heldEntries(): readonly Entry[] {
  return held;
}

async function save(entries: readonly Entry[]): Promise<AppendOutcome> {
  if (!target) return { status: 'notSaved', problem: noJournal() };
  const { which, store } = target;
  const wanted = [...held, ...entries];
  state.value = { status: 'saving' };
  const outcome = await store.append(wanted);
  if (outcome.status === 'saved') {
    if (held.length > 0) localMemory.drop(lifeboat(which));
    held = [];
    state.value = { status: 'saved' };
    return outcome;
  }
  held = wanted;
  localMemory.set(lifeboat(which), wanted.map(canonicalLine).join('\n'));
  state.value = { status: outcome.status, held: wanted.length, problem: outcome.problem };
  return outcome;
}

function lifeboat(which: string): string {
  return `${which}/lifeboat`;
}

function noJournal(): Problem {
  return {
    code: 'store/no-journal',
    path: 'store',
    message: 'No journal is open.',
    remedy: 'Reload the app; entries already saved are still there.',
  };
}

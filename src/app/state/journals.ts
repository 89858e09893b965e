import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { connect } from '#outside/store-indexeddb/open-database.ts';
import { indexedDbBlobs } from '#outside/store-indexeddb/indexeddb-blobs.ts';
import { indexedDbStore } from '#outside/store-indexeddb/indexeddb-store.ts';
import type { BlobStore } from '#outside/store-port/blob-store.ts';
import type { JournalStore } from '#outside/store-port/journal-store.ts';
import { storeUnreachable } from '#outside/store-port/store-problems.ts';
import { shiftClock, startClock } from './moments.ts';
import { createKeeper, type Keeper } from './keeper.ts';
import { replaceLedger, takeIn } from './ledger.ts';
import { localMemory } from './local-memory.ts';
import { askToPersist, lookPersisted } from './persistence.ts';
import { closeTo, pointTo, sayFor } from './saving.ts';
import { listenToTabs } from './tabs.ts';
import { forgetAllRecordings } from './undo-stack.ts';

/** One's own journal, or the invented athlete's to look around in. Each has a database of its own. */
type Kept = 'demo' | 'own';
/** Those, or a copy that somebody lent: in memory only, to read. */
export type Which = Kept | 'lent';

/** The invented athlete's journal, and the moment it is there when the demo opens. */
export interface Demo {
  readonly entries: readonly Entry[];
  readonly nowMs: number;
}

type Phase = 'starting' | 'open' | 'failed';

const phaseNow = signal<Phase>('starting');
const failed = signal<Problem | undefined>(undefined);
const open = signal<Which>('own');
const hasChosen = signal(false);
const lentName = signal('');
const unread = signal<readonly Problem[]>([]);

export const phase: ReadonlySignal<Phase> = phaseNow;
/** Why the journal could not be opened. */
export const failure: ReadonlySignal<Problem | undefined> = failed;
export const which: ReadonlySignal<Which> = open;
/** Another for each journal, lent ones too: what was worked out for one is never shown for another. */
export const openName: ReadonlySignal<string> = computed(() => `${open.value}${lentName.value}`);
/** False until the person has said which journal it shall be. */
export const chosen: ReadonlySignal<boolean> = hasChosen;
/** What the store holds but could not be read; shown in the Journal. */
export const unreadable: ReadonlySignal<readonly Problem[]> = unread;

/** The demo is set back once its athlete would be this far past the day it shows. */
const DEMO_LASTS_MS = 20 * 60 * 60 * 1000;

/** How the demo is made; absent in a build without one. It is loaded only when asked for. */
let makeDemo: (() => Promise<Demo>) | undefined;

interface OpenStore {
  readonly store: JournalStore;
  readonly blobs: BlobStore;
  mark: number;
}
let current: OpenStore | undefined;

/** Opens the journal chosen last time; the first time the demo, with `chosen` false. Called once, before rendering. */
export async function start(options: { readonly demo?: () => Promise<Demo> } = {}): Promise<void> {
  makeDemo = options.demo;
  startClock();
  void lookPersisted();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void catchUp();
  });
  globalThis.addEventListener('pageshow', () => void catchUp());
  const remembered = localMemory.get('which');
  hasChosen.value = remembered === 'own' || remembered === 'demo';
  await openStored(chosenBefore());
}

/** Opens the demo or one's own journal and remembers the choice. */
export async function openWhich(wanted: Kept): Promise<void> {
  localMemory.set('which', wanted);
  hasChosen.value = true;
  await openStored(wanted);
  if (wanted === 'own' && phaseNow.value === 'open') void askToPersist();
}

/** Opens a lent copy to read, in place of the journal that is open. It is not remembered, and nothing of it is kept. */
export function openLent(name: string, entries: readonly Entry[]): Promise<void> {
  opening = opening.then(async () => {
    const leaving = current;
    current = undefined;
    open.value = 'lent';
    lentName.value = ` ${name}`;
    shiftClock(0);
    forgetAllRecordings();
    replaceLedger(entries);
    closeTo(ONLY_TO_READ);
    unread.value = [];
    failed.value = undefined;
    phaseNow.value = 'open';
    await leaving?.store.close();
  });
  return opening;
}

const ONLY_TO_READ: Problem = {
  code: 'lent/only-to-read',
  path: '',
  message: 'This journal is lent to you to read; nothing can be written in it.',
  remedy: 'Say it to the person whose journal it is, or go back to your own.',
};

/** Back from a lent copy to the journal that was chosen before. */
export function leaveLent(): Promise<void> {
  return openStored(chosenBefore());
}

function chosenBefore(): Kept {
  return localMemory.get('which') === 'own' || !makeDemo ? 'own' : 'demo';
}

/** Puts the demo back to how it was at first. One's own journal is not touched. */
export async function restartDemo(): Promise<void> {
  localMemory.drop('demo/opened');
  await openStored('demo');
}

/** The photographs of the open journal. */
export function openBlobs(): BlobStore | undefined {
  return current?.blobs;
}

let opening: Promise<void> = Promise.resolve();

/** One opening after the other: the last wish counts, whichever database answers sooner. */
function openStored(wanted: Kept): Promise<void> {
  opening = opening.then(() => openNow(wanted));
  return opening;
}

async function openNow(wanted: Kept): Promise<void> {
  phaseNow.value = 'starting';
  const connection = connect(`stagewright-${wanted}`);
  const [leaving, store, blobs] = [current, indexedDbStore(connection), indexedDbBlobs(connection)];
  try {
    const shiftMs = wanted === 'demo' ? await prepareDemo(store) : 0;
    const keeper: Keeper = createKeeper(
      wanted,
      store,
      sayFor(() => keeper),
    );
    const rescued = keeper.held();
    const rescue = rescued.length > 0 ? await keeper.keep([]) : undefined;
    const stored = await store.read(0);
    // From here to the end of the block nothing waits: ledger, store, tabs and clock change in one step.
    current = { store, blobs, mark: stored.mark };
    open.value = wanted;
    lentName.value = '';
    shiftClock(shiftMs);
    forgetAllRecordings();
    replaceLedger([...stored.entries, ...rescued]);
    const stands = rescue && rescue.status !== 'saved' ? { ...rescue, held: rescued.length } : undefined;
    pointTo({ keeper, tabs: listenToTabs(wanted, takeIn) }, stands ?? { status: 'saved' });
    unread.value = stored.problems;
    failed.value = undefined;
    phaseNow.value = 'open';
    void store.tidy();
    // What another tab kept between the reading above and the listening.
    void catchUp();
    await leaving?.store.close();
  } catch (fault) {
    failed.value = storeUnreachable(fault instanceof Error ? fault.message : String(fault));
    phaseNow.value = 'failed';
  }
}

/** Reads what other tabs kept while this one slept. */
async function catchUp(): Promise<void> {
  const reading = current;
  if (!reading || phaseNow.value !== 'open') return;
  try {
    const news = await reading.store.read(reading.mark);
    if (reading !== current) return;
    reading.mark = news.mark;
    takeIn(news.entries);
  } catch (fault) {
    failed.value = storeUnreachable(fault instanceof Error ? fault.message : String(fault));
  }
}

/** Fills the demo's own store where it is empty or out of date. Answers how far its athlete's clock is from this one. */
async function prepareDemo(store: JournalStore): Promise<number> {
  const openedMs = Number(localMemory.get('demo/opened') ?? Number.NaN);
  const shiftMs = Number(localMemory.get('demo/shift') ?? Number.NaN);
  const stillOn = Date.now() - openedMs < DEMO_LASTS_MS && Date.now() >= openedMs;
  if (stillOn && Number.isFinite(shiftMs)) return shiftMs;
  if (!makeDemo) return 0;
  const demo = await makeDemo();
  await store.erase();
  const filled = await store.append(demo.entries);
  if (filled.status !== 'saved') throw new Error(filled.problem.message);
  localMemory.drop('demo/lifeboat');
  const openedNow = Date.now();
  localMemory.set('demo/opened', String(openedNow));
  localMemory.set('demo/shift', String(demo.nowMs - openedNow));
  return demo.nowMs - openedNow;
}

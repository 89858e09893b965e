import { effect, signal, type ReadonlySignal } from '@preact/signals';
import type { Entry } from '#core/journal/entry.ts';
import { sameEntry } from '#core/journal/same-entry.ts';
import type { Outcome, Problem } from '#core/problems/problem.ts';
import type { JournalKeys } from '#outside/seal/journal-keys.ts';
import { device } from './device.ts';
import { phase, which } from './journals.ts';
import { ledger } from './ledger.ts';
import { askServer } from './ask-server.ts';
import { bringLoans, dropLoans } from './loans.ts';
import { localMemory } from './local-memory.ts';
import { currentMs } from './moments.ts';
import { commit } from './saving.ts';
import { keepMark, keptMark } from './sync-mark.ts';
import { bytesOf, dropSecret, hexOf, keepSecret, keptSecret, sameSecret } from './sync-secret.ts';

/** How this device and the others stand. Off unless the person asked for it: until then nothing leaves the device. */
export type Syncing =
  | { readonly status: 'off' }
  | { readonly status: 'working' }
  | { readonly status: 'in step'; readonly atMs: number; readonly problems: readonly Problem[] }
  | { readonly status: 'apart'; readonly problem: Problem };

const state = signal<Syncing>({ status: 'off' });
export const syncing: ReadonlySignal<Syncing> = state;

const MARK = 'sync/mark';
/** Keys that were given up, until the server has dropped what they open. */
const GIVEN_UP = 'sync/given-up';
/** After something was written it is sent once this long nothing more was. */
const SETTLE_MS = 2000;
const EVERY_MS = 60_000;

/** The crypto is loaded once somebody keeps two devices in step; most never do. */
const parts = async () => {
  const [keys, { noMark, synchronize }] = await Promise.all([
    import('#outside/seal/journal-keys.ts'),
    import('#outside/sync/synchronize.ts'),
  ]);
  return { ...keys, noMark, synchronize };
};

/** Follows the journal for as long as the app runs: sends what is written, asks for what others wrote. */
export function followSync(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (ms: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void syncNow(), ms);
  };
  effect(() => {
    void ledger.value;
    if (phase.value !== 'open' || !isOn()) return;
    // "In step" was said of what was here before.
    if (state.peek().status === 'in step') state.value = { status: 'working' };
    soon(SETTLE_MS);
  });
  setInterval(() => {
    if (document.visibilityState === 'visible' && isOn()) soon(0);
  }, EVERY_MS);
  globalThis.addEventListener('online', () => isOn() && soon(0));
}

/** Only one's own journal is ever kept in step; the invented athlete and what others lent stay where they are. */
function isOn(): boolean {
  return which.peek() === 'own' && keptSecret() !== undefined;
}

/** Makes a key on this device and puts the sealed journal on the server. */
export async function beginSync(): Promise<void> {
  const { SECRET_BYTES } = await parts();
  takeSecret(crypto.getRandomValues(new Uint8Array(SECRET_BYTES)));
  await syncAnew();
}

/** Joins by the phrase that another device shows. What is here is united with what comes. */
export async function joinSync(phrase: string): Promise<Outcome<Uint8Array>> {
  const { secretOf } = await parts();
  const secret = secretOf(phrase);
  if (!secret.ok) return secret;
  takeSecret(secret.value);
  await syncAnew();
  return secret;
}

/** The keys of this journal; undefined where none were made, and for the invented athlete's. */
export async function syncKeys(): Promise<JournalKeys | undefined> {
  const secret = isOn() ? keptSecret() : undefined;
  return secret && (await parts()).journalKeys(secret);
}

/** The phrase of this journal's key; undefined where none was made. */
export async function syncPhrase(): Promise<string | undefined> {
  const secret = keptSecret();
  return secret && (await parts()).phraseOf(secret);
}

/** This device goes its own way; what it holds stays, and so does what the others and the server hold. */
export function leaveSync(): void {
  dropSecret();
  localMemory.drop(MARK);
  state.value = { status: 'off' };
}

/** A new key: the sealed journal goes to a new place, the old is dropped, and a lost device hears no more. */
export async function changeKey(): Promise<void> {
  const old = keptSecret();
  if (old) localMemory.set(GIVEN_UP, [...givenUp(), hexOf(old)].join(' '));
  await beginSync();
}

function givenUp(): readonly string[] {
  return (localMemory.get(GIVEN_UP) ?? '').split(' ').filter(Boolean);
}

/** Has the server drop what given up keys open; one that could not be reached is asked again at the next meeting. */
async function dropGivenUp(): Promise<readonly Problem[]> {
  const { journalKeys } = await parts();
  const left: string[] = [];
  for (const secret of givenUp()) {
    const keys = journalKeys(bytesOf(secret));
    const loansDropped = await dropLoans(bytesOf(secret));
    // 403: it was dropped before, and the answer was lost.
    const dropped = await askServer(keys.access)('drop', { journal: keys.journal }).then(
      ({ status }) => status === 200 || status === 403,
      () => false,
    );
    if (!dropped || !loansDropped) left.push(secret);
  }
  localMemory.set(GIVEN_UP, left.join(' '));
  return left.length === 0 ? [] : [STILL_THERE];
}

const STILL_THERE: Problem = {
  code: 'sync/still-there',
  path: 'given-up',
  message: 'What the old key opens is still on the server.',
  remedy:
    'It is dropped as soon as the server answers; a lost device can hear until then only what it already holds.',
};

let running: Promise<void> | undefined;

/** Brings this device and the server together now; one at a time. */
export function syncNow(): Promise<void> {
  running ??= bringTogether().finally(() => {
    running = undefined;
  });
  return running;
}

/** With a key just taken: a meeting under the one before does not count. */
async function syncAnew(): Promise<void> {
  await running;
  await syncNow();
}

async function bringTogether(): Promise<void> {
  const secret = keptSecret();
  if (!secret || !isOn()) return;
  state.value = { status: 'working' };
  const { journalKeys, synchronize, noMark } = await parts();
  const keys = journalKeys(secret);
  const synced = await synchronize(
    {
      keys,
      ask: askServer(keys.access),
      device,
      // The demonstration may be opened meanwhile: nothing of it goes out, and nothing of one's own goes into it.
      entries: () => (isOn() ? ledger.peek().entries() : []),
      take: async (entries) => isOn() && (await commit(entries.filter(isNews))).status === 'saved',
    },
    keptMark(MARK) ?? noMark,
  );
  if (!isOn() || !sameSecret(secret)) return;
  if (!synced.ok) {
    state.value = { status: 'apart', problem: synced.problem };
    return;
  }
  keepMark(MARK, synced.value.mark);
  const problems = [...synced.value.problems, ...(await dropGivenUp()), ...(await bringLoans(secret))];
  state.value = { status: 'in step', atMs: currentMs(), problems };
}

/** What is here already is not kept twice. */
function isNews(entry: Entry): boolean {
  const known = ledger.peek().entry(entry.id);
  return known === undefined || !sameEntry(known, entry);
}

/** A key that was just taken has heard nothing yet. */
function takeSecret(secret: Uint8Array): void {
  keepSecret(secret);
  localMemory.drop(MARK);
}

import { signal, type ReadonlySignal } from '@preact/signals';
import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { type Loan, loansOf } from '#core/journal/lent-entries.ts';
import { answered, type Outcome, type Problem } from '#core/problems/problem.ts';
import type { Place } from '#outside/sync/lend.ts';
import { askServer } from './ask-server.ts';
import { leaveLent, openLent, which } from './journals.ts';
import { ledger, takeIn } from './ledger.ts';
import { keptValue } from './kept-value.ts';
import { localMemory } from './local-memory.ts';
import { bytesOf, hexOf } from './sync-secret.ts';

const KNOWN = 'lent/known';
const EVERY_MS = 60_000;

/** A copy that somebody lent to whoever uses this device. Only what opens it is kept here, nothing of what it holds. */
const knownShape = v.strictObject({ secret: v.string(), from: v.string(), until: v.string() });
export type KnownCopy = v.InferOutput<typeof knownShape>;

const copies = signal<readonly KnownCopy[]>(keptValue(KNOWN, v.array(knownShape)) ?? []);
export const lentToMe: ReadonlySignal<readonly KnownCopy[]> = copies;

interface OpenCopy {
  readonly loan: Loan;
  readonly from: string;
  readonly problems: readonly Problem[];
}
const opened = signal<OpenCopy | undefined>(undefined);
/** The copy that is open to read; undefined where another journal is. */
export const openCopy: ReadonlySignal<OpenCopy | undefined> = opened;

const ended = signal<Problem | undefined>(undefined);
/** Why the copy that was open is not any more; undefined where none was shut. */
export const shut: ReadonlySignal<Problem | undefined> = ended;

/** The encryption is loaded once somebody reads a lent copy; most never do. */
const parts = async () => {
  const [phrases, keys, lending] = await Promise.all([
    import('#outside/seal/journal-keys.ts'),
    import('#outside/seal/loan-keys.ts'),
    import('#outside/sync/lend.ts'),
  ]);
  return { ...phrases, ...keys, ...lending };
};

/** Opens the copy that a phrase belongs to, and remembers it on this device until it is forgotten. */
export async function readByPhrase(phrase: string): Promise<Outcome<Loan>> {
  const { secretOf } = await parts();
  const secret = secretOf(phrase, 'lent copy');
  return secret.ok ? readCopy(hexOf(secret.value)) : secret;
}

/** Opens a copy in place of the journal that is open, and follows it for as long as it stays so. */
export async function readCopy(secret: string): Promise<Outcome<Loan>> {
  const { loanKeys, readLoan, START } = await parts();
  const keys = loanKeys(bytesOf(secret));
  const copy = await readLoan(keys, askServer(keys.access), START);
  if (!copy.ok) return copy;
  const { entries, problems, place } = copy.value;
  const inside = createLedger(entries);
  const loan = loansOf(inside).at(-1);
  if (!loan) return NOT_READY;
  const from = inside.latest('athlete-described')?.data.name ?? 'An athlete';
  remember({ secret, from, until: loan.until });
  await openLent(keys.journal, entries);
  ended.value = undefined;
  opened.value = { loan, from, problems };
  follow(secret, place, entries);
  return answered(loan);
}

/** Closes the copy and opens the journal that was open before it. */
export async function closeCopy(): Promise<void> {
  stopFollowing();
  opened.value = undefined;
  await leaveLent();
}

export function forgetCopy(secret: string): void {
  keepKnown(copies.peek().filter((copy) => copy.secret !== secret));
}

let stopFollowing: () => void = () => undefined;

/** Takes in what is written meanwhile, each minute and whenever the app comes to the front; a copy that is over is closed at once. */
function follow(secret: string, from: Place, first: readonly Entry[]): void {
  let [place, known, followed] = [from, first, true];
  const lookAgain = async (): Promise<void> => {
    if (which.peek() !== 'lent') stop();
    if (!followed || document.visibilityState !== 'visible') return;
    const { loanKeys, readLoan, START } = await parts();
    const keys = loanKeys(bytesOf(secret));
    const news = await readLoan(keys, askServer(keys.access), place, known);
    if (!followed || which.peek() !== 'lent') return;
    if (!news.ok) {
      if (news.problem.code === 'lent/over') await shutCopy(news.problem);
      // A server put back to an older copy has another order: everything is heard again.
      if (news.problem.code === 'sync/put-back') [place, known] = [START, []];
      return;
    }
    known = [...known, ...news.value.entries];
    place = news.value.place;
    takeIn(news.value.entries);
    const [loan, before] = [loansOf(ledger.peek()).at(-1), opened.peek()];
    if (loan && before) opened.value = { ...before, loan, problems: news.value.problems };
  };
  const look = (): void => void lookAgain();
  const timer = setInterval(look, EVERY_MS);
  document.addEventListener('visibilitychange', look);
  const stop = (): void => {
    followed = false;
    clearInterval(timer);
    document.removeEventListener('visibilitychange', look);
  };
  stopFollowing();
  stopFollowing = stop;
}

async function shutCopy(why: Problem): Promise<void> {
  ended.value = why;
  await closeCopy();
}

function remember(copy: KnownCopy): void {
  keepKnown([...copies.peek().filter(({ secret }) => secret !== copy.secret), copy]);
}

function keepKnown(known: readonly KnownCopy[]): void {
  copies.value = known;
  localMemory.set(KNOWN, JSON.stringify(known));
}

const NOT_READY: Outcome<Loan> = {
  ok: false,
  problem: {
    code: 'lent/not-ready',
    path: 'phrase',
    message: 'The copy is there, but it is not whole yet.',
    remedy: 'Its lender opens the app once more; then read it again.',
  },
};

import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { answered, refused, type Outcome, type Problem } from '#core/problems/problem.ts';
import type { JournalKeys } from '../seal/journal-keys.ts';
import { openEntry, type SealedEntry } from '../seal/seal-entry.ts';
import { isWhole, openTally, sealTally, tallyOf } from '../seal/tally.ts';
import { answerProblem, BROKEN_OFF, NOT_REACHED, PUT_BACK, SERVER_FULL } from './answer-problem.ts';
import { sealedBatch } from './sealed-batch.ts';
import { exchangeAnswer, idsAnswer, MOST_ENTRIES, type ExchangeRequest } from './exchange.ts';

/** How far this device and the server are known to agree; kept beside the journal, of no worth to anyone else. */
export interface SyncMark {
  /** Place in the server's order up to which this device has heard. */
  readonly since: number;
  /** Digest of the order up to that place, as the server said it. */
  readonly at: string;
  /** So many of this device's entries have a stamp up to `stamp`, and the server has them all. */
  readonly stamp: string;
  readonly count: number;
}

export const noMark: SyncMark = { since: 0, at: '', stamp: '', count: 0 };

/** No count agrees with this one: names are compared, and everything is heard again. */
const compareAll: SyncMark = { ...noMark, count: -1 };

export type ServerPath = 'exchange' | 'ids' | 'lend' | 'read' | 'drop';

/** Asks the server; throws or rejects where no answer came. A body that is no JSON is undefined. */
export type Ask = (
  path: ServerPath,
  body: object,
) => Promise<{ readonly status: number; readonly body: unknown }>;

export interface Synced {
  readonly mark: SyncMark;
  readonly sent: number;
  readonly received: number;
  /** Entries that could not be opened, and devices of which something is missing. */
  readonly problems: readonly Problem[];
}

export interface SyncParts {
  readonly keys: JournalKeys;
  readonly ask: Ask;
  readonly device: string;
  /** All entries here, in the order of stamps. */
  readonly entries: () => readonly Entry[];
  /** Keeps entries that came; answers whether they will outlive this program. */
  readonly take: (entries: readonly Entry[]) => Promise<boolean>;
  /** Entries sent at once; absent: as many as the server takes. */
  readonly batch?: number;
}

/**
 * Brings this device and the server to the same entries (SYN-04 to SYN-08): sends what the server lacks, takes what is
 * new, batch by batch, and goes on where it was broken off. Nothing is said to be in step before both sides have it.
 */
export async function synchronize(parts: SyncParts, from: SyncMark): Promise<Outcome<Synced>> {
  const synced = await bringTogether(parts, from);
  // A server that was put back to an older copy lacks what came since: it is given it again.
  const putBack = !synced.ok && synced.problem.code === PUT_BACK && from.since > 0;
  if (putBack) return bringTogether(parts, compareAll);
  // One that takes nothing more still hands over what the others wrote (SYN-33).
  if (!synced.ok && synced.problem.code === SERVER_FULL) await bringTogether(parts, from, false);
  return synced;
}

async function bringTogether(parts: SyncParts, from: SyncMark, sends = true): Promise<Outcome<Synced>> {
  const pending = sends ? await pendingOf(parts, from) : answered([]);
  if (!pending.ok) return pending;
  let { since, at } = from;
  let [dealtWith, sent, received, more] = [0, 0, 0, true];
  const problems: Problem[] = [];
  let tallies: ReturnType<typeof openTally>[] = [];
  while (more || dealtWith < pending.value.length) {
    const batch = sealedBatch(parts.keys, pending.value, dealtWith, parts.batch ?? MOST_ENTRIES);
    const last = batch.upTo === pending.value.length;
    const answer = await exchange(parts, { since, at }, batch.sealed, last);
    if (!answer.ok) return answer;
    problems.push(...batch.problems);
    const opened = answer.value.entries.map((sealed) => openEntry(parts.keys, sealed));
    const good = opened.flatMap((entry) => (entry.ok ? [entry.value] : []));
    problems.push(...opened.flatMap((entry) => (entry.ok ? [] : [entry.problem])));
    if (good.length > 0 && !(await parts.take(good))) return refused(...NOT_KEPT);
    ({ seq: since, at, more } = answer.value);
    dealtWith = batch.upTo;
    sent += batch.sealed.length;
    received += good.length;
    tallies = answer.value.tallies.map((sealed) => openTally(parts.keys, sealed));
  }
  const here = parts.entries();
  problems.push(...missingOf(here, tallies));
  return answered({
    mark: { since, at, stamp: here.at(-1)?.stamp ?? '', count: here.length },
    sent,
    received,
    problems,
  });
}

const NOT_KEPT = [
  'sync/not-kept',
  '',
  'What came from the other device could not be kept on this one.',
  'Make room on this device; it will be asked for again.',
] as const;

/** Entries the server may lack: those after the mark, or, where the count does not agree, those it does not name. */
async function pendingOf(
  { entries, ask, keys }: SyncParts,
  mark: SyncMark,
): Promise<Outcome<readonly Entry[]>> {
  const here = entries();
  const after = here.findIndex(({ stamp }) => stamp > mark.stamp);
  const known = after === -1 ? here.length : after;
  if (known === mark.count) return answered(here.slice(known));
  const answer = await asked(ask, 'ids', { journal: keys.journal }, idsAnswer);
  if (!answer.ok) return answer;
  const there = new Set(answer.value.ids);
  return answered(here.filter(({ id }) => !there.has(id)));
}

function exchange(
  { keys, ask, device, entries }: SyncParts,
  place: Pick<SyncMark, 'since' | 'at'>,
  batch: readonly SealedEntry[],
  last: boolean,
) {
  const request: ExchangeRequest = {
    journal: keys.journal,
    ...place,
    entries: [...batch],
    ...(last && batch.length > 0 && { tally: sealTally(keys, tallyOf(entries(), device)) }),
  };
  return asked(ask, 'exchange', request, exchangeAnswer);
}

/** The server's answer in the shape that was asked for, or why there is none. */
export async function asked<Schema extends v.GenericSchema>(
  ask: Ask,
  path: ServerPath,
  body: object,
  schema: Schema,
): Promise<Outcome<v.InferOutput<Schema>>> {
  let answer: Awaited<ReturnType<Ask>>;
  try {
    answer = await ask(path, body);
  } catch {
    return { ok: false, problem: NOT_REACHED };
  }
  const read = v.safeParse(schema, answer.body);
  if (answer.status === 200 && read.success) return answered(read.output);
  const cut = answer.status === 200 && answer.body === undefined;
  return { ok: false, problem: cut ? BROKEN_OFF : answerProblem(answer.status) };
}

/** What devices say they wrote and is not here. */
export function missingOf(
  here: readonly Entry[],
  tallies: readonly ReturnType<typeof openTally>[],
): Problem[] {
  return tallies.flatMap((tally) =>
    tally === undefined || isWhole(here, tally)
      ? []
      : [
          {
            code: 'sync/missing',
            path: tally.device,
            message: `Something that the device "${tally.device}" wrote has not come through.`,
            remedy: 'Open the app on that device once; if this stays, keep a copy from it and join again.',
          },
        ],
  );
}

import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import { lentEntries, type Loan } from '#core/journal/lent-entries.ts';
import { byStamp } from '#core/journal/entry-order.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { answered, refused, type Outcome, type Problem } from '#core/problems/problem.ts';
import type { JournalKeys } from '../seal/journal-keys.ts';
import { type LoanKeys, readerDigest } from '../seal/loan-keys.ts';
import { openEntry } from '../seal/seal-entry.ts';
import { openTally } from '../seal/tally.ts';
import { exchangeAnswer } from './exchange.ts';
import { type Ask, asked, missingOf, type SyncMark, type Synced, synchronize } from './synchronize.ts';

const done = v.object({});

export interface LendParts {
  /** The copy's keys with the lender's token. */
  readonly keys: JournalKeys;
  readonly reader: LoanKeys;
  readonly ask: Ask;
  readonly device: string;
  readonly ledger: Ledger;
  readonly loan: Loan;
  /** The moment after which nobody reads it. */
  readonly untilMs: number;
}

/** Brings a lent copy to what the journal has of it now, and tells the server who may read it and until when (SYN-24). */
export async function bringLoan(parts: LendParts, from: SyncMark): Promise<Outcome<Synced>> {
  const { keys, reader, ask, device, ledger, loan, untilMs } = parts;
  const lending = { journal: keys.journal, reader: readerDigest(reader), untilMs };
  const lent = await asked(ask, 'lend', lending, done);
  if (!lent.ok) return lent;
  return synchronize(
    {
      keys,
      ask,
      device,
      entries: () => lentEntries(ledger, loan),
      // What another device of the journal brought is in the journal itself, or will be.
      take: () => Promise.resolve(true),
    },
    from,
  );
}

/** Has the server drop a lent copy. One that was dropped before is over as well. */
export async function endLoan(keys: JournalKeys, ask: Ask): Promise<Outcome<object>> {
  const dropped = await asked(ask, 'drop', { journal: keys.journal }, done);
  return !dropped.ok && dropped.problem.code === 'sync/not-let-in' ? answered({}) : dropped;
}

export interface LentCopy {
  readonly entries: readonly Entry[];
  /** Entries that do not open, and devices of which something is missing. */
  readonly problems: readonly Problem[];
  /** Where to go on from the next time. */
  readonly place: Place;
}

export interface Place {
  readonly since: number;
  readonly at: string;
}

export const START: Place = { since: 0, at: '' };

/** What came into a lent copy after a place; `known` is what was read of it before. */
export async function readLoan(
  keys: LoanKeys,
  ask: Ask,
  from: Place,
  known: readonly Entry[] = [],
): Promise<Outcome<LentCopy>> {
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  let [place, more]: [Place, boolean] = [from, true];
  let tallies: ReturnType<typeof openTally>[] = [];
  while (more) {
    const answer = await asked(ask, 'read', { journal: keys.journal, ...place }, exchangeAnswer);
    if (!answer.ok) return answer.problem.code === 'sync/not-let-in' ? refused(...OVER) : answer;
    for (const sealed of answer.value.entries) {
      const opened = openEntry(keys, sealed);
      if (opened.ok) entries.push(opened.value);
      else problems.push(opened.problem);
    }
    place = { since: answer.value.seq, at: answer.value.at };
    more = answer.value.more;
    tallies = answer.value.tallies.map((sealed) => openTally(keys, sealed));
  }
  const whole = [...known, ...entries].sort(byStamp);
  return answered({ entries, problems: [...problems, ...missingOf(whole, tallies)], place });
}

const OVER = [
  'lent/over',
  'phrase',
  'This copy is not lent any more: its time is over, it was taken back, or its lender has a new key.',
  'Ask the person who lent it for a new phrase.',
] as const;

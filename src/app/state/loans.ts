import { type Loan, loansOf } from '#core/journal/lent-entries.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { Problem } from '#core/problems/problem.ts';
import { askServer } from './ask-server.ts';
import { device } from './device.ts';
import { ledger } from './ledger.ts';
import { localMemory } from './local-memory.ts';
import { currentMs, momentOf } from './moments.ts';
import { keepMark, keptMark } from './sync-mark.ts';
import { keptSecret } from './sync-secret.ts';

/** Under this a lent copy that the server has dropped is remembered, so that it is not asked for ever again. */
const DROPPED = 'dropped';

const parts = async () => {
  const [phrases, keys, lending, { noMark }] = await Promise.all([
    import('#outside/seal/journal-keys.ts'),
    import('#outside/seal/loan-keys.ts'),
    import('#outside/sync/lend.ts'),
    import('#outside/sync/synchronize.ts'),
  ]);
  return { ...phrases, ...keys, ...lending, noMark };
};

/** The moment after which a loan cannot be read: the end of its last day here. */
export function loanEndMs({ until }: Loan): number {
  return momentOf(addDays(until, 1), 0);
}

/** Whether it can still be read. */
export function isLent(loan: Loan, nowMs: number): boolean {
  return loan.takenBack !== true && loanEndMs(loan) > nowMs;
}

/** The words that let a loan's reader in; undefined where no key was made. */
export async function loanPhrase(loan: string): Promise<string | undefined> {
  const secret = keptSecret();
  if (!secret) return undefined;
  const { phraseOf, loanSecret } = await parts();
  return phraseOf(loanSecret(secret, loan));
}

/** Brings every lent copy to what the journal has now, and has those dropped that are over. Answers what went wrong. */
export async function bringLoans(secret: Uint8Array): Promise<readonly Problem[]> {
  const problems: Problem[] = [];
  for (const loan of loansOf(ledger.peek())) {
    const outcome = isLent(loan, currentMs()) ? await bring(secret, loan) : await drop(secret, loan);
    if (outcome) problems.push({ ...outcome, path: `copy for ${loan.to}` });
  }
  return problems;
}

/** Has the server drop all copies lent under a key that was given up; answers whether all are gone. */
export async function dropLoans(secret: Uint8Array): Promise<boolean> {
  let all = true;
  for (const loan of loansOf(ledger.peek())) if (await drop(secret, loan)) all = false;
  return all;
}

async function bring(secret: Uint8Array, loan: Loan): Promise<Problem | undefined> {
  const { lenderKeys, loanKeys, loanSecret, bringLoan, noMark } = await parts();
  const keys = lenderKeys(secret, loan.loan);
  const reader = loanKeys(loanSecret(secret, loan.loan));
  const mark = markOf(keys.journal);
  const brought = await bringLoan(
    {
      keys,
      reader,
      ask: askServer(keys.access),
      device,
      ledger: ledger.peek(),
      loan,
      untilMs: loanEndMs(loan),
    },
    keptMark(mark) ?? noMark,
  );
  if (!brought.ok) return brought.problem;
  keepMark(mark, brought.value.mark);
  return undefined;
}

async function drop(secret: Uint8Array, loan: Loan): Promise<Problem | undefined> {
  const { lenderKeys, endLoan } = await parts();
  const keys = lenderKeys(secret, loan.loan);
  const mark = markOf(keys.journal);
  if (localMemory.get(mark) === DROPPED) return undefined;
  const ended = await endLoan(keys, askServer(keys.access));
  if (!ended.ok) return ended.problem;
  localMemory.set(mark, DROPPED);
  return undefined;
}

function markOf(journal: string): string {
  return `sync/loan/${journal}`;
}

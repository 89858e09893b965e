import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { draw, type JournalKeys } from './journal-keys.ts';

/** What the reader of a lent copy holds: it opens what was lent, and changes nothing. */
export type LoanKeys = JournalKeys;

/** Shown as 18 words, so that it is never taken for a journal's. */
const LOAN_BYTES = 24;

/** The secret that is handed to the reader of a loan: every device of the journal draws the same, and none leads back. */
export function loanSecret(secret: Uint8Array, loan: string): Uint8Array {
  return draw(secret, `loan ${loan}`, LOAN_BYTES);
}

/** Keys of a lent copy from its secret (SYN-24): its name on the server, the reader's token, and what opens it. */
export function loanKeys(loan: Uint8Array): LoanKeys {
  if (loan.length !== LOAN_BYTES) throw new RangeError(`the secret of a loan has ${LOAN_BYTES} bytes`);
  return {
    journal: bytesToHex(draw(loan, 'lent journal', 16)),
    access: bytesToHex(draw(loan, 'lent access', 32)),
    seal: draw(loan, 'lent seal', 32),
  };
}

/** The same copy as its lender keeps it: only the journal's own secret leads to the token that writes. */
export function lenderKeys(secret: Uint8Array, loan: string): JournalKeys {
  const access = bytesToHex(draw(secret, `loan writer ${loan}`, 32));
  return { ...loanKeys(loanSecret(secret, loan)), access };
}

/** What the server keeps of the reader's token. */
export function readerDigest({ access }: LoanKeys): string {
  return bytesToHex(sha256(new TextEncoder().encode(access)));
}

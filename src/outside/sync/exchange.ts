import * as v from 'valibot';
import { sealedEntry } from '../seal/seal-entry.ts';

/** Entries in one exchange, each way; more go in the next. */
export const MOST_ENTRIES = 2000;
/** Bytes of one request, unpacked. */
export const MOST_BYTES = 8 * 1024 * 1024;
/** Characters of sealed bodies in one exchange, each way: leaves room for names and stamps within MOST_BYTES. */
export const MOST_CHARACTERS = 6 * 1024 * 1024;

const journal = v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/, 'the name of a sealed journal'));
const place = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/** One round trip: what this device has that the server may lack, and from where on it wants to hear. */
export const exchangeRequest = v.strictObject({
  journal,
  since: place,
  /** Digest of the order up to `since`, as the server said it: one that was put back to an older copy has another, or none. */
  at: v.pipe(v.string(), v.maxLength(200)),
  entries: v.pipe(v.array(sealedEntry), v.maxLength(MOST_ENTRIES)),
  tally: v.optional(sealedEntry),
});
export type ExchangeRequest = v.InferOutput<typeof exchangeRequest>;

export const exchangeAnswer = v.strictObject({
  /** Everything up to here is in this answer or an earlier one. */
  seq: place,
  /** Digest of the order up to `seq`. */
  at: v.string(),
  more: v.boolean(),
  entries: v.pipe(v.array(sealedEntry), v.maxLength(MOST_ENTRIES)),
  tallies: v.array(sealedEntry),
});
export type ExchangeAnswer = v.InferOutput<typeof exchangeAnswer>;

export const journalRequest = v.strictObject({ journal });

/** Lets whoever shows a token with this digest read, until a moment (SYN-24). */
export const lendRequest = v.strictObject({
  journal,
  reader: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, 'a SHA-256 digest')),
  untilMs: place,
});

/** A reader's question; the answer is an exchange's. */
export const readRequest = v.strictObject({
  journal,
  since: place,
  at: v.pipe(v.string(), v.maxLength(200)),
});
export type ReadRequest = v.InferOutput<typeof readRequest>;

export const idsAnswer = v.strictObject({ ids: v.array(v.string()) });

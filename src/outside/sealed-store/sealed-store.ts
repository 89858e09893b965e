import type { SealedEntry } from '../seal/seal-entry.ts';

/** An entry as the server keeps it, with its place in the order of arrival. */
export interface KeptEntry extends SealedEntry {
  readonly seq: number;
  /** Digest of everything that came up to here, in its order. */
  readonly chain: string;
}

export type Entrance = 'open' | 'closed';

/**
 * Where the server keeps sealed journals: ciphertext and routing only (SYN-10). Every adapter passes one contract.
 * Journals never meet: each call names one.
 */
export interface SealedStore {
  /** Whether a journal was ever opened here. */
  knows(journal: string): Promise<boolean>;
  /** Lets in who shows the token's digest the journal was opened with; the first to come opens it. */
  enter(journal: string, accessDigest: string): Promise<Entrance>;
  /** Keeps all or none, the tally in place of the device's last one; an entry already there stays as it is. Answers the last place in the order. */
  append(journal: string, entries: readonly SealedEntry[], tally?: SealedEntry): Promise<number>;
  /** Entries after a place, in order, at most so many. */
  after(journal: string, seq: number, limit: number): Promise<readonly KeptEntry[]>;
  /** Digest of everything up to a place; empty where the order does not reach so far. */
  chainAt(journal: string, seq: number): Promise<string>;
  /** Names of all entries of a journal, for a device that lost count. */
  ids(journal: string): Promise<readonly string[]>;
  tallies(journal: string): Promise<readonly SealedEntry[]>;
  /** Lets who shows this other token's digest read the journal until a moment (SYN-24); a second time changes both. */
  lend(journal: string, readerDigest: string, untilMs: number): Promise<void>;
  /** Until when a reader with this digest may read; undefined where nothing is lent to it. */
  lentUntil(journal: string, readerDigest: string): Promise<number | undefined>;
  /** Journals that were lent until a moment before this one. */
  ended(nowMs: number): Promise<readonly string[]>;
  /** Forgets what a journal held for good. Its name stays closed: a device with the old key must not begin it anew. */
  drop(journal: string): Promise<void>;
  /** How many journals are open here. */
  journals(): Promise<number>;
  close(): Promise<void>;
}

/** What a journal is opened by, for one who carries it elsewhere. */
export interface JournalName {
  readonly name: string;
  /** Digest of the token that opens it; absent where the name was closed for good. */
  readonly access?: string;
  readonly loan?: { readonly reader: string; readonly untilMs: number };
}

/** A store in one file of this machine, which can be looked through and copied as a whole. */
export interface SealedFile extends SealedStore {
  /** Every name that was ever opened here. */
  names(): readonly JournalName[];
  /** Faults of the file, in words; none where it is whole. */
  check(): readonly string[];
  /** A whole copy into a file that is not there yet, while the store is in use. */
  backup(file: string): void;
}

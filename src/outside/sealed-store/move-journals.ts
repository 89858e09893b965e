import type { SealedFile, SealedStore } from './sealed-store.ts';

/** Carried in one piece, so that large entries are never in memory by the thousand. */
const PIECE = 250;

export interface Moved {
  readonly journals: number;
  readonly entries: number;
  /** Names that were closed for good, and are so there. */
  readonly closed: number;
  /** Journals that the other store has closed, or keeps under another key: nothing of them was carried. */
  readonly refused: number;
}

/**
 * Carries every sealed journal of a file into another store (SYN-29): order and with it the digest, tallies, what is lent,
 * and the names that were closed. The file stays as it is; a move broken off is begun again and adds what is missing.
 */
export async function moveJournals(from: SealedFile, to: SealedStore): Promise<Moved> {
  let [journals, entries, closed, turnedAway] = [0, 0, 0, 0];
  for (const { name, access, loan } of from.names()) {
    // What was lent there since is newer than this file.
    if (access !== undefined && loan && !(await to.knows(name)))
      await to.lend(name, loan.reader, loan.untilMs);
    if (access === undefined) {
      // A name closed once is closed for good, whoever began it anew elsewhere.
      await to.drop(name);
      closed += 1;
    } else if ((await to.enter(name, access)) === 'open') {
      entries += await carryOrder(from, to, name);
      await carryTallies(from, to, name);
      journals += 1;
    } else turnedAway += 1;
  }
  return { journals, entries, closed, refused: turnedAway };
}

async function carryOrder(from: SealedFile, to: SealedStore, journal: string): Promise<number> {
  let last = 0;
  for (;;) {
    const piece = await from.after(journal, last, PIECE);
    last = piece.at(-1)?.seq ?? last;
    if (piece.length > 0) await to.append(journal, piece);
    if (piece.length < PIECE) return last;
  }
}

/** A device that was there since has left a newer one. */
async function carryTallies(from: SealedFile, to: SealedStore, journal: string): Promise<void> {
  const there = new Set((await to.tallies(journal)).map(({ id }) => id));
  for (const tally of await from.tallies(journal))
    if (!there.has(tally.id)) await to.append(journal, [], tally);
}

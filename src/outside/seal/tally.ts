import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { Entry } from '#core/journal/entry.ts';
import type { JournalKeys } from './journal-keys.ts';
import { openEntry, sealEntry, type SealedEntry } from './seal-entry.ts';

/** What one device says it has written: how many entries up to a stamp, and a digest of them. */
export interface Tally {
  readonly device: string;
  readonly until: string;
  readonly count: number;
  readonly digest: string;
}

const tallyData = v.strictObject({
  device: v.string(),
  until: v.string(),
  count: v.number(),
  digest: v.string(),
});

/** Counts a device's own entries up to a stamp, in the order of stamps (SYN-03). */
export function tallyOf(entries: Iterable<Entry>, device: string, until?: string): Tally {
  const digest = sha256.create();
  let [count, latest] = [0, ''];
  for (const entry of entries) {
    if (entry.device !== device || (until !== undefined && entry.stamp > until)) continue;
    digest.update(new TextEncoder().encode(`${entry.stamp} ${entry.id}\n`));
    count += 1;
    latest = entry.stamp;
  }
  return { device, until: until ?? latest, count, digest: bytesToHex(digest.digest()) };
}

/** A tally travels sealed, in the clothes of an entry that is never written into a journal. */
export function sealTally(keys: JournalKeys, tally: Tally): SealedEntry {
  return sealEntry(keys, {
    id: `tally ${tally.device}`.replaceAll(' ', '-'),
    stamp: tally.until === '' ? '-' : tally.until,
    device: tally.device,
    kind: 'tally',
    day: '2000-01-01',
    at: '2000-01-01T00:00:00Z',
    zone: 'UTC',
    data: { ...tally },
  });
}

export function openTally(keys: JournalKeys, sealed: SealedEntry): Tally | undefined {
  const entry = openEntry(keys, sealed);
  if (!entry.ok || entry.value.kind !== 'tally') return undefined;
  const read = v.safeParse(tallyData, entry.value.data);
  return read.success ? read.output : undefined;
}

/** Whether everything a device says it wrote is here; entries it wrote later do not matter. */
export function isWhole(entries: Iterable<Entry>, tally: Tally): boolean {
  const here = tallyOf(entries, tally.device, tally.until);
  return here.count === tally.count && here.digest === tally.digest;
}

import type { Problem } from '../problems/problem.ts';
import { canonicalLine } from './canonical-line.ts';
import type { Entry } from './entry.ts';
import { byStamp } from './entry-order.ts';
import { sameEntry } from './same-entry.ts';

export interface Union {
  /** One entry an id, sorted by stamp, then id. */
  readonly entries: readonly Entry[];
  /** Ids that stood for two different entries. */
  readonly problems: readonly Problem[];
}

/**
 * Replicas merge by union of ids: commutative, associative and idempotent (JRN-05). Where one id stands for two
 * different entries (a damaged copy), the one whose canonical text is greater stays, so that every device keeps the same.
 */
export function unite(...journals: readonly Iterable<Entry>[]): Union {
  const byId = new Map<string, Entry>();
  const clashes = new Map<string, Entry>();
  for (const journal of journals) {
    for (const entry of journal) {
      const known = byId.get(entry.id);
      const kept = known === undefined ? entry : greater(known, entry);
      if (known !== undefined && !sameEntry(known, entry)) clashes.set(entry.id, kept);
      if (kept !== known) byId.set(entry.id, kept);
    }
  }
  const problems = [...clashes.keys()].sort().map((id) => clashProblem(byId.get(id) ?? { id, kind: '' }));
  return { entries: [...byId.values()].sort(byStamp), problems };
}

/** Of two entries of one id the one every device keeps. */
export function greater(a: Entry, b: Entry): Entry {
  return a === b || canonicalLine(a) >= canonicalLine(b) ? a : b;
}

export function clashProblem(kept: Pick<Entry, 'id' | 'kind'>): Problem {
  return {
    code: 'journal/id-clash',
    path: kept.id,
    message: `Two different entries carry the id "${kept.id}"; the same one of them is kept on every device.`,
    remedy: `Compare the "${kept.kind}" entry with what really was and correct it in the Journal.`,
  };
}

import { REMOVED, type Entry } from './entry.ts';
import { byStamp } from './entry-order.ts';

/**
 * A thread is a fact with all its corrections, as disjoint sets (union by size), so that a correction may arrive
 * before what it corrects. What counts is the version that nothing replaces; where two devices corrected the same
 * fact without knowing of each other, the greatest stamp of those, and both stay in the history. A circle of
 * corrections, which only damage can make, does no harm: then the greatest stamp of all counts.
 */
export interface Threads {
  /** Takes an entry in; it must already be in `byId`. */
  link(entry: Entry): void;
  inForce(id: string): boolean;
  /** Whether anything corrects it or is corrected by it. */
  joined(id: string): boolean;
  /** All versions, oldest first. */
  history(id: string): readonly Entry[];
}

export function createThreads(byId: ReadonlyMap<string, Entry>): Threads {
  const parent = new Map<string, string>();
  const members = new Map<string, string[]>();
  const replaced = new Set<string>();
  const current = new Map<string, Entry | undefined>();

  function root(id: string): string {
    let top = id;
    for (let up = parent.get(top); up !== undefined; up = parent.get(top)) top = up;
    for (let at = id; at !== top; ) {
      const next = parent.get(at) ?? top;
      parent.set(at, top);
      at = next;
    }
    return top;
  }

  function join(a: string, b: string): void {
    const [rootA, rootB] = [root(a), root(b)];
    if (rootA === rootB) return;
    const [membersA, membersB] = [members.get(rootA) ?? [rootA], members.get(rootB) ?? [rootB]];
    const [big, bigMembers, small, smallMembers] =
      membersA.length >= membersB.length
        ? [rootA, membersA, rootB, membersB]
        : [rootB, membersB, rootA, membersA];
    parent.set(small, big);
    for (const member of smallMembers) bigMembers.push(member);
    members.set(big, bigMembers);
    members.delete(small);
    current.delete(small);
  }

  function versions(ids: readonly string[]): Entry[] {
    return ids.map((id) => byId.get(id)).filter((entry) => entry !== undefined);
  }

  function currentOf(top: string, ids: readonly string[]): Entry | undefined {
    if (current.has(top)) return current.get(top);
    const all = versions(ids);
    const leaves = all.filter((entry) => !replaced.has(entry.id));
    const found = (leaves.length > 0 ? leaves : all).reduce<Entry | undefined>(
      (greatest, entry) => (greatest && byStamp(greatest, entry) > 0 ? greatest : entry),
      undefined,
    );
    current.set(top, found);
    return found;
  }

  return {
    link(entry) {
      if (entry.replaces !== undefined && entry.replaces !== entry.id) {
        replaced.add(entry.replaces);
        join(entry.id, entry.replaces);
      }
      if (parent.size > 0) current.delete(root(entry.id));
    },
    inForce(id) {
      const top = root(id);
      const ids = members.get(top);
      const counts = ids ? currentOf(top, ids) : byId.get(id);
      return counts !== undefined && counts.id === id && counts.kind !== REMOVED;
    },
    joined: (id) => members.has(root(id)),
    history: (id) => versions(members.get(root(id)) ?? [id]).sort(byStamp),
  };
}

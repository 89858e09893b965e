import { REMOVED, type Entry } from './entry.ts';

/**
 * A thread is a fact with all its corrections. Two devices may correct the same fact without knowing of each other:
 * the greatest stamp counts, both stay in the history. Threads are disjoint sets (union by naming), so a correction
 * may arrive before what it corrects, and even a damaged circle of corrections does no harm.
 */
export interface Threads {
  link(entry: Entry): void;
  inForce(id: string): boolean;
  history(id: string): readonly Entry[];
}

export function createThreads(byId: ReadonlyMap<string, Entry>): Threads {
  const parent = new Map<string, string>();
  const members = new Map<string, string[]>();

  function root(id: string): string {
    let at = id;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    if (at !== id && parent.get(id) !== at) parent.set(id, at);
    return at;
  }

  function join(a: string, b: string): void {
    const [rootA, rootB] = [root(a), root(b)];
    if (rootA === rootB) return;
    parent.set(rootA, rootB);
    members.set(rootB, [...(members.get(rootB) ?? [rootB]), ...(members.get(rootA) ?? [rootA])]);
    members.delete(rootA);
  }

  function versions(id: string): Entry[] {
    const ids = members.get(root(id)) ?? [id];
    return ids
      .map((member) => byId.get(member))
      .filter((entry) => entry !== undefined)
      .sort((a, b) => (a.stamp < b.stamp ? -1 : a.stamp > b.stamp ? 1 : a.id < b.id ? -1 : 1));
  }

  return {
    link(entry) {
      if (entry.replaces !== undefined) join(entry.id, entry.replaces);
    },
    inForce(id) {
      if (!members.has(root(id))) return byId.get(id)?.kind !== REMOVED;
      const last = versions(id).at(-1);
      return last?.id === id && last.kind !== REMOVED;
    },
    history: versions,
  };
}

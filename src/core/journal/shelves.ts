import type { Entry } from './entry.ts';
import { withInserted } from './entry-order.ts';
import { inOrder, type Fact } from './fact.ts';

interface Shelf {
  readonly ids: string[];
  /** Facts in force, in order; absent until asked for. Replaced, never changed. */
  facts: readonly Fact[] | undefined;
}

/** Facts in force under a key (a kind, a day), sorted when first asked for and kept sorted as entries arrive. */
export interface Shelves {
  put(key: string, id: string): void;
  facts(key: string): readonly Fact[];
  keys(): IterableIterator<string>;
  ids(key: string): readonly string[];
  /** The versions of one thread changed: what of them is in force is put in place, what is not taken out. */
  resettle(keys: ReadonlySet<string>, versions: readonly Entry[], counts: Fact | undefined): void;
  /** Sorts the key anew when next asked: quicker than resettling where many entries arrive at once. */
  forget(key: string): void;
  clear(): void;
}

export function createShelves(
  keyOf: (fact: Fact) => string,
  factInForce: (id: string) => Fact | undefined,
): Shelves {
  const shelves = new Map<string, Shelf>();

  function sortAnew(shelf: Shelf): readonly Fact[] {
    const found: Fact[] = [];
    for (const id of shelf.ids) {
      const fact = factInForce(id);
      if (fact) found.push(fact);
    }
    return found.length === 0 ? NONE : found.sort(inOrder);
  }

  return {
    put(key, id) {
      const shelf = shelves.get(key);
      if (shelf) shelf.ids.push(id);
      else shelves.set(key, { ids: [id], facts: undefined });
    },
    facts(key) {
      const shelf = shelves.get(key);
      if (!shelf) return NONE;
      shelf.facts ??= sortAnew(shelf);
      return shelf.facts;
    },
    keys: () => shelves.keys(),
    ids: (key) => shelves.get(key)?.ids ?? [],
    resettle(keys, versions, counts) {
      const touched = new Set(versions.map((entry) => entry.id));
      for (const key of keys) {
        const shelf = shelves.get(key);
        if (!shelf?.facts) continue;
        const here = counts && keyOf(counts) === key ? counts : undefined;
        const rest = versions.length > 1 ? without(shelf.facts, touched, here) : shelf.facts;
        const missing = here && !rest.includes(here);
        shelf.facts = missing ? withInserted(rest, here, inOrder) : rest;
      }
    },
    forget(key) {
      const shelf = shelves.get(key);
      if (shelf) shelf.facts = undefined;
    },
    clear: () => shelves.clear(),
  };
}

const NONE: readonly Fact[] = [];

function without(facts: readonly Fact[], ids: ReadonlySet<string>, but: Fact | undefined): readonly Fact[] {
  const rest = facts.filter((fact) => fact === but || !ids.has(fact.entry.id));
  return rest.length === facts.length ? facts : rest;
}

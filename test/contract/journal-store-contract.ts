import { writeJournal } from '#core/journal/write-journal.ts';
import type { Entry } from '#core/journal/entry.ts';
import type { JournalStore } from '#outside/store-port/journal-store.ts';
import { manyEntries } from './many-entries.ts';

/** What an adapter is tried with: a disk of its own for each rule, and a way to make its writes fail. */
export interface StoreLab {
  /** Opens the store on this lab's disk; again after a close it must find what was kept. */
  open(): Promise<JournalStore>;
  /** From now on the write at this step (1 is the next) fails; 0: none does. */
  failAt(step: number): void;
}

export interface ContractRule {
  readonly title: string;
  readonly run: (lab: StoreLab) => Promise<void>;
}

/** More runs than one, in every adapter. */
const LARGE = 2500;
const ALL_STEPS = 12;

/** The contract of journal-store.ts. It stands on no test runner, so that it also runs inside a browser's page. */
export const journalStoreContract: readonly ContractRule[] = [
  {
    title: '[JRN-40] what was acknowledged is there when the store is opened again',
    async run(lab) {
      const [first, second] = [manyEntries(3, 'a'), manyEntries(2, 'b')];
      const store = await lab.open();
      await saved(store, first);
      await saved(store, second);
      await store.close();
      same(await kept(await lab.open()), [...first, ...second]);
    },
  },
  {
    title: '[JRN-40] an empty store is empty, and marks begin below every entry',
    async run(lab) {
      const store = await lab.open();
      const before = await store.read(0);
      same(before.entries, []);
      await saved(store, manyEntries(1, 'a'));
      must((await store.read(before.mark)).entries.length === 1, 'the entry comes after the first mark');
    },
  },
  {
    title: '[JRN-42] an append of nothing is saved and changes nothing',
    async run(lab) {
      const store = await lab.open();
      await saved(store, manyEntries(2, 'a'));
      const { mark } = await store.read(0);
      await saved(store, []);
      same((await store.read(mark)).entries, []);
      same(await kept(store), manyEntries(2, 'a'));
    },
  },
  {
    title: '[JRN-43] entries kept twice, and out of order, count once',
    async run(lab) {
      const store = await lab.open();
      const entries = manyEntries(5, 'a');
      await saved(store, [...entries].reverse());
      await saved(store, entries);
      same(await kept(store), entries);
    },
  },
  {
    title: '[JRN-44] reading after a mark answers what came after it, also when tidied in between',
    async run(lab) {
      const store = await lab.open();
      for (let i = 0; i < 90; i++) await saved(store, manyEntries(1, `a${i}-`));
      const { mark } = await store.read(0);
      await saved(store, manyEntries(4, 'later'));
      same((await store.read(mark)).entries, manyEntries(4, 'later'));
      await store.tidy();
      const after = await store.read(mark);
      const ids = new Set(after.entries.map((entry) => entry.id));
      must(
        manyEntries(4, 'later').every((entry) => ids.has(entry.id)),
        'tidied, the later entries still come',
      );
      must(after.mark > mark, 'marks only grow');
    },
  },
  {
    title: '[JRN-45] ids that are nearly the same are different entries',
    async run(lab) {
      const store = await lab.open();
      const [base] = manyEntries(1, 'a');
      if (!base) throw new Error('no entry to start from');
      const near = ['AAAA', 'AAAAA', 'AAAAB', 'aaaa', 'AAAA.', 'AAAA/', '%41AAA'];
      const entries = near.map((id, i) => ({ ...base, id, stamp: `${base.stamp}${i}` }));
      await saved(store, entries);
      same(await kept(store), entries);
    },
  },
  {
    title: '[JRN-46] a large append is kept whole, with every kind of character',
    async run(lab) {
      const store = await lab.open();
      const entries = manyEntries(LARGE, 'a').map((entry, i) =>
        i % 100 === 0
          ? { ...entry, data: { text: `\u2028"\\\r\n\u0000 100 % \u{1F35A}${'x'.repeat(2000)}` } }
          : entry,
      );
      await saved(store, entries);
      await store.close();
      same(await kept(await lab.open()), entries);
    },
  },
  {
    title: '[JRN-47] tidying changes nothing that is read, once and twice',
    async run(lab) {
      const store = await lab.open();
      const all: Entry[] = [];
      for (let i = 0; i < 150; i++) {
        const entries = manyEntries(1 + (i % 40), `a${i}-`);
        all.push(...entries);
        await saved(store, entries);
      }
      await store.tidy();
      same(await kept(store), all);
      await store.tidy();
      await saved(store, manyEntries(1, 'z'));
      await store.close();
      same(await kept(await lab.open()), [...all, ...manyEntries(1, 'z')]);
    },
  },
  {
    title: '[JRN-48] erasing forgets everything, and the store can be used again',
    async run(lab) {
      const store = await lab.open();
      await saved(store, manyEntries(3, 'a'));
      await store.erase();
      same(await kept(store), []);
      await saved(store, manyEntries(2, 'b'));
      await store.close();
      same(await kept(await lab.open()), manyEntries(2, 'b'));
    },
  },
  {
    title: '[JRN-41] [JRN-49] a write that fails at step N, for every N, leaves all or nothing and says so',
    async run(lab) {
      const store = await lab.open();
      let expected = manyEntries(2, 'before');
      await saved(store, expected);
      let failures = 0;
      for (let step = 1; step <= ALL_STEPS; step++) {
        const entries = manyEntries(LARGE, `s${step}-`);
        lab.failAt(step);
        const outcome = await store.append(entries);
        lab.failAt(0);
        if (outcome.status === 'saved') expected = [...expected, ...entries];
        else failures += 1;
        must(outcome.status !== 'maybeSaved', 'a failed write is certain');
        same(await kept(store), expected);
        if (outcome.status === 'saved') break;
      }
      must(failures > 0, 'at least one step was made to fail');
      must(expected.length > 2, 'with no step left to fail the append is saved');
      await store.close();
      same(await kept(await lab.open()), expected);
    },
  },
  {
    title: '[JRN-47] [JRN-49] a tidying that fails at step N, for every N, loses nothing',
    async run(lab) {
      const store = await lab.open();
      const all: Entry[] = [];
      for (let i = 0; i < 70; i++) {
        const entries = manyEntries(30, `a${i}-`);
        all.push(...entries);
        await saved(store, entries);
      }
      for (const step of [1, 2, 3, 20, 34, 35, 36, 69, 70]) {
        lab.failAt(step);
        await store.tidy();
        lab.failAt(0);
        same(await kept(store), all);
      }
      await store.close();
      same(await kept(await lab.open()), all);
    },
  },
  {
    title: '[JRN-50] appends made at once are all kept',
    async run(lab) {
      const store = await lab.open();
      const batches = Array.from({ length: 20 }, (_, i) => manyEntries(3, `a${i}-`));
      await Promise.all(batches.map((entries) => saved(store, entries)));
      same(await kept(store), batches.flat());
    },
  },
  {
    title: '[JRN-41] what is handed in may be changed afterwards without changing what is kept',
    async run(lab) {
      const store = await lab.open();
      const entries = manyEntries(2, 'a');
      const handed = structuredClone(entries);
      await saved(store, handed);
      handed.length = 0;
      same(await kept(store), entries);
    },
  },
];

async function saved(store: JournalStore, entries: readonly Entry[]): Promise<void> {
  const outcome = await store.append(entries);
  if (outcome.status !== 'saved') throw new Error(`not saved: ${outcome.problem.message}`);
}

async function kept(store: JournalStore): Promise<readonly Entry[]> {
  const stored = await store.read(0);
  must(stored.problems.length === 0, `nothing is damaged, but: ${JSON.stringify(stored.problems[0])}`);
  return stored.entries;
}

function same(found: readonly Entry[], expected: readonly Entry[]): void {
  if (writeJournal(found) === writeJournal(expected)) return;
  throw new Error(`${found.length} entries found, ${expected.length} other entries expected`);
}

function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(`expected that ${what}`);
}

import { connect } from '#outside/store-indexeddb/open-database.ts';
import { indexedDbBlobs } from '#outside/store-indexeddb/indexeddb-blobs.ts';
import { indexedDbStore } from '#outside/store-indexeddb/indexeddb-store.ts';
import { journalStoreContract, type StoreLab } from '../../contract/journal-store-contract.ts';
import { manyEntries } from '../../contract/many-entries.ts';

/** How a write is made to fail: the request throws, or its transaction is undone. */
type Fault = 'throw' | 'abort';

let stepsLeft = 0;
let fault: Fault = 'throw';
let atStep: (() => void) | undefined;

function step(store: IDBObjectStore): void {
  if (stepsLeft === 0) return;
  stepsLeft -= 1;
  if (stepsLeft > 0) return;
  if (atStep) atStep();
  else if (fault === 'abort') store.transaction.abort();
  else throw new DOMException('the disk failed', 'UnknownError');
}

for (const verb of ['add', 'put', 'delete'] as const) {
  const original = IDBObjectStore.prototype[verb];
  Object.defineProperty(IDBObjectStore.prototype, verb, {
    value(this: IDBObjectStore, ...args: unknown[]) {
      step(this);
      return Reflect.apply(original, this, args);
    },
  });
}

function lab(name: string): StoreLab {
  return {
    open: () => Promise.resolve(indexedDbStore(connect(name))),
    failAt: (at) => {
      stepsLeft = at;
    },
  };
}

/** What the tests call from outside the page. */
const storePage = {
  async runRule(title: string, how: Fault): Promise<string> {
    fault = how;
    const rule = journalStoreContract.find((candidate) => candidate.title === title);
    if (!rule) return 'no such rule';
    try {
      await rule.run(lab(`contract-${how}-${title}`));
      return 'kept';
    } catch (broken) {
      return broken instanceof Error ? broken.message : String(broken);
    }
  },

  /** Keeps entries one append after the other, naming each as it is acknowledged; at a step the page is brought down. */
  async keepUntilDown(database: string, downAtStep: number): Promise<void> {
    const store = indexedDbStore(connect(database));
    stepsLeft = downAtStep;
    atStep = () => {
      Reflect.get(globalThis, 'bringDown')();
      const until = performance.now() + 3000;
      while (performance.now() < until);
    };
    for (let i = 0; i < 40; i++) {
      const outcome = await store.append(manyEntries(i % 3 === 0 ? 2500 : 1, `a${i}-`));
      if (outcome.status === 'saved') await Reflect.get(globalThis, 'acknowledge')(i);
    }
  },

  async countsByAppend(database: string): Promise<Record<string, number>> {
    const { entries, problems } = await indexedDbStore(connect(database)).read(0);
    if (problems.length > 0) throw new Error(problems[0]?.message);
    const counts: Record<string, number> = {};
    for (const { id } of entries) {
      const append = id.slice(1, id.indexOf('-'));
      counts[append] = (counts[append] ?? 0) + 1;
    }
    return counts;
  },

  /** Fills the store until it says that it is full. */
  async fill(database: string): Promise<{ saved: number; code: string; kept: number }> {
    const store = indexedDbStore(connect(database));
    let saved = 0;
    for (let i = 0; i < 400; i++) {
      const outcome = await store.append(manyEntries(2000, `a${i}-`));
      if (outcome.status !== 'saved') {
        const { entries } = await store.read(0);
        return { saved, code: outcome.problem.code, kept: entries.length };
      }
      saved += 2000;
    }
    return { saved, code: 'never full', kept: saved };
  },

  async appendOne(database: string): Promise<string> {
    return (await indexedDbStore(connect(database)).append(manyEntries(1, 'one'))).status;
  },

  async blobs(): Promise<unknown> {
    const connection = connect('photographs');
    const blobs = indexedDbBlobs(connection);
    const bytes = crypto.getRandomValues(new Uint8Array(50_000));
    const put = await blobs.putBlob('front', new Blob([bytes], { type: 'image/jpeg' }));
    await blobs.putBlob('front-2', new Blob(['near'], { type: 'image/jpeg' }));
    await connection.close();
    const back = await blobs.getBlob('front');
    const same = new Uint8Array((await back?.arrayBuffer()) ?? []).every((byte, i) => byte === bytes[i]);
    await blobs.deleteBlob('front');
    const near = await (await blobs.getBlob('front-2'))?.text();
    return {
      put,
      size: back?.size,
      type: back?.type,
      same,
      gone: (await blobs.getBlob('front')) === undefined,
      near,
    };
  },
};
export type StorePage = typeof storePage;

Reflect.set(globalThis, 'storePage', storePage);

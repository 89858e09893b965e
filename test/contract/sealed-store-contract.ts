import { expect, it } from 'vitest';
import type { SealedStore } from '../../src/outside/sealed-store/sealed-store.ts';

const entry = (id: string, body = 'AAAA') => ({ id, stamp: `stamp-${id}`, body });

/** What every store of sealed journals keeps to; `open` answers an empty one. */
export function sealedStoreContract(name: string, open: () => Promise<SealedStore> | SealedStore): void {
  it(`[SYN-11] ${name}: hands over what it was given, in the order in which it came, once each`, async () => {
    const store = await open();
    expect(await store.append('one', [entry('b'), entry('a')])).toBe(2);
    expect(await store.append('one', [entry('a', 'BBBB'), entry('c')])).toBe(3);
    expect(await store.after('one', 0, 10)).toMatchObject([
      { seq: 1, ...entry('b') },
      { seq: 2, ...entry('a') },
      { seq: 3, ...entry('c') },
    ]);
    expect(await store.after('one', 1, 1)).toMatchObject([{ seq: 2, ...entry('a') }]);
    expect(await store.ids('one')).toEqual(['b', 'a', 'c']);
    await store.close();
  });

  it(`[SYN-17] ${name}: the digest of the order is the same for the same order and no other`, async () => {
    const store = await open();
    await store.append('one', [entry('a'), entry('b'), entry('c')]);
    await store.append('two', [entry('a')]);
    await store.append('two', [entry('b'), entry('c')]);
    await store.append('three', [entry('b'), entry('a'), entry('c')]);
    const chains = await Promise.all(['one', 'two', 'three'].map((journal) => store.chainAt(journal, 3)));
    expect(chains[0]).toBe((await store.after('one', 2, 1))[0]?.chain);
    expect(chains[1]).toBe(chains[0]);
    expect(chains[2]).not.toBe(chains[0]);
    expect([await store.chainAt('one', 4), await store.chainAt('nobody', 1)]).toEqual(['', '']);
    await store.close();
  });

  it(`[SYN-10] ${name}: the first to come opens a journal, and only that key opens it again`, async () => {
    const store = await open();
    expect(await store.enter('one', 'digest')).toBe('open');
    expect(await store.enter('one', 'digest')).toBe('open');
    expect(await store.enter('one', 'other')).toBe('closed');
    expect(await store.enter('two', 'other')).toBe('open');
    await store.close();
  });

  it(`[SYN-10] ${name}: journals never meet, and one that is dropped is gone`, async () => {
    const store = await open();
    await store.enter('one', 'digest');
    await store.append('one', [entry('a')]);
    await store.append('two', [entry('b')]);
    await store.append('one', [], entry('tally'));
    await store.append('one', [entry('c')], entry('tally', 'CCCC'));
    expect(await store.tallies('one')).toEqual([entry('tally', 'CCCC')]);
    expect(await store.tallies('two')).toEqual([]);
    await store.drop('one');
    expect([await store.ids('one'), await store.tallies('one'), await store.ids('two')]).toEqual([
      [],
      [],
      ['b'],
    ]);
    // A device with the old key must hear that it is out, not begin the journal anew under the old name.
    expect([await store.enter('one', 'digest'), await store.enter('one', 'another')]).toEqual([
      'closed',
      'closed',
    ]);
    await store.append('one', [entry('d')], entry('tally'));
    expect([await store.ids('one'), await store.tallies('one')]).toEqual([[], []]);
    expect([await store.knows('one'), await store.knows('two')]).toEqual([true, false]);
    await store.close();
  });

  it(`[SYN-11] ${name}: many who write to one journal at once leave one order without a gap`, async () => {
    const store = await open();
    await Promise.all(
      Array.from({ length: 12 }, (_, i) =>
        store.append('one', [entry(`a${i}`), entry(`b${i}`), entry('same')]),
      ),
    );
    const kept = await store.after('one', 0, 100);
    expect(kept.map(({ seq }) => seq)).toEqual(Array.from({ length: 25 }, (_, i) => i + 1));
    expect(new Set(kept.map(({ id }) => id)).size).toBe(25);
    await store.close();
  });

  it(`[SYN-24] ${name}: what is lent is lent to one reader until a moment, and is gone with its journal`, async () => {
    const store = await open();
    await store.enter('one', 'digest');
    await store.lend('one', 'reader', 1000);
    expect([await store.lentUntil('one', 'reader'), await store.lentUntil('one', 'digest')]).toEqual([
      1000,
      undefined,
    ]);
    expect(await store.lentUntil('two', 'reader')).toBeUndefined();
    await store.lend('one', 'another', 2_000_000_000_000);
    expect([await store.lentUntil('one', 'reader'), await store.lentUntil('one', 'another')]).toEqual([
      undefined,
      2_000_000_000_000,
    ]);
    expect([await store.ended(2_000_000_000_000), await store.ended(2_000_000_000_001)]).toEqual([
      [],
      ['one'],
    ]);
    await store.drop('one');
    expect([await store.lentUntil('one', 'another'), await store.ended(3_000_000_000_000)]).toEqual([
      undefined,
      [],
    ]);
    await store.close();
  });
}

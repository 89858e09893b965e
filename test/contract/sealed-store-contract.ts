import { expect, it } from 'vitest';
import type { SealedStore } from '../../src/outside/sealed-store/sealed-store.ts';

const entry = (id: string, body = 'AAAA') => ({ id, stamp: `stamp-${id}`, body });

/** What every store of sealed journals keeps to; `open` answers an empty one. */
export function sealedStoreContract(name: string, open: () => SealedStore): void {
  it(`[SYN-11] ${name}: hands over what it was given, in the order in which it came, once each`, () => {
    const store = open();
    expect(store.append('one', [entry('b'), entry('a')])).toBe(2);
    expect(store.append('one', [entry('a', 'BBBB'), entry('c')])).toBe(3);
    expect(store.after('one', 0, 10)).toMatchObject([
      { seq: 1, ...entry('b') },
      { seq: 2, ...entry('a') },
      { seq: 3, ...entry('c') },
    ]);
    expect(store.after('one', 1, 1)).toMatchObject([{ seq: 2, ...entry('a') }]);
    expect(store.ids('one')).toEqual(['b', 'a', 'c']);
    store.close();
  });

  it(`[SYN-17] ${name}: the digest of the order is the same for the same order and no other`, () => {
    const store = open();
    store.append('one', [entry('a'), entry('b'), entry('c')]);
    store.append('two', [entry('a')]);
    store.append('two', [entry('b'), entry('c')]);
    store.append('three', [entry('b'), entry('a'), entry('c')]);
    const chains = ['one', 'two', 'three'].map((journal) => store.chainAt(journal, 3));
    expect(chains[0]).toBe(store.after('one', 2, 1)[0]?.chain);
    expect(chains[1]).toBe(chains[0]);
    expect(chains[2]).not.toBe(chains[0]);
    expect([store.chainAt('one', 4), store.chainAt('nobody', 1)]).toEqual(['', '']);
    store.close();
  });

  it(`[SYN-10] ${name}: the first to come opens a journal, and only that key opens it again`, () => {
    const store = open();
    expect(store.enter('one', 'digest')).toBe('open');
    expect(store.enter('one', 'digest')).toBe('open');
    expect(store.enter('one', 'other')).toBe('closed');
    expect(store.enter('two', 'other')).toBe('open');
    store.close();
  });

  it(`[SYN-10] ${name}: journals never meet, and one that is dropped is gone`, () => {
    const store = open();
    store.enter('one', 'digest');
    store.append('one', [entry('a')]);
    store.append('two', [entry('b')]);
    store.append('one', [], entry('tally'));
    store.append('one', [entry('c')], entry('tally', 'CCCC'));
    expect(store.tallies('one')).toEqual([entry('tally', 'CCCC')]);
    expect(store.tallies('two')).toEqual([]);
    store.drop('one');
    expect([store.ids('one'), store.tallies('one'), store.ids('two')]).toEqual([[], [], ['b']]);
    // A device with the old key must hear that it is out, not begin the journal anew under the old name.
    expect([store.enter('one', 'digest'), store.enter('one', 'another')]).toEqual(['closed', 'closed']);
    expect([store.knows('one'), store.knows('two')]).toEqual([true, false]);
    expect(store.check()).toEqual([]);
    store.close();
  });
}

import { expect, it } from 'vitest';
import { moveJournals } from './move-journals.ts';
import { openSqliteStore } from './sqlite-sealed-store.ts';
import { StoreAwayError } from './store-away-error.ts';

const entry = (id: string) => ({ id, stamp: `stamp-${id}`, body: 'AAAA' });

async function full() {
  const store = openSqliteStore(':memory:');
  await store.enter('one', 'digest-one');
  await store.append(
    'one',
    Array.from({ length: 301 }, (_, i) => entry(`e${i}`)),
    entry('tally'),
  );
  await store.enter('lent', 'digest-lent');
  await store.append('lent', [entry('a')]);
  await store.lend('lent', 'reader', 5000);
  await store.enter('shut', 'digest-shut');
  await store.drop('shut');
  return store;
}

it('[SYN-29] order, digest, tallies, loans and closed names are there afterwards, and once more changes nothing', async () => {
  const [from, to] = [await full(), openSqliteStore(':memory:')];
  for (let time = 0; time < 2; time++) {
    expect(await moveJournals(from, to)).toEqual({ journals: 2, entries: 302, closed: 1, refused: 0 });
    expect(to.names()).toEqual(from.names());
    expect(await to.after('one', 0, 1000)).toEqual(await from.after('one', 0, 1000));
    expect(await to.tallies('one')).toEqual([entry('tally')]);
    expect(await to.lentUntil('lent', 'reader')).toBe(5000);
    expect(await to.enter('shut', 'digest-shut')).toBe('closed');
  }
});

it('[SYN-29] what is newer in the other store stays: a closed name, another key, a later loan, later entries', async () => {
  const [from, to] = [await full(), openSqliteStore(':memory:')];
  await moveJournals(from, to);
  await to.append('one', [entry('later')], { ...entry('tally'), body: 'BBBB' });
  await to.lend('lent', 'another', 9000);
  await from.enter('other', 'digest-here');
  await to.enter('other', 'digest-there');
  expect(await moveJournals(from, to)).toMatchObject({ journals: 2, refused: 1 });
  expect((await to.ids('one')).at(-1)).toBe('later');
  expect(await to.tallies('one')).toEqual([{ ...entry('tally'), body: 'BBBB' }]);
  expect(await to.lentUntil('lent', 'another')).toBe(9000);
  await to.drop('one');
  expect(await moveJournals(from, to)).toMatchObject({ journals: 1, refused: 2 });
  expect(await to.ids('one')).toEqual([]);
});

it('[SYN-29] broken off at any step and begun again, it comes to the same', async () => {
  const from = await full();
  for (let step = 0, broken = true; broken; step++) {
    const to = openSqliteStore(':memory:');
    let left = step;
    broken = false;
    const fragile = {
      ...to,
      append: async (...given: Parameters<typeof to.append>) => {
        if (left-- === 0) {
          broken = true;
          throw new StoreAwayError('gone');
        }
        return to.append(...given);
      },
    };
    await moveJournals(from, fragile).catch((fault: unknown) => expect(fault).toBeInstanceOf(StoreAwayError));
    await moveJournals(from, to);
    expect(await to.after('one', 0, 1000)).toEqual(await from.after('one', 0, 1000));
    expect(await to.tallies('one')).toEqual([entry('tally')]);
    expect(to.names()).toEqual(from.names());
    expect(step).toBeLessThan(20);
  }
});

import { expect, it } from 'vitest';
import { StoreAwayError } from '#outside/sealed-store/store-away-error.ts';
import { openSqliteStore } from '#outside/sealed-store/sqlite-sealed-store.ts';
import { answersNow } from './answers-now.ts';

it('[SYN-26] a store that is away or keeps one waiting is not ready; a fault of another kind is not hidden', async () => {
  const store = openSqliteStore(':memory:');
  expect(await answersNow(store)).toBe(true);
  const that = (knows: () => Promise<boolean>) => answersNow({ ...store, knows }, 20);
  expect(await that(() => Promise.reject(new StoreAwayError('ECONNREFUSED')))).toBe(false);
  expect(await that(() => new Promise(() => undefined))).toBe(false);
  await expect(that(() => Promise.reject(new TypeError('ours')))).rejects.toThrow('ours');
  await store.close();
});

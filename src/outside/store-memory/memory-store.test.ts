import { describe, test } from 'vitest';
import type { Entry } from '#core/journal/entry.ts';
import { journalStoreContract, type StoreLab } from '../../../test/contract/journal-store-contract.ts';
import { memoryStore } from './memory-store.ts';

/** A disk whose writes can be made to fail. */
class FaultyDisk extends Map<number, readonly Entry[]> {
  stepsLeft = 0;

  override set(mark: number, entries: readonly Entry[]): this {
    this.step();
    return super.set(mark, entries);
  }

  override delete(mark: number): boolean {
    this.step();
    return super.delete(mark);
  }

  private step(): void {
    if (this.stepsLeft > 0 && --this.stepsLeft === 0) throw new Error('the disk failed');
  }
}

function lab(): StoreLab {
  const disk = new FaultyDisk();
  return {
    open: () => Promise.resolve(memoryStore(disk)),
    failAt: (step) => {
      disk.stepsLeft = step;
    },
  };
}

describe('the memory store keeps the contract', () => {
  test.each(journalStoreContract.map((rule) => [rule.title, rule] as const))('%s', (_, rule) =>
    rule.run(lab()),
  );
});

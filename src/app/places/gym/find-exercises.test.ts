import { describe, expect, it } from 'vitest';
import { exerciseBook } from '#core/gym/book/exercise-book.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { findExercises, standIns } from './find-exercises.ts';

const all = exerciseBook(createLedger()).exercises();
const names = (found: readonly { readonly exercise: string }[]): string[] =>
  found.map(({ exercise }) => exercise);

describe('an exercise looked for', () => {
  it('[GYM-99] by words of its name, by anatomy, or by the part of the body in plain words', () => {
    expect(names(findExercises(all, 'lying curl'))).toEqual(['lying-leg-curl']);
    expect(names(findExercises(all, 'soleus'))).toContain('seated-calf-raise');
    expect(names(findExercises(all, 'deep calf'))).toEqual(names(findExercises(all, 'soleus')));
    expect(findExercises(all, ' ')).toEqual([]);
  });

  it('[GYM-99] what moves the same muscle may stand in, what was done before first', () => {
    const curl = all.find(({ exercise }) => exercise === 'lying-leg-curl');
    if (!curl) throw new Error('the list has a lying leg curl');
    const found = names(standIns(all, curl, new Set(['seated-leg-curl'])));
    expect(found[0]).toBe('seated-leg-curl');
    expect(found).not.toContain('lying-leg-curl');
    expect(found).not.toContain('barbell-curl');
  });
});

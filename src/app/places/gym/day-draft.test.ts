import { describe, expect, it } from 'vitest';
import { exerciseBook } from '#core/gym/book/exercise-book.ts';
import { createLedger } from '#core/journal/ledger.ts';
import {
  draftOfDay,
  earlier,
  emptyDay,
  joined,
  parted,
  readDay,
  withExercise,
  withoutSlot,
  withSlot,
} from './day-draft.ts';

const book = exerciseBook(createLedger());
const three = ['back-squat', 'one-leg-extension', 'lying-leg-curl'].reduce(
  (typed, key) => withExercise(typed, book.exercise(key), `slot-${key}`),
  { ...emptyDay, name: 'Legs' },
);
const names = (typed: typeof three): string[][] =>
  typed.blocks.map(({ slots }) => slots.map(({ exercise }) => exercise));
const read = (typed: typeof three) => readDay(typed, 'legs', (key) => book.exercise(key).name);

describe('a training day put together', () => {
  it('[GYM-102] exercises are walked alone, moved, joined into a superset and parted again', () => {
    expect(names(joined(three, 2))).toEqual([['back-squat'], ['one-leg-extension', 'lying-leg-curl']]);
    expect(names(joined(joined(three, 2), 1))).toHaveLength(1);
    expect(names(parted(joined(three, 2), 1))).toEqual(names(three));
    expect(names(earlier(three, 2))[1]).toEqual(['lying-leg-curl']);
    expect(earlier(three, 0)).toBe(three);
    expect(names(withoutSlot(three, 'slot-back-squat'))).toHaveLength(2);
  });

  it('[GYM-102] an exercise trained one side at a time starts so', () => {
    expect(three.blocks[1]?.slots[0]?.sides).toBe('one at a time');
  });

  it('[GYM-102] read and described again it is the same', () => {
    const day = read(joined(three, 2));
    if (!day.ok) throw new Error(day.problem.message);
    expect(read(draftOfDay(day.value, () => false))).toEqual(day);
  });

  it('[GYM-102] names what is missing with its exercise', () => {
    const refusal = (typed: typeof three) => {
      const day = read(typed);
      return day.ok ? undefined : day.problem;
    };
    expect(refusal(emptyDay)?.path).toBe('name');
    expect(refusal({ ...emptyDay, name: 'Legs' })?.path).toBe('blocks');
    const sets = three.blocks[0]?.slots[0]?.sets ?? [];
    const withSets = (part: object) =>
      refusal(withSlot(three, 'slot-back-squat', { sets: sets.map((scheme) => ({ ...scheme, ...part })) }));
    expect(withSets({ count: undefined })?.message).toBe('Back squat: the number of sets is missing.');
    expect(withSets({ min: 12, max: 8 })?.path).toBe('max');
    expect(withSets({ tempo: 'slow' })?.path).toBe('tempo');
    expect(withSets({ tempo: '3-1-X-0' })).toBeUndefined();
    expect(refusal(withSlot(three, 'slot-back-squat', { sets: [] }))?.path).toBe('sets');
  });
});

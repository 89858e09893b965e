import { describe, expect, it } from 'vitest';
import { exerciseBook } from '#core/gym/book/exercise-book.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { draftOfExercise, readExercise } from './exercise-draft.ts';

const squat = draftOfExercise(exerciseBook(createLedger()).exercise('back-squat'));

describe('an exercise made one’s own', () => {
  it('[GYM-103] starts from the list and keeps what it says', () => {
    expect(readExercise(squat, 'back-squat')).toMatchObject({
      value: { name: 'Back squat', carrier: 'barbell', main: true, sides: 'together' },
    });
    const own = readExercise({ ...draftOfExercise(undefined), name: 'Sandbag carry' }, 'own');
    expect(own).toEqual({
      ok: true,
      value: { exercise: 'own', name: 'Sandbag carry', main: false, sides: 'together' },
    });
  });

  it('[GYM-103] a caution needs its joint, and a tempo that can be read', () => {
    const knee = { ...squat, protect: true, joint: 'knee', ceilingKg: 100, repsFloor: 8, tempo: '3-1-1-0' };
    expect(readExercise(knee, 'back-squat')).toMatchObject({
      value: { caution: { joint: 'knee', ceilingKg: 100, repsFloor: 8, tempo: '3-1-1-0' } },
    });
    expect(readExercise({ ...knee, joint: ' ' }, 'x')).toMatchObject({ problem: { path: 'joint' } });
    expect(readExercise({ ...knee, tempo: '3' }, 'x')).toMatchObject({ problem: { path: 'tempo' } });
    const put = readExercise({ ...knee, protect: false }, 'back-squat');
    expect(put.ok && put.value.caution).toBeUndefined();
    expect(readExercise({ ...squat, name: '' }, 'x')).toMatchObject({ problem: { path: 'name' } });
  });
});

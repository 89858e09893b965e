import { describe, expect, it } from 'vitest';
import { tableExercise, tableExercises } from './exercises.ts';
import { muscles, wordsOfMuscle } from './muscles.ts';

describe('the list of exercises', () => {
  it('[GYM-70] has each exercise once, with muscles by anatomical names, none both prime and assisting', () => {
    const keys = tableExercises.map(({ exercise }) => exercise);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.length).toBeGreaterThan(60);
    for (const { prime, assisting, name } of tableExercises) {
      expect([name, prime.length > 0]).toEqual([name, true]);
      expect([name, prime.filter((muscle) => assisting.includes(muscle))]).toEqual([name, []]);
    }
  });

  it('[GYM-70] every muscle is a prime mover of some exercise, but for those that only assist or hold', () => {
    const prime = new Set(tableExercises.flatMap((row) => row.prime));
    const never = muscles.map(({ muscle }) => muscle).filter((muscle) => !prime.has(muscle));
    expect(never.sort()).toEqual([
      'forearm extensors',
      'rhomboids',
      'teres major',
      'trapezius, ascending part',
    ]);
  });

  it('[GYM-70] knows the known: a squat is moved by vastus and gluteus, a curl by biceps brachii', () => {
    expect(tableExercise('back-squat')).toMatchObject({
      prime: ['vastus muscles', 'gluteus maximus'],
      main: true,
      bodyShare: 0,
    });
    expect(tableExercise('barbell-curl')?.prime).toEqual(['biceps brachii']);
    expect(tableExercise('pull-up')?.bodyShare).toBe(1);
    expect(tableExercise('moon-walk')).toBeUndefined();
  });

  it('[GYM-70] says muscles in plain words; a name it does not have is its own words', () => {
    expect(wordsOfMuscle('vastus muscles')).toBe('front of the thigh');
    expect(wordsOfMuscle('platysma')).toBe('platysma');
    expect(new Set(muscles.map(({ words }) => words)).size).toBe(muscles.length);
  });
});

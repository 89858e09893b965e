import { describe, expect, it } from 'vitest';
import {
  draftOfMachine,
  emptyMachine,
  readGeometry,
  readMachine,
  type MachineDraft,
} from './machine-draft.ts';

const LEVER: MachineDraft = {
  ...emptyMachine,
  name: 'Lever press',
  fromDeg: -25,
  toDeg: 50,
  leverKg: 18,
  leverCm: 55,
  padCm: 105,
  pegs: [
    { name: 'low', cm: 70, deg: -55 },
    { name: 'high', cm: 75, deg: 10 },
  ],
};

const path = (change: Partial<MachineDraft>): string | undefined => {
  const read = readGeometry({ ...LEVER, ...change });
  return read.ok ? undefined : read.problem.path;
};

describe('a machine described once', () => {
  it('[GYM-101] the tape and the level make its geometry; described again it reads the same', () => {
    const read = readMachine(LEVER, 'press');
    if (!read.ok) throw new Error(read.problem.message);
    expect(read.value.geometry).toMatchObject({
      of: 'lever',
      padM: 1.05,
      pegs: [{ radiusM: 0.7, angleDeg: -30 }, { angleDeg: 35 }],
    });
    expect(readMachine(draftOfMachine(read.value), 'press')).toEqual(read);
  });

  it('[GYM-101] names the measure that is missing, and two pegs of one name', () => {
    expect(path({})).toBeUndefined();
    expect(path({ fromDeg: undefined })).toBe('fromDeg');
    expect(path({ padCm: undefined })).toBe('padCm');
    expect(path({ pegs: [{ name: 'low' }] })).toBe('pegs.0.cm');
    expect(
      path({
        pegs: [
          { name: 'low', cm: 50 },
          { name: ' low ', cm: 60 },
        ],
      }),
    ).toBe('pegs.1.name');
    expect(path({ of: 'unknown', pegs: [{ name: '' }] })).toBe('pegs.0.name');
  });

  it('[GYM-101] a range that does not go forward is said at the end angle', () => {
    expect(path({ toDeg: -40 })).toBe('toDeg');
    expect(path({ toDeg: 400 })).toBe('toDeg');
  });

  it('[GYM-101] a stack with half holes and weights laid on top; a sled on its rails', () => {
    const stack = {
      of: 'stack',
      firstKg: 5,
      stepKg: 5,
      lastKg: 90,
      halfPinKg: 2.5,
      addOns: '1,25 2.5',
    } as const;
    expect(readGeometry({ ...LEVER, ...stack })).toMatchObject({
      value: { halfPinKg: 2.5, addOnsKg: [1.25, 2.5] },
    });
    expect(path({ ...stack, lastKg: 2 })).toBe('lastKg');
    expect(path({ ...stack, addOns: 'two' })).toBe('addOns');
    expect(path({ of: 'sled', sledKg: 40 })).toBe('railsDeg');
  });
});

import { describe, expect, it } from 'vitest';
import { loadables, plateChange, rampOn, stampKg } from './ramp-draft.ts';

const BAR = { id: 'bar', name: 'Bar', emptyKg: 20, sides: 2 } as const;

describe('a ramp with the plates of the place', () => {
  it('[GYM-92] names pound plates as they are stamped, kilogram plates beside them', () => {
    const plates = [
      { mass: 45, unit: 'lb', count: 2 },
      { mass: 20, unit: 'kg', count: 2 },
      { mass: 1.25, unit: 'kg', count: 2 },
    ] as const;
    // 45 lb are 20.41165665 kg by definition of the pound (0.45359237 kg, 1959).
    const topKg = 20 + 2 * (20.41165665 + 20);
    const read = rampOn(BAR, [...plates], { topKg, reps: 5, warmUps: 2 });
    if (!read.ok) throw new Error(read.problem.message);
    const top = read.value.answer.sets.at(-1);
    expect(read.value.answer.errorKg).toBe(0);
    expect(top?.perSide.map(read.value.stampOf).map(({ mass, unit }) => `${mass} ${unit}`)).toEqual(
      expect.arrayContaining(['45 lb', '20 kg']),
    );
    expect(stampKg({ mass: 45, unit: 'lb' })).toBe(20.41165665);
  });

  it('[GYM-92] says which field is missing', () => {
    expect(rampOn(undefined, [], { topKg: 60, reps: 5 })).toMatchObject({ problem: { path: 'on' } });
    expect(rampOn(BAR, [], { reps: 5 })).toMatchObject({ problem: { path: 'topKg' } });
    expect(rampOn(BAR, [], { topKg: 900, reps: 5 })).toMatchObject({ ok: false });
  });

  it('[GYM-93] plates come off outside first and go on inside first', () => {
    expect(plateChange([20, 10, 5], [20, 15, 2.5])).toEqual({ stays: [20], off: [5, 10], on: [15, 2.5] });
    expect(plateChange([], [20])).toEqual({ stays: [], off: [], on: [20] });
    expect(plateChange([20, 5], [20, 5])).toEqual({ stays: [20, 5], off: [], on: [] });
  });

  it('[GYM-92] a lever takes plates from nought, a sled counts its own weight, a stack takes none', () => {
    const machine = (geometry: object) => ({ machine: 'm', name: 'M', geometry }) as never;
    const lever = { of: 'lever', sides: 1 };
    expect(loadables([], [machine(lever)])).toMatchObject([{ emptyKg: 0, sides: 1 }]);
    expect(loadables([], [machine({ of: 'sled', sledKg: 35, sides: 2 })])).toMatchObject([{ emptyKg: 35 }]);
    expect(loadables([], [machine({ of: 'stack' })])).toEqual([]);
  });
});

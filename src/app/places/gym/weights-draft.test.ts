import { describe, expect, it } from 'vitest';
import { draftOfCount, readCount, withDumbbells, withPlate } from './weights-draft.ts';

const EMPTY = draftOfCount(undefined);

describe('what a place has to lift', () => {
  it('[GYM-94] a rack of dumbbells by its ends and its step, each pair once', () => {
    const rack = withDumbbells(EMPTY, { from: 5, to: 12.5, step: 2.5, unit: 'kg' });
    if (!rack.ok) throw new Error(rack.problem.message);
    expect(rack.value.dumbbellPairs.map(({ mass }) => mass)).toEqual([5, 7.5, 10, 12.5]);
    const again = withDumbbells(rack.value, { from: 10, to: 15, step: 2.5, unit: 'kg' });
    expect(again).toMatchObject({ value: { dumbbellPairs: { length: 5 } } });
  });

  it('[GYM-94] a rack that runs backwards, has no step or no end is said', () => {
    const path = (run: { from?: number; to?: number; step?: number }) => {
      const read = withDumbbells(EMPTY, { from: run.from, to: run.to, step: run.step, unit: 'lb' });
      return read.ok ? undefined : read.problem.path;
    };
    expect(path({})).toBe('from');
    expect(path({ from: 20, to: 10, step: 5 })).toBe('to');
    expect(path({ from: 10, to: 20 })).toBe('step');
    expect(path({ from: 1, to: 500, step: 0.1 })).toBe('step');
    expect(path({ from: 10 })).toBeUndefined();
  });

  it('[GYM-94] plates of both units side by side, heaviest first; none counted is none kept', () => {
    const typed = [
      { mass: 20, unit: 'kg' },
      { mass: 45, unit: 'lb' },
      { mass: 45, unit: 'lb' },
    ].reduce((so, plate) => withPlate(so, plate as { mass: number; unit: 'kg' | 'lb' }), EMPTY);
    expect(typed.plates.map(({ mass }) => mass)).toEqual([45, 20]);
    const none = {
      ...typed,
      plates: typed.plates.map((plate) => ({ ...plate, count: plate.mass === 20 ? 0 : 4 })),
    };
    expect(readCount(none)).toEqual({ ok: true, value: { plates: [{ mass: 45, unit: 'lb', count: 4 }] } });
  });

  it('[GYM-94] counted again, a place keeps its name', () => {
    const counted = { place: 'Hall', plates: [{ mass: 20, unit: 'kg' as const, count: 4 }] };
    expect(readCount(draftOfCount(counted))).toEqual({ ok: true, value: counted });
  });

  it('[GYM-94] a plate without its number is named', () => {
    const typed = { ...EMPTY, plates: [{ mass: 2.5, unit: 'kg' as const }] };
    expect(readCount(typed)).toMatchObject({ problem: { message: 'The 2.5 kg plates have no number.' } });
  });
});

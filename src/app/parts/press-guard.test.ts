import { describe, expect, it } from 'vitest';
import { isMeant, noteScreenChange, pressGate } from './press-guard.ts';

describe('[LOOK-05] presses that are meant', () => {
  it('[LOOK-05] a second press within a second does nothing; one after it counts', () => {
    const gate = pressGate();
    expect([10_000, 10_400, 10_999, 11_000, 11_500].map((atMs) => gate(atMs))).toEqual([
      true,
      false,
      false,
      true,
      false,
    ]);
  });

  it('[LOOK-05] a press in the first 300 ms of a screen does nothing, and does not use up the gate', () => {
    noteScreenChange(50_000);
    const gate = pressGate();
    expect(isMeant(50_299)).toBe(false);
    expect(gate(50_200)).toBe(false);
    expect(gate(50_300)).toBe(true);
  });

  it('[LOOK-05] a button that comes up under the finger stays closed for a second', () => {
    const gate = pressGate(60_000);
    expect(gate(60_999)).toBe(false);
    expect(gate(61_000)).toBe(true);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { storageClasses } from '../tables/storage-clock.ts';
import {
  moveClock,
  readClock,
  shelfLimit,
  startClock,
  type ShelfClock,
  type StockPlace,
} from './shelf-life.ts';

const runs = { seed: 20_270_303, numRuns: 500 };
const HOUR = 3_600_000;

const move = fc.record({
  afterHours: fc.double({ min: 0, max: 60, noNaN: true }),
  to: fc.constantFrom<StockPlace>('fridge', 'freezer', 'room'),
  minutesOut: fc.option(fc.integer({ min: 0, max: 90 }), { nil: undefined }),
});
const life = fc.record({
  storage: fc.constantFrom(...storageClasses),
  moves: fc.array(move, { maxLength: 8 }),
});

function live({
  storage,
  moves,
}: {
  storage: (typeof storageClasses)[number];
  moves: { afterHours: number; to: StockPlace; minutesOut: number | undefined }[];
}) {
  let atMs = 0;
  let clock: ShelfClock = startClock(shelfLimit(storage, 'strict'), 'fridge', 0);
  for (const { afterHours, to, minutesOut } of moves) {
    atMs += afterHours * HOUR;
    clock = moveClock(clock, to, atMs, { minutesOut });
  }
  return { clock, atMs };
}

describe('the clock of food safety', () => {
  it('[BAT-32] what is out stays out, wherever it is put and however long one waits', () => {
    fc.assert(
      fc.property(life, move, (lived, next) => {
        const { clock, atMs } = live(lived);
        fc.pre(readClock(clock, atMs).state === 'out');
        const laterMs = atMs + next.afterHours * HOUR;
        expect(readClock(clock, laterMs).state).toBe('out');
        const moved = moveClock(clock, next.to, laterMs, next);
        expect(readClock(moved, laterMs).state).toBe('out');
      }),
      runs,
    );
  });

  it('[BAT-32] the use-by never moves later by waiting, nor by being taken out', () => {
    fc.assert(
      fc.property(life, fc.double({ min: 0, max: 100, noNaN: true }), (lived, waitHours) => {
        const { clock, atMs } = live(lived);
        const now = readClock(clock, atMs).useByMs ?? Number.POSITIVE_INFINITY;
        const later = readClock(clock, atMs + waitHours * HOUR).useByMs ?? Number.POSITIVE_INFINITY;
        const out = readClock(moveClock(clock, 'room', atMs), atMs).useByMs ?? Number.POSITIVE_INFINITY;
        expect(later).toBeLessThanOrEqual(now + 1);
        expect(clock.place === 'freezer' || out <= now + 1).toBe(true);
      }),
      runs,
    );
  });

  it('[BAT-33] time in the freezer changes nothing but the calendar', () => {
    fc.assert(
      fc.property(life, fc.double({ min: 1, max: 5000, noNaN: true }), (lived, frozenHours) => {
        const { clock, atMs } = live(lived);
        fc.pre(clock.place === 'fridge');
        const frozenMs = frozenHours * HOUR;
        const thawed = moveClock(moveClock(clock, 'freezer', atMs), 'fridge', atMs + frozenMs);
        const [before, after] = [readClock(clock, atMs), readClock(thawed, atMs + frozenMs)];
        expect(after.state).toBe(before.state);
        expect(Math.abs((after.useByMs ?? frozenMs) - (before.useByMs ?? 0) - frozenMs)).toBeLessThan(2);
      }),
      runs,
    );
  });
});

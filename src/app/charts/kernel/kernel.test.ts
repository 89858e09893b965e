import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDate, isoWeekday, parseDate } from '#core/units/civil-date.ts';
import { linearScale, spanOf } from './linear-scale.ts';
import { bandPath, linePath, monotonePath, nearestIndex } from './paths.ts';
import { niceTicks, tickDecimals, weekTicks } from './ticks.ts';

const seed = 20270301;

describe('[LOOK-15] scales', () => {
  it('[LOOK-15] map the ends onto the ends and the middle onto the middle', () => {
    const scale = linearScale([70, 90], [200, 0]);
    expect([70, 80, 90].map(scale)).toEqual([200, 100, 0]);
  });

  it('[LOOK-15] a single value stands in the middle, no value at all still gives an axis', () => {
    expect(linearScale([5, 5], [0, 100])(5)).toBe(50);
    expect(spanOf([], 0.1)).toEqual([0, 1]);
    expect(spanOf([10, 20], 0.1)).toEqual([9, 21]);
  });
});

describe('[LOOK-15] ticks', () => {
  it.each([
    [[0, 100], 5, [0, 20, 40, 60, 80, 100]],
    [[74.2, 84.9], 5, [76, 78, 80, 82, 84]],
    [[0, 0.5], 5, [0, 0.1, 0.2, 0.3, 0.4, 0.5]],
    [[-3, 3], 3, [-2, 0, 2]],
  ] as const)('[LOOK-15] of %j by about %d are round', ([from, to], wanted, ticks) => {
    expect(niceTicks([from, to], wanted)).toEqual(ticks);
  });

  it('[LOOK-15] are evenly spaced by 1, 2 or 5 times a power of ten, inside, and near the wanted number', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 10 }),
        (from, extent, wanted) => {
          const ticks = niceTicks([from, from + extent], wanted);
          const [first = 0, second] = ticks;
          expect(ticks.length).toBeLessThanOrEqual(2 * wanted + 1);
          expect(ticks.length).toBeGreaterThanOrEqual(Math.floor(wanted / 2));
          if (second === undefined) return;
          const lead = Number((second - first).toExponential(6).split('e')[0]);
          expect([1, 2, 5]).toContain(Number(lead.toFixed(3)));
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(from - extent * 1e-6);
            expect(tick).toBeLessThanOrEqual(from + extent * (1 + 1e-6));
          }
        },
      ),
      { seed },
    );
  });

  it('[LOOK-15] have as many decimals as tell them apart', () => {
    expect(tickDecimals([76, 78])).toBe(0);
    expect(tickDecimals([0.1, 0.2])).toBe(1);
    expect(tickDecimals([0.05, 0.1])).toBe(2);
    expect(tickDecimals([7])).toBe(0);
  });

  it('[LOOK-15] of weeks are Mondays, no more than asked for', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -20_000, max: 40_000 }),
        fc.integer({ min: 0, max: 800 }),
        fc.integer({ min: 2, max: 12 }),
        (from, days, most) => {
          const ticks = weekTicks([from, from + days], most);
          expect(ticks.length).toBeLessThanOrEqual(most);
          for (const tick of ticks) {
            expect(isoWeekday(formatDate(tick))).toBe(1);
            expect(tick).toBeGreaterThanOrEqual(from);
            expect(tick).toBeLessThanOrEqual(from + days);
          }
        },
      ),
      { seed },
    );
  });

  it('[LOOK-15] of sixteen weeks by eight are every second Monday', () => {
    const from = parseDate('2027-01-04') ?? 0;
    expect(weekTicks([from, from + 111], 8).map(formatDate)).toEqual([
      '2027-01-04',
      '2027-01-18',
      '2027-02-01',
      '2027-02-15',
      '2027-03-01',
      '2027-03-15',
      '2027-03-29',
      '2027-04-12',
    ]);
  });
});

describe('[LOOK-15] paths', () => {
  const spots = [
    { x: 0, y: 0 },
    { x: 10, y: 5 },
    { x: 20, y: 5 },
  ];

  it('[LOOK-15] a line and a band', () => {
    expect(linePath(spots)).toBe('M0 0L10 5L20 5');
    expect(linePath([])).toBe('');
    expect(
      bandPath(spots.slice(0, 2), [
        { x: 0, y: 9 },
        { x: 10, y: 8 },
      ]),
    ).toBe('M0 9L10 8L10 5L0 0Z');
    expect(bandPath([], [])).toBe('');
  });

  it('[LOOK-15] two points make a straight line, three a curve through all', () => {
    expect(monotonePath(spots.slice(0, 2))).toBe('M0 0L10 5');
    expect(monotonePath(spots)).toMatch(/^M0 0C.* 10 5C.* 20 5$/);
  });

  it('[LOOK-15] a smooth curve never leaves the range of two neighbouring points', () => {
    const heights = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), {
      minLength: 3,
      maxLength: 20,
    });
    fc.assert(
      fc.property(heights, (ys) => {
        const path = monotonePath(ys.map((y, index) => ({ x: index * 10, y })));
        const pieces = path.split('C').slice(1);
        pieces.forEach((piece, index) => {
          const [, y1 = 0, , y2 = 0] = piece.split(' ').map(Number);
          const [low, high] = [
            Math.min(ys[index] ?? 0, ys[index + 1] ?? 0),
            Math.max(ys[index] ?? 0, ys[index + 1] ?? 0),
          ];
          // A Bezier piece stays within the hull of its controls; coordinates are written to 0.01.
          for (const y of [y1, y2]) {
            expect(y).toBeGreaterThanOrEqual(low - 0.011);
            expect(y).toBeLessThanOrEqual(high + 0.011);
          }
        });
        expect(pieces).toHaveLength(ys.length - 1);
      }),
      { seed },
    );
  });

  it('[LOOK-09] the nearest place, the earlier on a tie', () => {
    expect(nearestIndex([0, 10, 20], 14)).toBe(1);
    expect(nearestIndex([0, 10, 20], 15)).toBe(1);
    expect(nearestIndex([0, 10, 20], -50)).toBe(0);
    expect(nearestIndex([], 3)).toBe(-1);
  });
});

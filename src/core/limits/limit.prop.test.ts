import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keeps, narrow, openLimit, type Limit } from './limit.ts';
import { settle } from './settle.ts';

const numbers = fc.double({ min: -5000, max: 5000, noNaN: true });
const side = fc.constantFrom<Limit['side']>('floor', 'ceiling');
const steps = fc.constantFrom(0.1, 1, 5, 25, 50);

function narrowAll(limit: Limit, values: readonly number[]): Limit {
  return values.reduce(
    (so, value) => narrow(so, { limit: 'x', value, source: 'common-practice', words: 'x' }),
    limit,
  );
}

describe('[LIM-01] limits narrow', () => {
  it('[LIM-01] whatever speaks and in whatever order, the present is the tightest and never looser than before', () => {
    fc.assert(
      fc.property(side, numbers, fc.array(numbers), (which, original, values) => {
        const open = openLimit('Daily energy', 'kcal', which, original);
        const once = narrowAll(open, values);
        const back = narrowAll(open, values.toReversed());
        const tightest = which === 'floor' ? Math.max(original, ...values) : Math.min(original, ...values);
        expect(once.present).toBe(tightest);
        expect(back.present).toBe(tightest);
        expect(once.tightest?.value ?? original).toBe(tightest);
        expect(keeps(open, once.present)).toBe(true);
      }),
      { seed: 31 },
    );
  });

  it('[LIM-03] what settles keeps both limits and stands on the grid', () => {
    fc.assert(
      fc.property(numbers, numbers, numbers, steps, (wanted, low, high, step) => {
        const floor = openLimit('Daily energy', 'kcal', 'floor', low);
        const ceiling = openLimit('Daily energy', 'kcal', 'ceiling', high);
        const answer = settle(wanted, { floor, ceiling }, step);
        const room = Math.floor(high / step + 1e-9) >= Math.ceil(low / step - 1e-9);
        expect(answer.ok).toBe(room);
        const value = answer.ok ? answer.value.value : Math.ceil(low / step - 1e-9) * step;
        expect(value).toBeGreaterThanOrEqual(low - 1e-6);
        expect(answer.ok ? value : low).toBeLessThanOrEqual(answer.ok ? high + 1e-6 : value + 1e-6);
        expect(Math.abs(value / step - Math.round(value / step))).toBeLessThan(1e-6);
      }),
      { seed: 32 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactMass, type ExactMass } from './exact-mass.ts';
import { movesBetween, movesOf, searchFewerMoves } from './fewest-moves.ts';
import { plateSums, type PlateKind } from './plate-sums.ts';
import { ramp } from './ramp.ts';
import type { RampAnswer, RampRequest } from './ramp-request.ts';

type Stack = readonly number[];

/** Every order of every choice of plates on one side: the plain reference, exponential and sure. */
function everyStack(kinds: readonly PlateKind[], upTo: ExactMass): { stack: Stack; sum: ExactMass }[] {
  const found: { stack: Stack; sum: ExactMass }[] = [];
  const left = kinds.map((kind) => kind.count);
  const lay = (stack: Stack, sum: ExactMass): void => {
    found.push({ stack, sum });
    for (const [kind, { mass }] of kinds.entries()) {
      if ((left[kind] ?? 0) === 0 || sum + mass > upTo) continue;
      left[kind] = (left[kind] ?? 0) - 1;
      lay([...stack, kind], sum + mass);
      left[kind] = (left[kind] ?? 0) + 1;
    }
  };
  lay([], 0);
  return found;
}

/** Fewest moves by trying every stack before every set. */
function fewestByTrying(kinds: readonly PlateKind[], sums: readonly ExactMass[]): number {
  const all = everyStack(kinds, Math.max(...sums));
  let before: { stack: Stack; moves: number }[] = [{ stack: [], moves: 0 }];
  for (const wanted of sums) {
    before = all
      .filter(({ sum }) => sum === wanted)
      .map(({ stack }) => ({
        stack,
        moves: Math.min(...before.map((from) => from.moves + movesBetween(from.stack, stack))),
      }));
  }
  return Math.min(...before.map(({ moves }) => moves));
}

function kindsOf({ plates, implement }: RampRequest): PlateKind[] {
  const masses = [...new Set(plates.map(({ kg }) => exactMass(kg)))];
  return masses.map((mass) => {
    const count = plates.reduce((sum, plate) => sum + (exactMass(plate.kg) === mass ? plate.count : 0), 0);
    return { mass, count: Math.floor(count / implement.sides) };
  });
}

/** Small piles of kilogram and pound plates, of which brute force can try every order. */
const request: fc.Arbitrary<RampRequest> = fc
  .record({
    topSet: fc.record({
      loadKg: fc.integer({ min: 8, max: 480 }).map((quarters) => quarters / 4),
      reps: fc.integer({ min: 1, max: 20 }),
    }),
    implement: fc.record({
      emptyKg: fc.constantFrom(0, 7.5, 15, 20, 20.41165665),
      sides: fc.constantFrom<(1 | 2)[]>(1, 2),
    }),
    plates: fc.uniqueArray(
      fc.record({
        kg: fc.constantFrom(25, 20, 15, 10, 5, 2.5, 1.25, 20.41165665, 11.33980925, 20.41, 4.54, 0.75),
        count: fc.integer({ min: 0, max: 5 }),
      }),
      { maxLength: 5, selector: ({ kg }) => kg },
    ),
    warmUps: fc.integer({ min: 0, max: 5 }),
  })
  .filter(({ plates, implement }) => {
    const pieces = plates.reduce((sum, { count }) => sum + Math.floor(count / implement.sides), 0);
    return pieces <= 7;
  });

function answerTo(asked: RampRequest): RampAnswer {
  const outcome = ramp(asked);
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

describe('against brute force', () => {
  it('[GYM-02] the top set is the nearest of all weights that can be loaded, the lower on a tie', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const { sets, errorKg } = answerTo(asked);
        const { emptyKg, sides } = asked.implement;
        const wanted = exactMass(asked.topSet.loadKg) - exactMass(emptyKg);
        const off = everyStack(kindsOf(asked), Number.POSITIVE_INFINITY).map(
          ({ sum }) => sides * sum - wanted,
        );
        const nearest = Math.min(...off.map(Math.abs));
        expect(exactMass(errorKg)).toBe(nearest > 0 && off.includes(-nearest) ? -nearest : nearest);
        expect(sets.at(-1)?.loadKg).toBeCloseTo(asked.topSet.loadKg + errorKg, 9);
      }),
      { numRuns: 150, seed: 11 },
    );
  });

  it('[GYM-04] no handling of the answered loads moves fewer plates', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const { sets, plateMoves } = answerTo(asked);
        const { emptyKg, sides } = asked.implement;
        const sums = sets.map(({ loadKg }) => Math.round((exactMass(loadKg) - exactMass(emptyKg)) / sides));
        expect(plateMoves).toBe(sides * fewestByTrying(kindsOf(asked), sums));
      }),
      { numRuns: 1000, seed: 12 },
    );
  });

  it('[GYM-04] for any rising loads, not only those the ramp chooses, the search finds the fewest moves', () => {
    const kinds = fc
      .uniqueArray(
        fc.record({ mass: fc.integer({ min: 1, max: 9 }), count: fc.integer({ min: 1, max: 3 }) }),
        {
          minLength: 1,
          maxLength: 4,
          selector: ({ mass }) => mass,
        },
      )
      .filter((some) => some.reduce((sum, { count }) => sum + count, 0) <= 7);
    const picks = fc.array(fc.nat(), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(kinds, picks, (some, chosen) => {
        const pile = plateSums(some, Number.POSITIVE_INFINITY);
        const reachable = [...new Set(everyStack(some, Number.POSITIVE_INFINITY).map(({ sum }) => sum))];
        const sums = chosen.map((n) => reachable[n % reachable.length] ?? 0).sort((a, b) => a - b);
        const found = pile && searchFewerMoves(sums, some, pile, Number.POSITIVE_INFINITY, 1e6);
        expect(found?.proven).toBe(true);
        expect(found?.better?.moves).toBe(fewestByTrying(some, sums));
        expect(movesOf(found?.better?.stacks ?? [])).toBe(found?.better?.moves);
      }),
      { numRuns: 600, seed: 13 },
    );
  });
});

describe('every ramp', () => {
  const large = fc.record({
    topSet: fc.record({
      loadKg: fc.integer({ min: 2, max: 1600 }).map((h) => h / 2),
      reps: fc.integer({ min: 1, max: 30 }),
    }),
    implement: fc.record({ emptyKg: fc.constantFrom(0, 8, 20, 60), sides: fc.constantFrom<(1 | 2)[]>(1, 2) }),
    plates: fc.array(
      fc.record({
        kg: fc.constantFrom(
          50,
          25,
          20,
          15,
          10,
          5,
          2.5,
          2,
          1.25,
          1,
          0.5,
          0.25,
          20.41165665,
          11.33980925,
          1.133980925,
        ),
        count: fc.integer({ min: 0, max: 30 }),
      }),
      { maxLength: 12 },
    ),
    warmUps: fc.integer({ min: 0, max: 10 }),
  });

  it('[GYM-03] never falls, uses only plates there are, and its loads are what lies on the sides', () => {
    fc.assert(
      fc.property(large, (asked) => {
        const { sets, plateMoves } = answerTo(asked);
        expect(sets).toHaveLength(asked.warmUps + 1);
        const kinds = kindsOf(asked);
        const stacks = sets.map(({ perSide }) =>
          perSide.map((kg) => kinds.findIndex(({ mass }) => mass === exactMass(kg))),
        );
        for (const [i, set] of sets.entries()) {
          const stack = stacks[i] ?? [];
          for (const [kind, { count }] of kinds.entries()) {
            expect(stack.filter((each) => each === kind).length).toBeLessThanOrEqual(count);
          }
          const sum = stack.reduce((total, kind) => total + (kinds[kind]?.mass ?? Number.NaN), 0);
          expect(exactMass(set.loadKg)).toBe(
            exactMass(asked.implement.emptyKg) + asked.implement.sides * sum,
          );
          expect(set.loadKg).toBeGreaterThanOrEqual(sets[i - 1]?.loadKg ?? 0);
        }
        expect(plateMoves).toBe(asked.implement.sides * movesOf(stacks));
      }),
      { numRuns: 200, seed: 14 },
    );
  });

  it('[GYM-02] with more plates the top set comes no farther from what is wanted', () => {
    fc.assert(
      fc.property(large, fc.constantFrom(0.5, 1.25, 7, 20), (asked, kg) => {
        const more = { ...asked, plates: [...asked.plates, { kg, count: 2 }] };
        expect(Math.abs(answerTo(more).errorKg)).toBeLessThanOrEqual(
          Math.abs(answerTo(asked).errorKg) + 1e-9,
        );
      }),
      { numRuns: 60, seed: 15 },
    );
  });
});

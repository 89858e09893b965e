import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { randomStream } from '#core/random/random-stream.ts';
import { PiecewiseProgram } from './piecewise-program.ts';
import { PiecewiseSimplex } from './piecewise-simplex.ts';

const ROWS = 6;
const COLUMNS = 9;
const BEYOND = 1e5;

interface Made {
  readonly program: PiecewiseProgram;
  readonly limits: readonly (readonly [low: number, high: number, slope: number])[];
}

/** A programme of random numbers: rows with one or two bends, columns between limits. */
function made(seed: number): Made {
  const chance = randomStream(seed, 'piecewise programmes');
  const between = (low: number, high: number) => low + (high - low) * chance.uniform();
  const program = new PiecewiseProgram(ROWS, COLUMNS, ROWS);
  for (let row = 0; row < ROWS; row++) {
    const first = between(0, 50);
    const slopes = [between(-9, -1), between(-1, 3), between(3, 12)] as const;
    if (chance.uniform() < 0.5) program.bendOnce(row, first, slopes[0], slopes[2]);
    else program.bendTwice(row, [first, first + between(1, 30)], slopes, between(0, 4));
  }
  const limits = Array.from({ length: COLUMNS }, () => {
    program.addColumn(
      Array.from({ length: ROWS }, (_, row) => [row, chance.uniform() < 0.6 ? between(0, 1) : 0] as const),
    );
    const low = chance.uniform() < 0.3 ? between(0, 10) : 0;
    return [low, low + between(0, 60), between(-0.5, 1)] as const;
  });
  return { program, limits };
}

function solved({ program, limits }: Made, simplex = new PiecewiseSimplex(program, BEYOND)): number {
  limits.forEach(([low, high, slope], column) => {
    simplex.slope[column] = slope;
    simplex.setLimits(column, low, high);
  });
  expect(simplex.solve(1000)).toBe(true);
  return simplex.cost();
}

/** The same as a plain linear programme: each piece of a row's cost is a variable of its own. */
function asText({ program, limits }: Made): string {
  const costs: string[] = [];
  const rows: string[] = [];
  const bounds: string[] = [];
  let fixed = 0;
  limits.forEach(([low, high, slope], column) => {
    costs.push(`${slope} x${column}`);
    bounds.push(`${low} <= x${column} <= ${high}`);
  });
  for (let row = 0; row < ROWS; row++) {
    const read = (list: Float64Array) => list[row] ?? 0;
    const terms: string[] = [];
    for (let column = 0; column < COLUMNS; column++) {
      const from = program.start[column] ?? 0;
      for (let e = from; e < (program.start[column + 1] ?? 0); e++) {
        if (program.rowOf[e] === row) terms.push(`+ ${program.coefficient[e]} x${column}`);
      }
    }
    costs.push(
      `${-read(program.slope0)} a${row}`,
      `${read(program.slope1)} b${row}`,
      `${read(program.slope2)} c${row}`,
    );
    rows.push(` r${row}: ${terms.join(' ')} + a${row} - b${row} - c${row} = ${read(program.bend0)}`);
    const width = read(program.bend1) - read(program.bend0);
    if (Number.isFinite(width)) bounds.push(`0 <= b${row} <= ${width}`);
    fixed += read(program.costAtBend0);
  }
  const objective = `${costs.join(' + ')} + ${fixed} one`.replaceAll('+ -', '- ');
  return `Minimize\n obj: ${objective}\nSubject To\n${rows.join('\n')}\nBounds\n one = 1\n${bounds.join('\n')}\nEnd`;
}

describe('the piecewise simplex', () => {
  it('[DAY-22] finds what a general solver (HiGHS 1.15, Huangfu and Hall 2018) finds', async () => {
    const highs = await loadHighs();
    for (let seed = 0; seed < 60; seed++) {
      const problem = made(seed);
      const found = highs.solve(asText(problem));
      expect(found.Status, `seed ${seed}`).toBe('Optimal');
      expect(solved(problem), `seed ${seed}`).toBeCloseTo(found.ObjectiveValue, 4);
    }
  });

  it('[DAY-22] starting from another answer ends at the same cost as starting anew', () => {
    for (let seed = 0; seed < 40; seed++) {
      const problem = made(seed);
      const simplex = new PiecewiseSimplex(problem.program, BEYOND);
      solved(problem, simplex);
      const changed = problem.limits.map(([low, high, slope], column) =>
        column % 3 === seed % 3 ? ([0, 0, slope] as const) : ([low / 2, high, slope] as const),
      );
      const narrower = { program: problem.program, limits: changed };
      expect(solved(narrower, simplex), `seed ${seed}`).toBeCloseTo(solved(narrower), 6);
      expect(solved(problem, simplex), `seed ${seed}`).toBeCloseTo(solved(problem), 6);
    }
  });

  it('[DAY-22] no dual between the slopes proves more than the least cost', () => {
    for (let seed = 0; seed < 40; seed++) {
      const { program, limits } = made(seed);
      const simplex = new PiecewiseSimplex(program, BEYOND);
      const cost = solved({ program, limits }, simplex);
      let bound = 0;
      const price = limits.map(([, , slope]) => slope);
      for (let row = 0; row < ROWS; row++) {
        const dual = program.withinSlopes(row, simplex.dual[row] ?? 0);
        bound += program.leastLess(row, dual);
        for (let column = 0; column < COLUMNS; column++) {
          const from = program.start[column] ?? 0;
          for (let e = from; e < (program.start[column + 1] ?? 0); e++) {
            if (program.rowOf[e] === row)
              price[column] = (price[column] ?? 0) + dual * (program.coefficient[e] ?? 0);
          }
        }
      }
      limits.forEach(([low, high], column) => {
        bound += Math.min(low * (price[column] ?? 0), high * (price[column] ?? 0));
      });
      expect(bound, `seed ${seed}`).toBeLessThanOrEqual(cost + 1e-6);
      expect(bound, `seed ${seed}`).toBeCloseTo(cost, 4);
    }
  });
});

import type { PiecewiseProgram } from './piecewise-program.ts';

/**
 * The inverse of a basis, kept whole, column after column, for programmes of some 30 rows at most. Variables are the programme's
 * columns and, numbered after them, its row sums; they obey r - A x = 0, so a column enters the rows with a minus.
 */
export class BasisInverse {
  /** The last column worked out: inverse x column of a variable. */
  readonly alpha: Float64Array;
  /** Multiply-adds done. */
  work = 0;
  readonly #program: PiecewiseProgram;
  readonly #rows: number;
  readonly #inverse: Float64Array;

  constructor(program: PiecewiseProgram) {
    this.#program = program;
    this.#rows = program.rows;
    this.alpha = new Float64Array(program.rows);
    this.#inverse = new Float64Array(program.rows * program.rows);
    this.reset();
  }

  /** Every row sum basic in its own row. */
  reset(): void {
    const rows = this.#rows;
    this.#inverse.fill(0);
    for (let i = 0; i < rows; i++) this.#inverse[i * rows + i] = 1;
  }

  copyFrom(other: BasisInverse): void {
    this.#inverse.set(other.#inverse);
    this.work += this.#rows * this.#rows;
  }

  /** Works out alpha of a variable. */
  column(variable: number): void {
    const rows = this.#rows;
    const { alpha } = this;
    const inverse = this.#inverse;
    const { start, rowOf, coefficient, columns } = this.#program;
    if (variable >= columns) {
      const at = (variable - columns) * rows;
      for (let i = 0; i < rows; i++) alpha[i] = inverse[at + i] ?? 0;
      return;
    }
    const first = start[variable] ?? 0;
    const end = start[variable + 1] ?? 0;
    alpha.fill(0);
    for (let e = first; e < end; e++) {
      const at = (rowOf[e] ?? 0) * rows;
      const value = coefficient[e] ?? 0;
      for (let i = 0; i < rows; i++) alpha[i] = (alpha[i] ?? 0) - value * (inverse[at + i] ?? 0);
    }
    this.work += (end - first) * rows;
  }

  /** The variable of the last `column` takes the place of the basic variable at `leaving`. */
  pivot(leaving: number): void {
    const rows = this.#rows;
    const { alpha } = this;
    const inverse = this.#inverse;
    const scale = 1 / (alpha[leaving] ?? 0);
    for (let k = 0; k < rows; k++) {
      const at = k * rows;
      const head = inverse[at + leaving] ?? 0;
      if (head === 0) continue;
      const factor = head * scale;
      for (let i = 0; i < rows; i++) inverse[at + i] = (inverse[at + i] ?? 0) - factor * (alpha[i] ?? 0);
      inverse[at + leaving] = factor;
    }
    this.work += rows * rows;
  }

  /** into = from x inverse, row by row of the programme. */
  leftTimes(from: Float64Array, into: Float64Array): void {
    const rows = this.#rows;
    const inverse = this.#inverse;
    for (let k = 0; k < rows; k++) {
      const at = k * rows;
      let sum = 0;
      for (let i = 0; i < rows; i++) sum += (from[i] ?? 0) * (inverse[at + i] ?? 0);
      into[k] = sum;
    }
    this.work += rows * rows;
  }

  /** into = inverse x from. */
  rightTimes(from: Float64Array, into: Float64Array): void {
    const rows = this.#rows;
    const inverse = this.#inverse;
    into.fill(0);
    for (let k = 0; k < rows; k++) {
      const amount = from[k] ?? 0;
      if (amount === 0) continue;
      const at = k * rows;
      for (let i = 0; i < rows; i++) into[i] = (into[i] ?? 0) + (inverse[at + i] ?? 0) * amount;
    }
  }
}

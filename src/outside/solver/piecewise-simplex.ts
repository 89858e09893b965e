import { BasisInverse } from './basis-inverse.ts';
import type { PiecewiseProgram } from './piecewise-program.ts';

/** Nonbasic at the first or second bend of its cost; a basic variable's place is its position, 0 or more. */
const AT_BEND0 = -1;
const AT_BEND1 = -2;
/** A slope must promise this much per unit to be followed. */
const SLOPE_TOLERANCE = 1e-7;
const PIVOT_TOLERANCE = 1e-9;
/** A column this little beyond its limit is at it. */
const HAIR = 1e-9;
/** The inverse is rebuilt after so many pivots, before rounding errors grow. */
const REBUILD_AFTER = 80;

/**
 * Least cost of a piecewise programme: a primal simplex in which every variable, row sums and columns alike, has a convex cost of
 * straight pieces, so that one step may run through several bends (R. Fourer, "A simplex algorithm for piecewise-linear
 * programming", Mathematical Programming 33, 1985). It starts from wherever the last solve ended, which after a small
 * change is a few pivots away.
 */
export class PiecewiseSimplex {
  readonly program: PiecewiseProgram;
  /** Limits of each column, and its cost per unit between them. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly slope: Float64Array;
  /** Dual value of each row after a solve: what one unit more from a column costs there. */
  readonly dual: Float64Array;

  readonly #basis: BasisInverse;
  readonly #beyond: number;
  readonly #rows: number;
  readonly #columns: number;
  /** Columns that may move, in no order, and where each stands in that list. */
  readonly #active: Int32Array;
  readonly #activeAt: Int32Array;
  #activeCount = 0;
  readonly #head: Int32Array;
  readonly #place: Int32Array;
  readonly #value: Float64Array;
  readonly #piece: Uint8Array;
  readonly #headSlope: Float64Array;
  readonly #reach: Float64Array;
  readonly #pieceThen: Uint8Array;
  #sinceRebuild = 0;
  #entering = -1;
  #direction = 0;
  #rate = 0;

  /** `beyondLimit`: what a unit of a column outside its limits costs; far above what any unit can save. */
  constructor(program: PiecewiseProgram, beyondLimit: number) {
    this.program = program;
    this.#basis = new BasisInverse(program);
    this.#beyond = beyondLimit;
    const { rows, columns } = program;
    this.#rows = rows;
    this.#columns = columns;
    this.low = new Float64Array(columns);
    this.high = new Float64Array(columns);
    this.slope = new Float64Array(columns);
    this.dual = new Float64Array(rows);
    this.#active = new Int32Array(columns);
    this.#activeAt = new Int32Array(columns).fill(-1);
    this.#head = Int32Array.from({ length: rows }, (_, i) => columns + i);
    this.#place = new Int32Array(columns + rows).fill(AT_BEND0);
    this.#head.forEach((variable, i) => {
      this.#place[variable] = i;
    });
    this.#value = new Float64Array(rows);
    this.#piece = new Uint8Array(rows);
    this.#headSlope = new Float64Array(rows);
    this.#reach = new Float64Array(rows);
    this.#pieceThen = new Uint8Array(rows);
  }

  /** Work done so far, in multiply-adds. */
  get work(): number {
    return this.#basis.work;
  }

  /** Changes a column's limits; low = high = 0 takes it out of use. */
  setLimits(column: number, low: number, high: number): void {
    const place = this.#place[column] ?? 0;
    const before = this.amount(column);
    this.low[column] = low;
    this.high[column] = high;
    this.#setActive(column, high > low);
    if (place >= 0) return;
    const change = (place === AT_BEND0 ? low : high) - before;
    if (change === 0) return;
    this.#basis.column(column);
    const { alpha } = this.#basis;
    for (let i = 0; i < this.#rows; i++) this.#value[i] = (this.#value[i] ?? 0) - (alpha[i] ?? 0) * change;
  }

  #setActive(column: number, wanted: boolean): void {
    const at = this.#activeAt[column] ?? -1;
    if (wanted === at >= 0) return;
    if (wanted) {
      this.#activeAt[column] = this.#activeCount;
      this.#active[this.#activeCount++] = column;
      return;
    }
    const last = this.#active[--this.#activeCount] ?? 0;
    this.#active[at] = last;
    this.#activeAt[last] = at;
    this.#activeAt[column] = -1;
  }

  /** Value of a column now. */
  amount(column: number): number {
    const place = this.#place[column] ?? 0;
    if (place >= 0) return this.#value[place] ?? 0;
    return (place === AT_BEND0 ? this.low[column] : this.high[column]) ?? 0;
  }

  /** Sum of a row now. */
  rowSum(row: number): number {
    const place = this.#place[this.#columns + row] ?? 0;
    if (place >= 0) return this.#value[place] ?? 0;
    return (place === AT_BEND0 ? this.program.bend0[row] : this.program.bend1[row]) ?? 0;
  }

  /** Finds the least cost; false where `mostPivots` ran out first (the state is then a point like any other). */
  solve(mostPivots: number): boolean {
    this.#findPieces();
    for (let pivot = 0; pivot < mostPivots; pivot++) {
      if (this.#sinceRebuild > REBUILD_AFTER) this.#rebuild();
      this.#basis.leftTimes(this.#headSlope, this.dual);
      this.#entering = -1;
      this.#rate = -SLOPE_TOLERANCE;
      this.#priceRowSums();
      this.#priceColumns();
      if (this.#entering < 0) return true;
      this.#step();
    }
    this.#basis.leftTimes(this.#headSlope, this.dual);
    return false;
  }

  /** Cost of the present point: rows, columns, and whatever lies beyond a limit. */
  cost(): number {
    let total = 0;
    for (let row = 0; row < this.#rows; row++) total += this.program.rowCost(row, this.rowSum(row));
    for (let a = 0; a < this.#activeCount; a++) {
      const column = this.#active[a] ?? 0;
      total += (this.slope[column] ?? 0) * this.amount(column);
    }
    for (let i = 0; i < this.#rows; i++) {
      const column = this.#head[i] ?? 0;
      if (column >= this.#columns) continue;
      const value = this.#value[i] ?? 0;
      const beyond = Math.max((this.low[column] ?? 0) - value, value - (this.high[column] ?? 0));
      if (beyond > 1e-7) total += beyond * this.#beyond;
    }
    return total;
  }

  /** Which straight piece of its cost each basic variable is on. */
  #findPieces(): void {
    for (let i = 0; i < this.#rows; i++) {
      const variable = this.#head[i] ?? 0;
      const hair = variable < this.#columns ? HAIR : 0;
      const value = this.#value[i] ?? 0;
      if (value < this.#bend0(variable) - hair) this.#setPiece(i, 0);
      else this.#setPiece(i, value <= this.#bend1(variable) + hair ? 1 : 2);
    }
  }

  #setPiece(i: number, piece: number): void {
    this.#piece[i] = piece;
    this.#headSlope[i] = this.#pieceSlope(this.#head[i] ?? 0, piece);
  }

  #bend0(variable: number): number {
    const row = variable - this.#columns;
    return (row < 0 ? this.low[variable] : this.program.bend0[row]) ?? 0;
  }

  #bend1(variable: number): number {
    const row = variable - this.#columns;
    return (row < 0 ? this.high[variable] : this.program.bend1[row]) ?? 0;
  }

  #pieceSlope(variable: number, piece: number): number {
    const row = variable - this.#columns;
    if (row < 0) return (this.slope[variable] ?? 0) + (piece - 1) * this.#beyond;
    const { slope0, slope1, slope2 } = this.program;
    return (piece === 0 ? slope0[row] : piece === 1 ? slope1[row] : slope2[row]) ?? 0;
  }

  /** Looks for the row sum whose move pays most per unit, up or down. */
  #priceRowSums(): void {
    const { slope0, slope1, slope2 } = this.program;
    for (let row = 0; row < this.#rows; row++) {
      const place = this.#place[this.#columns + row] ?? 0;
      if (place >= 0) continue;
      const dual = this.dual[row] ?? 0;
      const first = place === AT_BEND0;
      const up = ((first ? slope1[row] : slope2[row]) ?? 0) - dual;
      const down = dual - ((first ? slope0[row] : slope1[row]) ?? 0);
      if (up < this.#rate || down < this.#rate) {
        this.#rate = Math.min(up, down);
        this.#entering = this.#columns + row;
        this.#direction = up < down ? 1 : -1;
      }
    }
  }

  #priceColumns(): void {
    const { start, rowOf, coefficient } = this.program;
    const { dual } = this;
    for (let a = 0; a < this.#activeCount; a++) {
      const column = this.#active[a] ?? 0;
      const place = this.#place[column] ?? 0;
      if (place >= 0) continue;
      const end = start[column + 1] ?? 0;
      let rate = this.slope[column] ?? 0;
      for (let e = start[column] ?? 0; e < end; e++) {
        rate += (coefficient[e] ?? 0) * (dual[rowOf[e] ?? 0] ?? 0);
      }
      const gain = place === AT_BEND0 ? rate : -rate;
      if (gain >= this.#rate) continue;
      this.#rate = gain;
      this.#entering = column;
      this.#direction = place === AT_BEND0 ? 1 : -1;
    }
    this.#basis.work += 8 * this.#activeCount;
  }

  /** Moves the entering variable until no further bend pays; whichever variable bends there leaves the basis. */
  #step(): void {
    const rows = this.#rows;
    const direction = this.#direction;
    this.#basis.column(this.#entering);
    const { alpha } = this.#basis;
    const reach = this.#reach;
    for (let i = 0; i < rows; i++) {
      this.#pieceThen[i] = this.#piece[i] ?? 0;
      reach[i] = this.#reachOf(i, -direction * (alpha[i] ?? 0));
    }
    const ownReach = this.#ownReach();
    let rate = this.#rate;
    let far = 0;
    for (;;) {
      let leaving = -1;
      let nearest = ownReach;
      for (let i = 0; i < rows; i++) {
        const at = reach[i] ?? 0;
        if (at >= nearest) continue;
        nearest = at;
        leaving = i;
      }
      if (nearest === Number.POSITIVE_INFINITY) throw new RangeError('the cost falls without end');
      far = Math.max(far, nearest);
      if (leaving < 0) return this.#flip(far);
      const move = -direction * (alpha[leaving] ?? 0);
      const variable = this.#head[leaving] ?? 0;
      const piece = this.#pieceThen[leaving] ?? 0;
      const then = move > 0 ? piece + 1 : piece - 1;
      rate += Math.abs(move * (this.#pieceSlope(variable, then) - this.#pieceSlope(variable, piece)));
      if (rate >= -1e-12) return this.#exchange(far, leaving);
      this.#pieceThen[leaving] = then;
      reach[leaving] = this.#reachOf(leaving, move);
    }
  }

  /** How far the entering variable may go until this basic variable bends next. */
  #reachOf(i: number, move: number): number {
    if (move < PIVOT_TOLERANCE && move > -PIVOT_TOLERANCE) return Number.POSITIVE_INFINITY;
    const piece = this.#pieceThen[i] ?? 0;
    const variable = this.#head[i] ?? 0;
    const value = this.#value[i] ?? 0;
    if (move > 0) {
      if (piece === 2) return Number.POSITIVE_INFINITY;
      const bend = piece === 0 ? this.#bend0(variable) : this.#bend1(variable);
      return bend === Number.POSITIVE_INFINITY ? bend : Math.max(0, (bend - value) / move);
    }
    if (piece === 0) return Number.POSITIVE_INFINITY;
    const bend = piece === 2 ? this.#bend1(variable) : this.#bend0(variable);
    return bend === Number.NEGATIVE_INFINITY ? -bend : Math.max(0, (bend - value) / move);
  }

  /** A column stops at its other limit, a row sum at its other bend. */
  #ownReach(): number {
    const variable = this.#entering;
    const atFirst = this.#place[variable] === AT_BEND0;
    if (this.#direction > 0 !== atFirst) return Number.POSITIVE_INFINITY;
    return this.#bend1(variable) - this.#bend0(variable);
  }

  #moveBasics(far: number): void {
    const { alpha } = this.#basis;
    const change = this.#direction * far;
    for (let i = 0; i < this.#rows; i++) {
      this.#value[i] = (this.#value[i] ?? 0) - change * (alpha[i] ?? 0);
      const piece = this.#pieceThen[i] ?? 0;
      if (this.#piece[i] !== piece) this.#setPiece(i, piece);
    }
  }

  /** The entering variable went to its other bend and stays out of the basis. */
  #flip(far: number): void {
    this.#moveBasics(far);
    this.#place[this.#entering] = this.#direction > 0 ? AT_BEND1 : AT_BEND0;
  }

  #exchange(far: number, leaving: number): void {
    const entering = this.#entering;
    const up = this.#direction > 0;
    const first = this.#place[entering] === AT_BEND0;
    const from = first ? this.#bend0(entering) : this.#bend1(entering);
    this.#moveBasics(far);
    const rising = -this.#direction * (this.#basis.alpha[leaving] ?? 0) > 0;
    const second = this.#piece[leaving] === (rising ? 1 : 2);
    this.#place[this.#head[leaving] ?? 0] = second ? AT_BEND1 : AT_BEND0;
    this.#head[leaving] = entering;
    this.#place[entering] = leaving;
    this.#value[leaving] = from + this.#direction * far;
    this.#setPiece(leaving, first ? (up ? 1 : 0) : up ? 2 : 1);
    this.#basis.pivot(leaving);
    this.#sinceRebuild += 1;
  }

  /** Builds inverse and values anew from which variables are basic. */
  #rebuild(): void {
    const rows = this.#rows;
    const columns = this.#columns;
    const { alpha } = this.#basis;
    const basic = this.#head.filter((variable) => variable < columns);
    const taken = new Uint8Array(rows);
    this.#basis.reset();
    for (let i = 0; i < rows; i++) {
      if ((this.#place[columns + i] ?? 0) < 0) continue;
      this.#head[i] = columns + i;
      this.#place[columns + i] = i;
      taken[i] = 1;
    }
    for (const column of basic) {
      this.#basis.column(column);
      let at = -1;
      for (let i = 0; i < rows; i++) {
        if (taken[i] === 0 && (at < 0 || Math.abs(alpha[i] ?? 0) > Math.abs(alpha[at] ?? 0))) at = i;
      }
      taken[at] = 1;
      this.#head[at] = column;
      this.#place[column] = at;
      this.#basis.pivot(at);
    }
    this.#sinceRebuild = 0;
    this.#recomputeValues();
    this.#findPieces();
  }

  /** Basic values from the nonbasic ones. */
  #recomputeValues(): void {
    const fixed = this.#reach;
    const { start, rowOf, coefficient, added } = this.program;
    fixed.fill(0);
    for (let column = 0; column < added; column++) {
      const amount = (this.#place[column] ?? 0) >= 0 ? 0 : this.amount(column);
      if (amount === 0) continue;
      const end = start[column + 1] ?? 0;
      for (let e = start[column] ?? 0; e < end; e++) {
        const row = rowOf[e] ?? 0;
        fixed[row] = (fixed[row] ?? 0) + (coefficient[e] ?? 0) * amount;
      }
    }
    for (let row = 0; row < this.#rows; row++) {
      if ((this.#place[this.#columns + row] ?? 0) < 0) fixed[row] = (fixed[row] ?? 0) - this.rowSum(row);
    }
    this.#basis.rightTimes(fixed, this.#value);
  }
}

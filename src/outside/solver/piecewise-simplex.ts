import { BEYOND_LIMIT, MACROS, mealRow, NUTRIENTS, type PlateModel } from './plate-model.ts';

/** Nonbasic at the first or second bend of its cost; a basic variable's place is its position, 0 or more. */
const AT_BREAK0 = -1;
const AT_BREAK1 = -2;
/** A slope must promise this much per gram to be followed. */
const SLOPE_TOLERANCE = 1e-7;
const PIVOT_TOLERANCE = 1e-9;
/** The inverse is rebuilt after so many pivots, before rounding errors grow. */
const REBUILD_AFTER = 80;

/**
 * Least cost of grams when which columns may be used, and between which limits, is given: a primal simplex in which every
 * variable, row sums and grams alike, has a convex cost of straight pieces, so that a step may run through several
 * bends at once (R. Fourer, "A simplex algorithm for piecewise-linear programming", Math. Programming 33, 1985).
 * It starts from wherever the last solve ended, which after a small change is a few pivots away.
 * The inverse of the basis is kept whole: there are some 25 rows.
 */
export class PiecewiseSimplex {
  readonly model: PlateModel;
  /** Limits of each column in grams, and its cost per gram between them. */
  readonly lowG: Float64Array;
  readonly highG: Float64Array;
  readonly slope: Float64Array;
  /** Columns that may move, in no order. */
  readonly active: Int32Array;
  activeCount = 0;
  /** Dual value of each row after a solve. */
  readonly dual: Float64Array;
  pivots = 0;

  readonly #rows: number;
  readonly #columns: number;
  readonly #inverse: Float64Array;
  readonly #head: Int32Array;
  readonly #place: Int32Array;
  readonly #value: Float64Array;
  readonly #piece: Uint8Array;
  readonly #activeAt: Int32Array;
  readonly #alpha: Float64Array;
  readonly #reach: Float64Array;
  readonly #pieceThen: Uint8Array;
  #sinceRebuild = 0;
  #entering = -1;
  #direction = 0;
  #rate = 0;

  constructor(model: PlateModel) {
    this.model = model;
    const { rows, columns } = model;
    this.#rows = rows;
    this.#columns = columns;
    this.lowG = new Float64Array(columns);
    this.highG = new Float64Array(columns);
    this.slope = new Float64Array(columns);
    this.active = new Int32Array(columns);
    this.dual = new Float64Array(rows);
    this.#inverse = new Float64Array(rows * rows);
    this.#head = new Int32Array(rows);
    this.#place = new Int32Array(columns + rows);
    this.#value = new Float64Array(rows);
    this.#piece = new Uint8Array(rows);
    this.#activeAt = new Int32Array(columns);
    this.#alpha = new Float64Array(rows);
    this.#reach = new Float64Array(rows);
    this.#pieceThen = new Uint8Array(rows);
    this.reset();
  }

  /** Nothing on any plate: every row sum basic at 0. */
  reset(): void {
    const { rows, columns } = this.model;
    this.lowG.fill(0);
    this.highG.fill(0);
    this.slope.fill(0);
    this.activeCount = 0;
    this.#activeAt.fill(-1);
    this.#inverse.fill(0);
    this.#place.fill(AT_BREAK0);
    this.#value.fill(0);
    for (let i = 0; i < rows; i++) {
      this.#inverse[i * rows + i] = 1;
      this.#head[i] = columns + i;
      this.#place[columns + i] = i;
    }
    this.#sinceRebuild = 0;
  }

  /** Takes over another simplex's whole state (of the same model). */
  copyFrom(other: PiecewiseSimplex): void {
    this.lowG.set(other.lowG);
    this.highG.set(other.highG);
    this.slope.set(other.slope);
    this.active.set(other.active);
    this.activeCount = other.activeCount;
    this.dual.set(other.dual);
    this.#inverse.set(other.#inverse);
    this.#head.set(other.#head);
    this.#place.set(other.#place);
    this.#value.set(other.#value);
    this.#piece.set(other.#piece);
    this.#activeAt.set(other.#activeAt);
    this.#sinceRebuild = other.#sinceRebuild;
  }

  /** Changes a column's limits; low = high = 0 takes the food off the plate. */
  setLimits(column: number, lowG: number, highG: number): void {
    const place = this.#place[column]!;
    const before = place === AT_BREAK0 ? this.lowG[column]! : this.highG[column]!;
    this.lowG[column] = lowG;
    this.highG[column] = highG;
    this.#setActive(column, highG > lowG);
    if (place >= 0) return;
    const after = place === AT_BREAK0 ? lowG : highG;
    if (after === before) return;
    this.#columnInBasis(column);
    for (let i = 0; i < this.#rows; i++) this.#value[i]! -= this.#alpha[i]! * (after - before);
  }

  #setActive(column: number, wanted: boolean): void {
    const at = this.#activeAt[column]!;
    if (wanted === at >= 0) return;
    if (wanted) {
      this.#activeAt[column] = this.activeCount;
      this.active[this.activeCount++] = column;
      return;
    }
    const last = this.active[--this.activeCount]!;
    this.active[at] = last;
    this.#activeAt[last] = at;
    this.#activeAt[column] = -1;
  }

  /** Grams of a column now. */
  grams(column: number): number {
    const place = this.#place[column]!;
    if (place >= 0) return this.#value[place]!;
    return place === AT_BREAK0 ? this.lowG[column]! : this.highG[column]!;
  }

  /** Sum of a row now. */
  rowSum(row: number): number {
    const place = this.#place[this.#columns + row]!;
    if (place >= 0) return this.#value[place]!;
    return place === AT_BREAK0 ? this.model.break0[row]! : this.model.break1[row]!;
  }

  /** Finds the least cost; false where `mostPivots` ran out first (the state is then a plan like any other). */
  solve(mostPivots: number): boolean {
    this.#findPieces();
    for (let pivot = 0; pivot < mostPivots; pivot++) {
      if (this.#sinceRebuild > REBUILD_AFTER) this.#rebuild();
      this.#priceRows();
      if (!this.#chooseEntering()) return true;
      this.#step();
    }
    this.#priceRows();
    return false;
  }

  /** Cost of the grams as they are: rows, slopes, and whatever lies beyond a limit. */
  cost(): number {
    let total = 0;
    for (let row = 0; row < this.#rows; row++) total += rowCost(this.model, row, this.rowSum(row));
    for (let a = 0; a < this.activeCount; a++) {
      const column = this.active[a]!;
      total += this.slope[column]! * this.grams(column);
    }
    for (let i = 0; i < this.#rows; i++) {
      const column = this.#head[i]!;
      if (column >= this.#columns) continue;
      const value = this.#value[i]!;
      const beyond = Math.max(this.lowG[column]! - value, value - this.highG[column]!);
      if (beyond > 1e-7) total += beyond * BEYOND_LIMIT;
    }
    return total;
  }

  /** What one gram more of a column would change, by the duals of the last solve. */
  reducedCost(column: number): number {
    const { foods, perGram, stockRow } = this.model;
    const food = column % foods;
    const row = mealRow((column - food) / foods);
    const dual = this.dual;
    const p = NUTRIENTS * food;
    const stock = stockRow[food]!;
    return (
      perGram[p]! * (dual[0]! + dual[row]!) +
      perGram[p + 1]! * (dual[1]! + dual[row + 1]!) +
      perGram[p + 2]! * (dual[2]! + dual[row + 2]!) +
      perGram[p + 3]! * dual[3]! +
      perGram[p + 4]! * dual[4]! +
      (stock >= 0 ? dual[stock]! : 0)
    );
  }

  /**
   * What putting `lowG` to `highG` of a column that is off the plate would save if only the present basic variables gave way: a
   * quick under-estimate of what a solve would save. Needs the duals of a solve just done.
   */
  lineGain(column: number, lowG: number, highG: number): number {
    this.#columnInBasis(column);
    const alpha = this.#alpha;
    const reach = this.#reach;
    for (let i = 0; i < this.#rows; i++) {
      this.#pieceThen[i] = this.#piece[i]!;
      reach[i] = this.#reachOf(i, -alpha[i]!);
    }
    let rate = this.slope[column]! + this.reducedCost(column);
    let at = 0;
    let gain = 0;
    for (;;) {
      let nearest = highG;
      let bending = -1;
      for (let i = 0; i < this.#rows; i++) {
        if (reach[i]! < nearest) {
          nearest = reach[i]!;
          bending = i;
        }
      }
      if (nearest > at) {
        // Past the least serving the walk ends where it no longer pays.
        const until = rate >= 0 && nearest > lowG ? Math.max(at, lowG) : nearest;
        gain -= rate * (until - at);
        at = until;
      }
      if (bending < 0 || (rate >= 0 && at >= lowG)) return gain;
      const variable = this.#head[bending]!;
      const move = -alpha[bending]!;
      const piece = this.#pieceThen[bending]!;
      const then = move > 0 ? piece + 1 : piece - 1;
      rate += Math.abs(move) * Math.abs(this.#pieceSlope(variable, then) - this.#pieceSlope(variable, piece));
      this.#pieceThen[bending] = then;
      reach[bending] = this.#reachOf(bending, move);
    }
  }

  /** Which straight piece of its cost each basic variable is on. */
  #findPieces(): void {
    for (let i = 0; i < this.#rows; i++) {
      const value = this.#value[i]!;
      const variable = this.#head[i]!;
      // Grams a hair beyond their limit are at it.
      const hair = variable < this.#columns ? 1e-9 : 0;
      this.#piece[i] =
        value < this.#bend0(variable) - hair ? 0 : value <= this.#bend1(variable) + hair ? 1 : 2;
    }
  }

  #bend0(variable: number): number {
    return variable < this.#columns ? this.lowG[variable]! : this.model.break0[variable - this.#columns]!;
  }

  #bend1(variable: number): number {
    return variable < this.#columns ? this.highG[variable]! : this.model.break1[variable - this.#columns]!;
  }

  #pieceSlope(variable: number, piece: number): number {
    if (variable < this.#columns) {
      const slope = this.slope[variable]!;
      return piece === 1 ? slope : piece === 0 ? slope - BEYOND_LIMIT : slope + BEYOND_LIMIT;
    }
    const row = variable - this.#columns;
    const { slope0, slope1, slope2 } = this.model;
    return piece === 0 ? slope0[row]! : piece === 1 ? slope1[row]! : slope2[row]!;
  }

  /** Duals: slopes of the basic variables times the inverse. */
  #priceRows(): void {
    const rows = this.#rows;
    const { dual } = this;
    const inverse = this.#inverse;
    dual.fill(0);
    for (let i = 0; i < rows; i++) {
      const slope = this.#pieceSlope(this.#head[i]!, this.#piece[i]!);
      if (slope === 0) continue;
      const at = i * rows;
      for (let k = 0; k < rows; k++) dual[k]! += slope * inverse[at + k]!;
    }
  }

  /** The variable whose move pays most per gram, up or down; false where none pays. */
  #chooseEntering(): boolean {
    let best = -SLOPE_TOLERANCE;
    this.#entering = -1;
    const { slope0, slope1, slope2 } = this.model;
    for (let row = 0; row < this.#rows; row++) {
      const place = this.#place[this.#columns + row]!;
      if (place >= 0) continue;
      const dual = this.dual[row]!;
      const up = (place === AT_BREAK0 ? slope1[row]! : slope2[row]!) - dual;
      const down = dual - (place === AT_BREAK0 ? slope0[row]! : slope1[row]!);
      if (up < best || down < best) {
        best = Math.min(up, down);
        this.#entering = this.#columns + row;
        this.#direction = up < down ? 1 : -1;
      }
    }
    for (let a = 0; a < this.activeCount; a++) {
      const column = this.active[a]!;
      const place = this.#place[column]!;
      if (place >= 0) continue;
      const rate = this.slope[column]! + this.reducedCost(column);
      const gain = place === AT_BREAK0 ? rate : -rate;
      if (gain < best) {
        best = gain;
        this.#entering = column;
        this.#direction = place === AT_BREAK0 ? 1 : -1;
      }
    }
    this.#rate = best;
    return this.#entering >= 0;
  }

  /** alpha = inverse x column of the variable (a food's column enters the rows with a minus). */
  #columnInBasis(variable: number): void {
    const rows = this.#rows;
    const alpha = this.#alpha;
    const inverse = this.#inverse;
    if (variable >= this.#columns) {
      const row = variable - this.#columns;
      for (let i = 0; i < rows; i++) alpha[i] = inverse[i * rows + row]!;
      return;
    }
    const { foods, perGram, stockRow } = this.model;
    const food = variable % foods;
    const row = mealRow((variable - food) / foods);
    const p = NUTRIENTS * food;
    const stock = stockRow[food]!;
    const protein = perGram[p]!;
    const carbohydrate = perGram[p + 1]!;
    const fat = perGram[p + 2]!;
    const fibre = perGram[p + 3]!;
    const sodium = perGram[p + 4]!;
    for (let i = 0; i < rows; i++) {
      const at = i * rows;
      let sum =
        protein * (inverse[at]! + inverse[at + row]!) +
        carbohydrate * (inverse[at + 1]! + inverse[at + row + 1]!) +
        fat * (inverse[at + 2]! + inverse[at + row + 2]!) +
        fibre * inverse[at + 3]! +
        sodium * inverse[at + 4]!;
      if (stock >= 0) sum += inverse[at + stock]!;
      alpha[i] = -sum;
    }
  }

  /** Moves the entering variable until no further bend pays; whichever variable bends there leaves the basis. */
  #step(): void {
    const rows = this.#rows;
    const entering = this.#entering;
    const direction = this.#direction;
    this.#columnInBasis(entering);
    const alpha = this.#alpha;
    const reach = this.#reach;
    const pieceThen = this.#pieceThen;
    for (let i = 0; i < rows; i++) {
      pieceThen[i] = this.#piece[i]!;
      reach[i] = this.#reachOf(i, -direction * alpha[i]!);
    }
    let ownReach = this.#ownReach();
    let rate = this.#rate;
    let leaving = -1;
    let far = 0;
    for (;;) {
      leaving = -1;
      let nearest = ownReach;
      for (let i = 0; i < rows; i++) {
        if (reach[i]! < nearest) {
          nearest = reach[i]!;
          leaving = i;
        }
      }
      if (nearest === Number.POSITIVE_INFINITY) throw new RangeError('the cost falls without end');
      far = Math.max(far, nearest);
      if (leaving < 0) break;
      const move = -direction * alpha[leaving]!;
      const variable = this.#head[leaving]!;
      const piece = pieceThen[leaving]!;
      const then = move > 0 ? piece + 1 : piece - 1;
      rate += Math.abs(move) * Math.abs(this.#pieceSlope(variable, then) - this.#pieceSlope(variable, piece));
      if (rate >= -1e-12 && Math.abs(move) > PIVOT_TOLERANCE) break;
      pieceThen[leaving] = then;
      reach[leaving] = this.#reachOf(leaving, move);
    }
    this.#move(far, leaving);
  }

  /** How far the entering variable may go until this basic variable bends next. */
  #reachOf(i: number, move: number): number {
    if (move < PIVOT_TOLERANCE && move > -PIVOT_TOLERANCE) return Number.POSITIVE_INFINITY;
    const piece = this.#pieceThen[i]!;
    const variable = this.#head[i]!;
    if (move > 0) {
      if (piece === 2) return Number.POSITIVE_INFINITY;
      const bend = piece === 0 ? this.#bend0(variable) : this.#bend1(variable);
      return bend === Number.POSITIVE_INFINITY ? bend : Math.max(0, (bend - this.#value[i]!) / move);
    }
    if (piece === 0) return Number.POSITIVE_INFINITY;
    const bend = piece === 2 ? this.#bend1(variable) : this.#bend0(variable);
    return Math.max(0, (bend - this.#value[i]!) / move);
  }

  /** A food's grams stop at their other limit, a row sum at its other bend. */
  #ownReach(): number {
    const variable = this.#entering;
    const up = this.#direction > 0;
    const atFirst = this.#place[variable]! === AT_BREAK0;
    if (up !== atFirst) return Number.POSITIVE_INFINITY;
    return this.#bend1(variable) - this.#bend0(variable);
  }

  #move(far: number, leaving: number): void {
    const rows = this.#rows;
    const direction = this.#direction;
    const entering = this.#entering;
    const alpha = this.#alpha;
    const from = this.#place[entering]! === AT_BREAK0 ? this.#bend0(entering) : this.#bend1(entering);
    for (let i = 0; i < rows; i++) {
      this.#value[i]! -= direction * far * alpha[i]!;
      this.#piece[i] = this.#pieceThen[i]!;
    }
    this.pivots += 1;
    if (leaving < 0) {
      this.#place[entering] = direction > 0 ? AT_BREAK1 : AT_BREAK0;
      return;
    }
    const out = this.#head[leaving]!;
    const rising = -direction * alpha[leaving]! > 0;
    const piece = this.#piece[leaving]!;
    const second = rising ? piece === 1 : piece === 2;
    this.#place[out] = second ? AT_BREAK1 : AT_BREAK0;
    this.#head[leaving] = entering;
    const wasFirst = this.#place[entering]! === AT_BREAK0;
    this.#place[entering] = leaving;
    this.#value[leaving] = from + direction * far;
    this.#piece[leaving] = wasFirst ? (direction > 0 ? 1 : 0) : direction > 0 ? 2 : 1;
    this.#pivot(leaving);
    this.#sinceRebuild += 1;
  }

  #pivot(leaving: number): void {
    const rows = this.#rows;
    const inverse = this.#inverse;
    const alpha = this.#alpha;
    const pivotRow = leaving * rows;
    const scale = 1 / alpha[leaving]!;
    for (let k = 0; k < rows; k++) inverse[pivotRow + k]! *= scale;
    for (let i = 0; i < rows; i++) {
      const factor = alpha[i]!;
      if (i === leaving || factor === 0) continue;
      const at = i * rows;
      for (let k = 0; k < rows; k++) inverse[at + k]! -= factor * inverse[pivotRow + k]!;
    }
  }

  /** Builds inverse and values anew from which variables are basic. */
  #rebuild(): void {
    const rows = this.#rows;
    const columns = this.#columns;
    const inverse = this.#inverse;
    const basic = this.#head.filter((variable) => variable < columns);
    inverse.fill(0);
    const taken = new Uint8Array(rows);
    for (let i = 0; i < rows; i++) {
      inverse[i * rows + i] = 1;
      if (this.#place[columns + i]! >= 0) {
        this.#head[i] = columns + i;
        this.#place[columns + i] = i;
        taken[i] = 1;
      }
    }
    for (const column of basic) {
      this.#columnInBasis(column);
      let at = -1;
      for (let i = 0; i < rows; i++) {
        if (taken[i] === 0 && (at < 0 || Math.abs(this.#alpha[i]!) > Math.abs(this.#alpha[at]!))) at = i;
      }
      taken[at] = 1;
      this.#head[at] = column;
      this.#place[column] = at;
      this.#pivot(at);
    }
    this.#sinceRebuild = 0;
    this.#recomputeValues();
    this.#findPieces();
  }

  #recomputeValues(): void {
    const rows = this.#rows;
    const fixed = this.#reach;
    fixed.fill(0);
    const { foods, perGram, stockRow, break0, break1 } = this.model;
    for (let column = 0; column < this.#columns; column++) {
      if (this.#place[column]! >= 0) continue;
      const grams = this.grams(column);
      if (grams === 0) continue;
      const food = column % foods;
      const row = mealRow((column - food) / foods);
      for (let k = 0; k < NUTRIENTS; k++) fixed[k]! += perGram[NUTRIENTS * food + k]! * grams;
      for (let k = 0; k < MACROS; k++) fixed[row + k]! += perGram[NUTRIENTS * food + k]! * grams;
      if (stockRow[food]! >= 0) fixed[stockRow[food]!]! += grams;
    }
    for (let row = 0; row < rows; row++) {
      const place = this.#place[this.#columns + row]!;
      if (place < 0) fixed[row]! -= place === AT_BREAK0 ? break0[row]! : break1[row]!;
    }
    for (let i = 0; i < rows; i++) {
      let value = 0;
      for (let k = 0; k < rows; k++) value += this.#inverse[i * rows + k]! * fixed[k]!;
      this.#value[i] = value;
    }
  }
}

/** Cost of a row at a sum. */
export function rowCost(model: PlateModel, row: number, sum: number): number {
  const low = model.break0[row]!;
  const high = model.break1[row]!;
  const base = model.costAtBreak0[row]!;
  if (sum < low) return base + model.slope0[row]! * (sum - low);
  if (sum <= high) return base + model.slope1[row]! * (sum - low);
  return base + model.slope1[row]! * (high - low) + model.slope2[row]! * (sum - high);
}

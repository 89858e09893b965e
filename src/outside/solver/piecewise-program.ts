/**
 * A linear programme whose costs are straight pieces: row sums r = A x, each with a convex cost of up to three pieces, and columns x
 * between limits with a cost per unit. Columns are sparse: entries `start[j]` to `start[j + 1]` of `rowOf` and `coefficient`.
 * A row costs `costAtBend0` at its first bend and slopes `slope0 | slope1 | slope2` before, between and after its bends;
 * a row with one bend has the second at infinity.
 */
export class PiecewiseProgram {
  readonly rows: number;
  /** Columns there is room for; those not yet added are never looked at. */
  readonly columns: number;
  readonly start: Int32Array;
  readonly rowOf: Int32Array;
  readonly coefficient: Float64Array;
  readonly bend0: Float64Array;
  readonly bend1: Float64Array;
  readonly slope0: Float64Array;
  readonly slope1: Float64Array;
  readonly slope2: Float64Array;
  readonly costAtBend0: Float64Array;
  #added = 0;

  constructor(rows: number, columns: number, entriesPerColumn: number) {
    this.rows = rows;
    this.columns = columns;
    this.start = new Int32Array(columns + 1);
    this.rowOf = new Int32Array(columns * entriesPerColumn);
    this.coefficient = new Float64Array(columns * entriesPerColumn);
    this.bend0 = new Float64Array(rows);
    this.bend1 = new Float64Array(rows).fill(Number.POSITIVE_INFINITY);
    this.slope0 = new Float64Array(rows);
    this.slope1 = new Float64Array(rows);
    this.slope2 = new Float64Array(rows);
    this.costAtBend0 = new Float64Array(rows);
  }

  /** Columns added so far. */
  get added(): number {
    return this.#added;
  }

  /** A row whose cost is 0 at `at` and bends there: `below` per unit before it, `above` after it. */
  bendOnce(row: number, at: number, below: number, above: number): void {
    this.bendTwice(row, [at, Number.POSITIVE_INFINITY], [below, above, above], 0);
  }

  /** A row that bends at two places (one, where they are equal) and costs `costAtFirst` at the first. */
  bendTwice(
    row: number,
    at: readonly [number, number],
    slopes: readonly [number, number, number],
    costAtFirst: number,
  ): void {
    const once = at[0] === at[1];
    this.bend0[row] = at[0];
    this.bend1[row] = once ? Number.POSITIVE_INFINITY : at[1];
    this.slope0[row] = slopes[0];
    this.slope1[row] = once ? slopes[2] : slopes[1];
    this.slope2[row] = slopes[2];
    this.costAtBend0[row] = costAtFirst;
  }

  /** Takes over the cost of another programme's row. */
  bendAs(row: number, other: PiecewiseProgram, otherRow: number): void {
    const read = (list: Float64Array) => list[otherRow] ?? 0;
    this.bendTwice(
      row,
      [read(other.bend0), read(other.bend1)],
      [read(other.slope0), read(other.slope1), read(other.slope2)],
      read(other.costAtBend0),
    );
  }

  /** Adds the next column and returns its number; entries that are 0 are left out. */
  addColumn(entries: readonly (readonly [row: number, value: number])[]): number {
    const column = this.#added++;
    let at = this.start[column] ?? 0;
    for (const [row, value] of entries) {
      if (value === 0) continue;
      this.rowOf[at] = row;
      this.coefficient[at] = value;
      at += 1;
    }
    this.start[column + 1] = at;
    return column;
  }

  /** Cost of a row at a sum. */
  rowCost(row: number, sum: number): number {
    const low = this.bend0[row] ?? 0;
    const high = this.bend1[row] ?? 0;
    const base = this.costAtBend0[row] ?? 0;
    if (sum < low) return base + (this.slope0[row] ?? 0) * (sum - low);
    if (sum <= high) return base + (this.slope1[row] ?? 0) * (sum - low);
    return base + (this.slope1[row] ?? 0) * (high - low) + (this.slope2[row] ?? 0) * (sum - high);
  }

  /** The least of a row's cost less `dual` per unit, over all sums; the dual lies between the row's outer slopes. */
  leastLess(row: number, dual: number): number {
    const at = (dual > (this.slope1[row] ?? 0) ? this.bend1[row] : this.bend0[row]) ?? 0;
    return this.rowCost(row, at) - dual * at;
  }

  /** A dual brought between the row's outer slopes, where `leastLess` is finite. */
  withinSlopes(row: number, dual: number): number {
    return Math.min(this.slope2[row] ?? 0, Math.max(this.slope0[row] ?? 0, dual));
  }
}

/**
 * A limit is a value that remembers: what it was at first, what it is now, every reason that would have narrowed
 * it, and the tightest of them. It only narrows: a looser reason is passed over.
 */
export interface Limit {
  /** What is limited, as a sentence begins with it: "Daily energy". */
  readonly quantity: string;
  readonly unit: string;
  readonly side: 'floor' | 'ceiling';
  /** Before any reason spoke. */
  readonly original: number;
  readonly present: number;
  /** Every reason tighter than the original, in the order they spoke. */
  readonly reasons: readonly LimitReason[];
  readonly tightest: LimitReason | undefined;
}

export interface LimitReason {
  /** Name of the published limit, as in `published-limits.ts`, or "own" for one the athlete set. */
  readonly limit: string;
  /** In the limit's unit. */
  readonly value: number;
  /** Key of the source list. */
  readonly source: string;
  /** The whole sentence, numbers and unit in it. */
  readonly words: string;
}

/** A limit on which no reason has spoken yet. */
export function openLimit(
  quantity: string,
  unit: string,
  side: Limit['side'],
  original = side === 'floor' ? 0 : Number.POSITIVE_INFINITY,
): Limit {
  return { quantity, unit, side, original, present: original, reasons: [], tightest: undefined };
}

/** Lets a reason speak. A floor only rises, a ceiling only falls; of two equal reasons the first stays the tightest. */
export function narrow(limit: Limit, reason: LimitReason): Limit {
  if (!Number.isFinite(reason.value)) throw new RangeError(`${limit.quantity}: a reason without a number`);
  if (!tighter(limit.side, reason.value, limit.original)) return limit;
  const wins = tighter(limit.side, reason.value, limit.present);
  return {
    ...limit,
    present: wins ? reason.value : limit.present,
    reasons: [...limit.reasons, reason],
    tightest: wins ? reason : limit.tightest,
  };
}

/** Whether a value keeps to the limit. */
export function keeps(limit: Limit, value: number): boolean {
  return limit.side === 'floor' ? value >= limit.present : value <= limit.present;
}

/** The limit on a grid of `step`, rounded to the safe side: a floor up, a ceiling down. */
export function onSafeStep(limit: Limit, step: number): number {
  return limit.side === 'floor' ? stepAtOrAbove(limit.present, step) : stepAtOrBelow(limit.present, step);
}

/** Least multiple of `step` at or above the value; a value already on the grid (to 1e-9 of a step) stays. */
export function stepAtOrAbove(value: number, step: number): number {
  return onGrid(Math.ceil(value / step - 1e-9), step);
}

/** Greatest multiple of `step` at or below the value. */
export function stepAtOrBelow(value: number, step: number): number {
  return onGrid(Math.floor(value / step + 1e-9), step);
}

/** A multiple of a decimal step without the dust of binary fractions (3 x 0.1), never -0. */
function onGrid(count: number, step: number): number {
  if (!Number.isFinite(count)) return count;
  const value = Number((count * step).toPrecision(12));
  return value === 0 ? 0 : value;
}

function tighter(side: Limit['side'], value: number, than: number): boolean {
  return side === 'floor' ? value > than : value < than;
}

/**
 * What a published equation answers: a value, or that the case lies outside what the authors studied, with the
 * nearest edge. An equation never extrapolates in silence.
 */
export type Studied<Value> =
  | { readonly studied: true; readonly value: Value }
  | { readonly studied: false; readonly outside: OutsideStudiedRange };

export interface OutsideStudiedRange {
  /** The name of the quantity with its unit last, such as "ageYears". */
  readonly quantity: string;
  readonly found: number;
  readonly low: number;
  readonly high: number;
  /** The edge of the studied range that lies nearest to what was found. */
  readonly nearest: number;
}

/** One quantity of an equation with the closed range in which it was studied. */
export interface RangeCheck {
  readonly quantity: string;
  readonly found: number;
  readonly low: number;
  readonly high: number;
}

/** Evaluates the equation only where every quantity lies within its studied range; a NaN lies in no range. */
export function withinStudied<Value>(checks: readonly RangeCheck[], evaluate: () => Value): Studied<Value> {
  for (const { quantity, found, low, high } of checks) {
    if (found >= low && found <= high) continue;
    const nearest = found > high ? high : low;
    return { studied: false, outside: { quantity, found, low, high, nearest } };
  }
  return { studied: true, value: evaluate() };
}

/** One plain sentence: what lies outside, and where the studied range ends. */
export function sentenceOfOutside(outside: OutsideStudiedRange): string {
  const { quantity, found, low, high, nearest } = outside;
  return `${quantity} ${found} is outside the studied range of ${low} to ${high}; the nearest edge is ${nearest}.`;
}

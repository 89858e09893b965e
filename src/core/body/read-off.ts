import { type Gaussian, meanAlong, type Row, varianceAlong } from './gaussian.ts';
import { SPENT_DAYS, STATE, STATE_SIZE } from './state-layout.ts';

/** What one member believes of a day. */
export interface MemberDay {
  massKg: number;
  massVariance: number;
  fatKg: number;
  fatVariance: number;
  leanKg: number;
  leanVariance: number;
  spentKcal: number;
  spentVariance: number;
  ordinary: number | undefined;
}

/** Reads mass, fat and lean off a belief into `parts`. */
export function readBody(belief: Gaussian, mass: Row, parts: MemberDay): void {
  const lean = leanRow(mass);
  parts.massKg = meanAlong(belief, mass);
  parts.massVariance = varianceAlong(belief, mass);
  parts.fatKg = belief.mean[STATE.fat] ?? 0;
  parts.fatVariance = belief.covariance[STATE.fat * STATE_SIZE + STATE.fat] ?? 0;
  parts.leanKg = meanAlong(belief, lean);
  parts.leanVariance = varianceAlong(belief, lean);
}

/** Reads what was spent of late off a belief into `parts`; `index` counts days from the first. */
export function readSpent(belief: Gaussian, index: number, parts: MemberDay): void {
  const row = spentRow(index);
  parts.spentKcal = meanAlong(belief, row);
  parts.spentVariance = varianceAlong(belief, row);
}

/** Everything that is not fat, water included. */
export function leanRow(mass: Row): Row {
  return { places: mass.places.slice(1), factors: mass.factors.slice(1) };
}

const SPENT_ROWS: readonly Row[] = Array.from({ length: SPENT_DAYS }, (_, last) => ({
  places: Array.from({ length: last + 1 }, (_unused, i) => STATE.spent + i),
  factors: Array.from({ length: last + 1 }, () => 1 / (last + 1)),
}));

/** The average of what was spent over the last seven days, or over as many as there have been. */
export function spentRow(index: number): Row {
  return SPENT_ROWS[Math.min(index, SPENT_DAYS - 1)] ?? { places: [], factors: [] };
}

export function emptyDay(): MemberDay {
  return {
    massKg: 0,
    massVariance: 0,
    fatKg: 0,
    fatVariance: 0,
    leanKg: 0,
    leanVariance: 0,
    spentKcal: 0,
    spentVariance: 0,
    ordinary: undefined,
  };
}

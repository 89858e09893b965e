import type { Percent } from '#core/units/quantities.ts';
import { type RangeCheck, type Studied, withinStudied } from './studied-range.ts';

/** Body densities between pure fat and the leanest bodies weighed under water, g/mL. */
export const BODY_DENSITY = { low: 0.98, high: 1.11 } as const;

export function densityCheck(density: number): RangeCheck {
  return { quantity: 'densityGPerMl', found: density, ...BODY_DENSITY };
}

/** Percent fat from body density, 495 / D - 450 (D g/mL). Source key: siri-1961. Adults; two compartments. */
export function siri(density: number): Studied<Percent> {
  return withinStudied([densityCheck(density)], () => 495 / density - 450);
}

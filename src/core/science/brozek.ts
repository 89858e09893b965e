import type { Percent } from '#core/units/quantities.ts';
import { densityCheck } from './siri.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** Percent fat from body density, 457 / D - 414.2 (D g/mL). Source key: brozek-1963. Reads above Siri below about 17 %. */
export function brozek(density: number): Studied<Percent> {
  return withinStudied([densityCheck(density)], () => 457 / density - 414.2);
}

import type { Kilograms } from '#core/units/quantities.ts';
import type { BodySize } from './resting-energy-mifflin.ts';

/**
 * Extracellular fluid at baseline, kg: men 0.025 A + 9.57 H + 0.191 W - 12.4, women 5.98 H + 0.167 W - 4.0
 * (A years, H m, W kg). Source key: silva-2007 (read in an open implementation). Adults.
 */
export function baselineFluidKg({ sex, massKg, heightCm, age }: BodySize): Kilograms {
  const height = heightCm / 100;
  return sex === 'male'
    ? 0.025 * age + 9.57 * height + 0.191 * massKg - 12.4
    : 5.98 * height + 0.167 * massKg - 4;
}

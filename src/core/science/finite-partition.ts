import type { Kilograms } from '#core/units/quantities.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { lambertWOfExp } from './lambert-w.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** How a finite change of mass divides into fat and lean along the Forbes curve. */
export interface FinitePartition {
  readonly fatAfterKg: Kilograms;
  readonly leanChangeKg: Kilograms;
  /** Lean change over mass change. */
  readonly leanShare: number;
  /** Energy of the change per kg of it, kJ/kg. */
  readonly energyDensityKjPerKg: number;
}

/**
 * Finite-change form of the Forbes partition: F after = 10.4 W[(Fi / 10.4) exp(Fi / 10.4) exp(dBW / 10.4)].
 * Source key: hall-2007; energy density hall-2008. Fi 3 to 90 kg, loss up to 60 kg; people who do not train.
 */
export function finitePartition(fatKg: Kilograms, massChangeKg: Kilograms): Studied<FinitePartition> {
  return withinStudied(
    [
      { quantity: 'fatKg', found: fatKg, low: 3, high: 90 },
      { quantity: 'massChangeKg', found: massChangeKg, low: -60, high: 40 },
    ],
    () => {
      const c = ADULT_ENERGY.forbesKg;
      const fatAfterKg = c * lambertWOfExp(Math.log(fatKg / c) + fatKg / c + massChangeKg / c);
      const fatChangeKg = fatAfterKg - fatKg;
      const leanChangeKg = massChangeKg - fatChangeKg;
      const energy =
        ADULT_ENERGY.fatDensityKjPerKg * fatChangeKg + ADULT_ENERGY.leanDensityKjPerKg * leanChangeKg;
      return {
        fatAfterKg,
        leanChangeKg,
        leanShare: massChangeKg === 0 ? c / (c + fatKg) : leanChangeKg / massChangeKg,
        energyDensityKjPerKg: massChangeKg === 0 ? 0 : energy / massChangeKg,
      };
    },
  );
}

import type { Kilograms } from '../../units/quantities.ts';

/**
 * A mass as a whole number of 10^-10 kg. Plates are summed and compared exactly: 1.25 kg and even a 1.25 lb plate
 * (0.5669904625 kg) are whole numbers here, and so is every sum of them up to 900 tonnes.
 */
export type ExactMass = number;

const PER_KILOGRAM = 1e10;

export function exactMass(massKg: Kilograms): ExactMass {
  return Math.round(massKg * PER_KILOGRAM);
}

/** The nearest kilograms that a number can hold: 1025000000000 is 102.5. */
export function kilogramsOf(mass: ExactMass): Kilograms {
  return mass / PER_KILOGRAM;
}

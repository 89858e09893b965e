import type { Grams, Kilograms } from './quantities.ts';

/** International avoirdupois pound, exact by definition (international yard and pound agreement, 1959). */
export const GRAMS_PER_POUND = 453.59237;
/** One sixteenth of a pound, exact. */
export const GRAMS_PER_OUNCE = 28.349523125;

export type MassUnit = 'g' | 'kg' | 'oz' | 'lb';

const GRAMS_PER: Record<MassUnit, number> = { g: 1, kg: 1000, oz: GRAMS_PER_OUNCE, lb: GRAMS_PER_POUND };

/** Any mass in grams. */
export function toGrams(amount: number, from: MassUnit): Grams {
  return amount * GRAMS_PER[from];
}

/** Grams in another unit. */
export function fromGrams(massG: Grams, to: MassUnit): number {
  return massG / GRAMS_PER[to];
}

export function kilogramsToPounds(massKg: Kilograms): number {
  return (massKg * 1000) / GRAMS_PER_POUND;
}

export function poundsToKilograms(pounds: number): Kilograms {
  return (pounds * GRAMS_PER_POUND) / 1000;
}

import type { Kilocalories, Kilograms } from '#core/units/quantities.ts';
import { toKilocalories } from '#core/units/energy.ts';

/** The most energy that a fat store was seen to yield in a day, as a band: bounds differ between observers. */
export interface FatEnergyDraw {
  /** From later, lower figures (from memory), kcal per day. */
  readonly lowKcal: Kilocalories;
  /** 290 kJ per kg and day: underfed, moderately active men. */
  readonly middleKcal: Kilocalories;
  /** The steepest stretch of a published preparation, 378 kJ per kg and day (michailidis-2025). */
  readonly highKcal: Kilocalories;
}

/** Source keys: alpert-2005, michailidis-2025. A band for a warning, never a clamp. */
export function fatEnergyDraw(fatKg: Kilograms): FatEnergyDraw {
  return {
    lowKcal: toKilocalories(203 * fatKg),
    middleKcal: toKilocalories(290 * fatKg),
    highKcal: toKilocalories(378 * fatKg),
  };
}

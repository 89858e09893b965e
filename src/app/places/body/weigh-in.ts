import type { Kilograms } from '#core/units/quantities.ts';
import { kilogramsToPounds, poundsToKilograms } from '#core/units/mass.ts';

/** Further from the last weigh-in than this is asked about; tissue, water and gut together seldom move so far (common practice, no source). */
const ODD_SHARE = 0.06;

export type WeighDoubt =
  | { readonly kind: 'pounds as kilograms'; readonly meantKg: Kilograms }
  | { readonly kind: 'kilograms as pounds'; readonly meantKg: Kilograms }
  | { readonly kind: 'far off' };

/** Whether a weigh-in looks like a slip: a unit mixed up, or a weight far from the last one. It is asked, never changed. */
export function weighDoubt(massKg: Kilograms, lastKg: Kilograms | undefined): WeighDoubt | undefined {
  if (lastKg === undefined || near(massKg, lastKg)) return undefined;
  const asPounds = poundsToKilograms(massKg);
  if (near(asPounds, lastKg)) return { kind: 'pounds as kilograms', meantKg: asPounds };
  const asKilograms = kilogramsToPounds(massKg);
  if (near(asKilograms, lastKg)) return { kind: 'kilograms as pounds', meantKg: asKilograms };
  return { kind: 'far off' };
}

function near(massKg: Kilograms, lastKg: Kilograms): boolean {
  return Math.abs(massKg - lastKg) <= ODD_SHARE * lastKg;
}

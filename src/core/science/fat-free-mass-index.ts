import type { Centimetres, Kilograms } from '#core/units/quantities.ts';

/** Fat-free mass over height squared, kg/m2, and the same moved to a height of 1.80 m. */
export interface FatFreeMassIndex {
  readonly index: number;
  readonly normalized: number;
}

/** Points per metre of height: 6.3 in the source's abstract; 6.1 is widespread in secondary prints. */
const PER_METRE = 6.3;

/** Fat-free mass index. Source key: kouri-1995. Reference medians at 18 to 34 years: men 18.9, women 15.4 (schutz-2002). */
export function fatFreeMassIndex(fatFreeKg: Kilograms, heightCm: Centimetres): FatFreeMassIndex {
  const height = heightCm / 100;
  const index = fatFreeKg / height ** 2;
  return { index, normalized: index + PER_METRE * (1.8 - height) };
}

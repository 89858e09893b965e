import { type Studied, withinStudied } from './studied-range.ts';

/** Energy of a litre of oxygen at RQ 0.707 and at 1.00, kcal; between them a straight line. From memory; the line meets the table's 4.862 at 0.85. */
const FAT_ONLY = { quotient: 0.707, kcal: 4.686 } as const;
const CARBOHYDRATE_ONLY = { quotient: 1, kcal: 5.047 } as const;

/** kcal in a litre of oxygen at a respiratory quotient. Source key: lusk-1924. */
export function oxygenEnergyKcalPerLitre(quotient: number): Studied<number> {
  return withinStudied(
    [
      {
        quantity: 'respiratoryQuotient',
        found: quotient,
        low: FAT_ONLY.quotient,
        high: CARBOHYDRATE_ONLY.quotient,
      },
    ],
    () =>
      FAT_ONLY.kcal +
      ((quotient - FAT_ONLY.quotient) / (CARBOHYDRATE_ONLY.quotient - FAT_ONLY.quotient)) *
        (CARBOHYDRATE_ONLY.kcal - FAT_ONLY.kcal),
  );
}

/** Energy from gas exchange, kcal per minute: 3.941 VO2 + 1.106 VCO2 (L per minute). Source key: weir-1949. */
export function weirKcalPerMinute(oxygenLPerMinute: number, carbonDioxideLPerMinute: number): number {
  return 3.941 * oxygenLPerMinute + 1.106 * carbonDioxideLPerMinute;
}

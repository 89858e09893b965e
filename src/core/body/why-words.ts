import { roundTo } from '#core/units/rounding.ts';

/** "2431 kcal". */
export function kcal(value: number): string {
  return `${roundTo(value, 0)} kcal`;
}

/** "1 day", "3 days". */
export function count(many: number, what: string): string {
  return `${many} ${what}${many === 1 ? '' : 's'}`;
}

/** "+0.4", "-1.25", "0". */
export function signed(value: number, decimals: number): string {
  const rounded = roundTo(value, decimals);
  return rounded > 0 ? `+${rounded}` : `${rounded}`;
}

import type { Years } from '#core/units/quantities.ts';

/**
 * FIB-4 = age * AST / (platelets * sqrt(ALT)), a number without unit; AST, ALT U/L, platelets 10^9/L. Source:
 * sterling-2006. Derived in people with viral hepatitis; poor below 35 years (mcpherson-2017); without meaning while
 * AST and ALT come from muscle.
 */
export const FIB4_LOW_BELOW = 1.3;
export const FIB4_HIGH_ABOVE = 2.67;
export const FIB4_POOR_BELOW_AGE: Years = 35;

export function fib4(ageYears: Years, astUPerL: number, altUPerL: number, plateletsE9PerL: number): number {
  return (ageYears * astUPerL) / (plateletsE9PerL * Math.sqrt(altUPerL));
}

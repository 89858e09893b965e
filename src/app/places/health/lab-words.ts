import type { PanelResult } from '#core/health/panel/reading.ts';
import { sayUnit } from '#core/health/panel/reading.ts';

/** A unit as reports print it: "µmol/L", "10^3/µL". */
export function unitSign(unit: string): string {
  return sayUnit(unit).replace(/(^|\/)u(?=(mol|kat|g|L|U|IU)\b)/g, '$1µ');
}

/** "10 to 40", "up to 40", "60 and more", or that none is known. */
export function intervalWords(
  interval: { readonly low?: number; readonly high?: number } | undefined,
): string {
  const { low, high } = interval ?? {};
  if (low === undefined && high === undefined) return 'none known';
  if (low === undefined) return `up to ${high}`;
  return high === undefined ? `${low} and more` : `${low} to ${high}`;
}

/** "<0.1", "4.2". */
export function valueWords({ value, comparator }: Pick<PanelResult['read'], 'value' | 'comparator'>): string {
  return `${comparator ?? ''}${Number(value.toPrecision(5))}`;
}

/** How a flag is said on the screen. */
export function flagWords(flag: PanelResult['flag']): string {
  return flag === undefined ? 'not judged' : flag === 'in' ? 'in' : flag;
}

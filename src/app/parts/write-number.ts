import { roundTo } from '#core/units/rounding.ts';

/**
 * A number as it stands on the page: fixed decimals, a true minus sign, thin spaces between thousands from
 * 10 000 on, and never "-0".
 */
export function writeNumber(value: number, decimals: number, signed: boolean): string {
  const rounded = roundTo(value, decimals);
  const [whole = '', fraction] = Math.abs(rounded).toFixed(decimals).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u2009') : whole;
  const sign = rounded < 0 ? '−' : signed && rounded > 0 ? '+' : '';
  return `${sign}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

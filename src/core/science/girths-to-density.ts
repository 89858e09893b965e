import type { Centimetres } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

export interface Girths {
  readonly sex: 'male' | 'female';
  readonly heightCm: Centimetres;
  readonly neckCm: Centimetres;
  /** Men: abdomen at the navel. Women: natural waist. */
  readonly waistCm: Centimetres;
  /** Women only. */
  readonly hipCm?: Centimetres;
}

/**
 * Body density from tape: men 1.0324 - 0.19077 log10(abdomen - neck) + 0.15456 log10 height; women 1.29579 - 0.35004
 * log10(waist + hip - neck) + 0.22100 log10 height (cm). Source key: hodgdon-beckett-1984; SEE 3.5 (men) and 3.7
 * (women) points of fat. Not an absolute number near stage: it read 7 points high in men under 10 %; its trend tells.
 */
export function girthsToDensity(girths: Girths): Studied<number> {
  const { sex, heightCm, neckCm, waistCm, hipCm } = girths;
  const male = sex === 'male';
  const sum = male ? waistCm - neckCm : waistCm + (hipCm ?? Number.NaN) - neckCm;
  return withinStudied(
    [
      { quantity: 'heightCm', found: heightCm, low: 140, high: 210 },
      {
        quantity: male ? 'waistLessNeckCm' : 'waistAndHipLessNeckCm',
        found: sum,
        low: male ? 20 : 80,
        high: male ? 100 : 220,
      },
    ],
    () =>
      male
        ? 1.0324 - 0.19077 * Math.log10(sum) + 0.15456 * Math.log10(heightCm)
        : 1.29579 - 0.35004 * Math.log10(sum) + 0.221 * Math.log10(heightCm),
  );
}

import { kilogramsToPounds } from '../units/mass.ts';
import { roundTo } from '../units/rounding.ts';
import { dateWords } from './dates.ts';

/** A mass of the body as the core writes it; doses ("2 g for each of 66 kg") are rules of their sources and stay. */
const KILOGRAMS = /(?<!each of )(?<![\d.])([+−-]?)(\d+(?:\.(\d+))?) kg\b/gu;
const DATE = /\b\d{4}-\d{2}-\d{2}\b/gu;

/**
 * A sentence of the core as it is said to a person: dates with weekday and month (RUN-08), masses of the body in the
 * person's own unit, each to the decimals it was written with, at least one in pounds below a hundred.
 */
export function spoken(sentence: string, mass: 'kg' | 'lb'): string {
  const dated = sentence.replaceAll(DATE, (date) => dateWords(date));
  return mass === 'kg' ? dated : dated.replaceAll(KILOGRAMS, inPounds);
}

function inPounds(_all: string, sign: string, kilograms: string, decimals: string | undefined): string {
  const pounds = kilogramsToPounds(Number(kilograms));
  return `${sign}${roundTo(pounds, decimals?.length ?? (pounds < 100 ? 1 : 0))} lb`;
}

import { roundTo } from '../units/rounding.ts';

/** A number as it stands in a sentence: at most so many decimals, none that say nothing. */
export function figure(value: number, decimals = 1): string {
  return String(roundTo(value, decimals));
}

/** "62.9 %" of a ratio 0.6289. */
export function percentFigure(ratio: number): string {
  return `${figure(ratio * 100)} %`;
}

/** "egg, oil and salt". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

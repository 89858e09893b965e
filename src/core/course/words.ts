import { roundTo } from '#core/units/rounding.ts';
import type { Change } from './change.ts';
import type { Target } from './target.ts';

/** "72 %". A chance that is not certain is never written as 0 or 100. */
export function percentWords(share: number): string {
  if (share > 0 && share < 0.01) return 'under 1 %';
  if (share < 1 && share > 0.99) return 'over 99 %';
  return `${roundTo(100 * share, 0)} %`;
}

/** "at most 8 % body fat, at most 80 kg and at least 76 kg". */
export function targetWords({ bodyFatPercent, massKg }: Target): string {
  const parts = [
    ...(bodyFatPercent ? [`at most ${bodyFatPercent.max} % body fat`] : []),
    ...(massKg?.max === undefined ? [] : [`at most ${massKg.max} kg`]),
    ...(massKg?.min === undefined ? [] : [`at least ${massKg.min} kg`]),
  ];
  return [parts.slice(0, -1).join(', '), parts.at(-1) ?? ''].filter((part) => part !== '').join(' and ');
}

/** "100 kcal less food and 50 kcal more cardio a day". */
export function changeWords({ energyKcal = 0, cardioKcal = 0 }: Change): string {
  const part = (kcal: number, what: string) =>
    kcal === 0 ? [] : [`${Math.abs(kcal)} kcal ${kcal < 0 ? 'less' : 'more'} ${what}`];
  const parts = [...part(energyKcal, 'food'), ...part(cardioKcal, 'cardio')];
  return parts.length === 0 ? 'no change' : `${parts.join(' and ')} a day`;
}

/** "8.4 weeks", "3 days". */
export function spanWords(days: number): string {
  if (days < 14) return `${days} day${days === 1 ? '' : 's'}`;
  return `${roundTo(days / 7, 1)} weeks`;
}

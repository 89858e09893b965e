import { capital } from '../units/capital.ts';
import { roundTo } from '../units/rounding.ts';
import type { WeekChange } from '../week/week-changes.ts';
import { dateWords } from './dates.ts';

type WayPart = Extract<WeekChange, { what: 'way' }>['parts'][number];

const WAY: { readonly [Part in WayPart]: string } = {
  days: 'how many days are planned together',
  cookWeekdays: 'the days at the stove',
  portionsPerDay: 'the portions of a day',
  sameDishPerDay: 'how often a dish comes on one day',
  wantedDishes: 'how many different dishes are wanted',
  toleratedPortions: 'how often a dish may come in all',
  pansPerCookDay: 'the pans of a day',
  foodsPerDay: 'the foods of a day',
  freezer: 'whether portions may be frozen',
};

/** Why a week no longer fits, as a sentence: "The turkey pan of Friday 5 March is gone; the plan counted on 2 portions." */
export function weekChangeWords(change: WeekChange): string {
  switch (change.what) {
    case 'over':
      return 'All its days are over.';
    case 'portions':
      return `${change.name} for ${dateWords(change.date)}: ${left(change.left)}; the plan counted on ${portions(change.counted)}.`;
    case 'pan missed':
      return `${change.name} was to be cooked on ${dateWords(change.date)} and was not.`;
    case 'targets':
      return `The targets of ${list(change.dates.map(dateWords))} have changed.`;
    case 'food':
      return `${capital(change.name)} for ${dateWords(change.date)}: ${change.leftG < 1 ? 'none is left' : `${roundTo(change.leftG, 0)} g are left`}; the plan still needs ${roundTo(change.needG, 0)} g.`;
    case 'recipe':
      return change.gone
        ? `${change.name} is no longer among the dishes that may be cooked.`
        : `The recipe of ${change.name} has changed.`;
    case 'price':
      return `${capital(change.name)} has another price: ${money(change.to)} for 100 g, ${money(change.from)} when it was planned.`;
    case 'way':
      return `You wish the week otherwise: ${list(change.parts.map((part) => WAY[part]))}.`;
  }
}

function left(count: number): string {
  if (count === 0) return 'none is left';
  return count === 1 ? '1 portion is left' : `${count} portions are left`;
}

function portions(count: number): string {
  return count === 1 ? '1 portion' : `${count} portions`;
}

function list(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

function money(cents: number): string {
  return (cents / 100).toFixed(2);
}

import { parseClock } from '../units/clock.ts';
import { roundTo } from '../units/rounding.ts';

/** A planned meal as it stood or stands, with names to be read. */
export interface ComparedMeal {
  readonly at: string;
  readonly items: readonly { readonly food: string; readonly name: string; readonly grams: number }[];
}

/** Further apart than this two meals are not the same one moved (common practice, no source). */
const SAME_MEAL_MINUTES = 180;
const MOST_FOODS = 6;

/**
 * What a new plan changed against the old one for what is still to come, in plain sentences: how many meals, which moved, how
 * much of each food more or less (DAY-28). Empty where nothing changed.
 */
export function comparePlans(
  before: readonly ComparedMeal[],
  after: readonly ComparedMeal[],
): readonly string[] {
  const pairs = pairUp(before, after);
  return [...countChange(before, after), ...moves(pairs), ...foodChanges(before, after)];
}

interface Pair {
  readonly old: ComparedMeal;
  readonly next: ComparedMeal;
}

/** Old and new meals in order, each with the nearest that is still free. */
function pairUp(before: readonly ComparedMeal[], after: readonly ComparedMeal[]): readonly Pair[] {
  const free = [...after];
  return before.flatMap((old) => {
    const away = free.map((meal) => Math.abs(minutes(meal) - minutes(old)));
    const nearest = Math.min(...away);
    const next = nearest <= SAME_MEAL_MINUTES ? free[away.indexOf(nearest)] : undefined;
    if (!next) return [];
    free.splice(free.indexOf(next), 1);
    return [{ old, next }];
  });
}

function countChange(before: readonly ComparedMeal[], after: readonly ComparedMeal[]): string[] {
  if (before.length === after.length) return [];
  const fits = after.length === 1 ? 'fits' : 'fit';
  const now = after.length < before.length ? `${fits} now` : 'now';
  return [`${counted(after.length)} ${now} instead of ${before.length}.`];
}

function moves(pairs: readonly Pair[]): string[] {
  return pairs
    .filter(({ old, next }) => old.at !== next.at)
    .map(({ old, next }) => `The meal at ${old.at} moves to ${next.at}.`);
}

function foodChanges(before: readonly ComparedMeal[], after: readonly ComparedMeal[]): string[] {
  const was = gramsByFood(before);
  const is = gramsByFood(after);
  const changes = [...new Set([...was.keys(), ...is.keys()])]
    .map((food) => {
      const [old, next] = [was.get(food), is.get(food)];
      return { name: next?.name ?? old?.name ?? food, was: old?.grams ?? 0, is: next?.grams ?? 0 };
    })
    .filter((change) => Math.abs(change.is - change.was) >= 1)
    .sort((a, b) => Math.abs(b.is - b.was) - Math.abs(a.is - a.was));
  const shown = changes.slice(0, MOST_FOODS).map(({ name, was: old, is: next }) => {
    if (next === 0) return `No ${name} any more (${roundTo(old, 0)} g were planned).`;
    if (old === 0) return `${roundTo(next, 0)} g of ${name} come in.`;
    return `${roundTo(next, 0)} g of ${name} instead of ${roundTo(old, 0)} g.`;
  });
  const more = changes.length - shown.length;
  return more > 0 ? [...shown, `${more} more foods change a little.`] : shown;
}

function gramsByFood(meals: readonly ComparedMeal[]): Map<string, { name: string; grams: number }> {
  const sums = new Map<string, { name: string; grams: number }>();
  for (const { food, name, grams } of meals.flatMap((meal) => meal.items)) {
    sums.set(food, { name, grams: (sums.get(food)?.grams ?? 0) + grams });
  }
  return sums;
}

function counted(meals: number): string {
  return meals === 1 ? 'One meal' : `${meals} meals`;
}

function minutes(meal: ComparedMeal): number {
  return parseClock(meal.at) ?? 0;
}

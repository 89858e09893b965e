import { LAST_CLOCK_MINUTE, parseClock } from '#core/units/clock.ts';
import { caffeineMgOf } from './refuse-dose.ts';
import type { FixedPoint } from './place-doses.ts';
import { keysIn, type Product } from './read-label.ts';
import { substanceKey } from './find-substance.ts';
import type { ScheduleRequest } from './schedule-request.ts';
import { drinkClass } from './separation.ts';
import type { DayFrame } from './tie-times.ts';

/** The clock texts have been held against the schema, so each is a time. */
function minutesOf(clock: string): number {
  return parseClock(clock) ?? LAST_CLOCK_MINUTE;
}

export function dayFrame(request: ScheduleRequest): DayFrame {
  const { wake, sleep, training } = request.events;
  const start = training && minutesOf(training.start);
  return {
    now: request.now === undefined ? 0 : minutesOf(request.now),
    wake: minutesOf(wake),
    sleep: minutesOf(sleep),
    ...(training && start !== undefined ? { training: { start, end: start + training.minutes } } : {}),
    meals: request.meals
      .map(({ slot, at, carbohydrateG, fatG }) => ({
        slot,
        minutes: minutesOf(at),
        ...(carbohydrateG === undefined ? {} : { carbohydrateG }),
        ...(fatG === undefined ? {} : { fatG }),
      }))
      .sort((a, b) => a.minutes - b.minutes || (a.slot < b.slot ? -1 : 1)),
  };
}

/** What stands in the day already: doses taken, medicines, coffee and tea, meals. */
export function fixedPoints(request: ScheduleRequest, products: ReadonlyMap<string, Product>): FixedPoint[] {
  const taken = (request.taken ?? []).flatMap(({ supplement, units, at }): FixedPoint[] => {
    const product = products.get(supplement);
    if (!product) return [];
    return [
      {
        name: product.name,
        minutes: minutesOf(at),
        classes: keysIn(product),
        caffeineMg: caffeineMgOf(product, units),
      },
    ];
  });
  const medicines = (request.medicines ?? []).map(({ name, at }): FixedPoint => {
    const key = substanceKey(name);
    return {
      name,
      minutes: minutesOf(at),
      classes: new Set(['any medicine', ...(key === undefined ? [] : [key])]),
      caffeineMg: 0,
    };
  });
  const drinks = (request.drinks ?? []).map(
    ({ drink, at, caffeineMg }): FixedPoint => ({
      name: drink,
      minutes: minutesOf(at),
      classes: drinkClass(drink),
      caffeineMg: caffeineMg ?? 0,
    }),
  );
  const meals = request.meals.map(
    ({ at }): FixedPoint => ({
      name: 'a meal',
      minutes: minutesOf(at),
      classes: new Set(['meal']),
      caffeineMg: 0,
    }),
  );
  return [...taken, ...medicines, ...drinks, ...meals];
}

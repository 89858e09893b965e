import type { DataOf } from '#core/journal/kinds/registry.ts';
import { foods } from './pantry.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';
import { weekPlan } from './week-plan.ts';

/** How food is sold in Hallmouth; prices in the town's own cents. */
const packs: readonly DataOf<'pack-known'>[] = [
  { food: foods.turkeyMince, packG: 450, priceCents: 420 },
  { food: 'usda-sr28:05062', packG: 400, priceCents: 510 },
  { food: 'usda-sr28:23557', packG: 500, priceCents: 640 },
  { food: 'usda-sr28:15015', packG: 400, priceCents: 690 },
  { food: 'usda-sr28:16069', packG: 500, priceCents: 180 },
  { food: foods.eggWhite, packG: 500, priceCents: 260 },
  { food: foods.egg, packG: 500, priceCents: 310 },
  { food: foods.cottageCheese, packG: 300, priceCents: 190 },
  { food: foods.potatoRaw, packG: 1500, priceCents: 220 },
  { food: foods.spinach, packG: 450, priceCents: 170 },
  { food: foods.broccoli, packG: 750, priceCents: 210 },
  { food: foods.tomatoPaste, packG: 140, priceCents: 90 },
  { food: foods.oats, packG: 500, priceCents: 120 },
];

/** How she likes her week: two evenings at the stove at most, Friday to Sunday and Wednesday. */
const wishes: DataOf<'week-wished'> = {
  days: 7,
  cookWeekdays: [3, 5, 6, 7],
  pansPerCookDay: 2,
  wantedDishes: 3,
  freezer: true,
};

export function writePacks(scribe: Scribe, day: string): void {
  for (const pack of packs) scribe.write(day, '06:40', 'pack-known', pack);
  scribe.write(day, '06:41', 'week-wished', wishes);
}

/** The week as the solver had it that morning; a test holds it against the limits and against the proven least. */
export function writeWeekAhead(scribe: Scribe): void {
  scribe.write(story.today, '05:59', 'week-adopted', weekPlan);
}

import type { Grams } from '../units/quantities.ts';
import type { Need } from './shopping-list.ts';
import type { PlannedDay } from './week-plan.ts';
import { macroNames, type Macros, type WeekRules } from './week-request.ts';

/** How the week is wished to be planned. */
export interface WeekWay {
  readonly days: number;
  readonly cookWeekdays: readonly number[];
  readonly rules: WeekRules;
}

/** What a week is solved from, as it stood at one moment. */
export interface WeekFacts {
  /** The prep day of that moment. */
  readonly today: string;
  /** Targets of the plan's days, where they are known. */
  readonly targets: ReadonlyMap<string, Macros>;
  /** Dishes as they could be cooked, by recipe. */
  readonly dishes: ReadonlyMap<string, { readonly name: string; readonly perPortion: Macros }>;
  /** Portions of a batch that the days to come may have. */
  readonly portions: ReadonlyMap<string, number>;
  /** Grams of a food that the days to come may have. */
  readonly grams: ReadonlyMap<string, Grams>;
  /** What the plan needed raw from then on. */
  readonly needs: readonly Need[];
  readonly centsPer100g: ReadonlyMap<string, number>;
  readonly way: WeekWay;
}

/** The plan that stands, as far as it is still to come. */
export interface StandingWeek {
  readonly days: readonly Pick<PlannedDay, 'date' | 'dishes' | 'foods'>[];
  readonly pans: readonly {
    readonly date: string;
    readonly recipe: string;
    readonly name: string;
    readonly done?: string;
  }[];
  /** The batch that portions come from, once there is one. */
  readonly batchOf: (dish: PlannedDay['dishes'][number]) => string | undefined;
  readonly nameOf: (id: string) => string;
  /** Foods that were counted or thrown away since, or have gone off: eating by the plan is no news. */
  readonly struck: ReadonlySet<string>;
}

export type WeekChange =
  | { readonly what: 'over' }
  | {
      readonly what: 'portions';
      readonly name: string;
      readonly counted: number;
      readonly left: number;
      readonly date: string;
    }
  | { readonly what: 'pan missed'; readonly name: string; readonly date: string }
  | { readonly what: 'targets'; readonly dates: readonly string[] }
  | {
      readonly what: 'food';
      readonly name: string;
      readonly leftG: Grams;
      readonly needG: Grams;
      readonly date: string;
    }
  | { readonly what: 'recipe'; readonly name: string; readonly gone: boolean }
  | { readonly what: 'price'; readonly name: string; readonly from: number; readonly to: number }
  | { readonly what: 'way'; readonly parts: readonly (keyof WeekRules | 'days' | 'cookWeekdays')[] };

/** Less is rounding. */
const SAME_G = 0.5;
/** A shelf is counted loosely, and a tenth of a need is bought or cooked around. Common practice, no source. */
const FOOD_SLACK = { grams: 20, share: 0.1 } as const;
/** A price a fifth up or down is worth another look. Common practice, no source. */
const PRICE_SHARE = 0.2;

/** What has changed since the plan was solved, or left as it stands, so that it no longer fits (WEK-09). */
export function weekChanges(standing: StandingWeek, then: WeekFacts, now: WeekFacts): readonly WeekChange[] {
  if (!standing.days.some(({ date }) => date > now.today)) {
    return standing.days.some(({ date }) => date > then.today) ? [{ what: 'over' }] : [];
  }
  return [
    ...fewerPortions(standing, then, now),
    ...missedPans(standing, then, now),
    ...otherTargets(standing, then, now),
    ...missingFoods(standing, then, now),
    ...otherRecipes(standing, then, now),
    ...otherPrices(standing, then, now),
    ...otherWay(then.way, now.way),
  ];
}

/** What later days count on of each batch, against what is left of it. */
function fewerPortions(standing: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  const counted = new Map<string, { readonly portions: number; readonly date: string }>();
  for (const { date, dishes } of standing.days) {
    for (const dish of date > now.today ? dishes : []) {
      const batch = standing.batchOf(dish);
      if (batch === undefined) continue;
      const before = counted.get(batch);
      counted.set(batch, {
        portions: (before?.portions ?? 0) + dish.portions,
        date: before?.date ?? date,
      });
    }
  }
  return [...counted].flatMap(([batch, { portions, date }]): WeekChange[] => {
    const left = now.portions.get(batch) ?? 0;
    if (left >= portions || left >= (then.portions.get(batch) ?? portions)) return [];
    return [{ what: 'portions', name: standing.nameOf(batch), counted: portions, left, date }];
  });
}

function missedPans({ pans, days }: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  const awaited = (recipe: string, cookedOn: string) =>
    days.some(
      ({ date, dishes }) =>
        date > now.today &&
        dishes.some((dish) => dish.from === 'pan' && dish.recipe === recipe && dish.cookedOn === cookedOn),
    );
  return pans.flatMap(({ date, recipe, name, done }): WeekChange[] => {
    const missed = done === undefined && date < now.today && date >= then.today;
    return missed && awaited(recipe, date) ? [{ what: 'pan missed', name, date }] : [];
  });
}

function otherTargets({ days }: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  const dates = days
    .map(({ date }) => date)
    .filter((date) => {
      const [before, after] = [then.targets.get(date), now.targets.get(date)];
      return date > now.today && before && after && !sameMacros(before, after);
    });
  return dates.length === 0 ? [] : [{ what: 'targets', dates }];
}

function sameMacros(one: Macros, other: Macros): boolean {
  return macroNames.every((name) => Math.abs(one[name] - other[name]) <= SAME_G);
}

/** A food struck from the shelf that the days still need: what is missing has grown. */
function missingFoods(standing: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  return [...standing.struck].flatMap((food): WeekChange[] => {
    const needG = needOf(now, food);
    const leftG = now.grams.get(food) ?? 0;
    const missing = Math.max(0, needG - leftG);
    const before = Math.max(0, needOf(then, food) - (then.grams.get(food) ?? 0));
    if (missing - before <= Math.max(FOOD_SLACK.grams, FOOD_SLACK.share * needG)) return [];
    const date = now.needs.find((need) => need.food === food)?.date ?? now.today;
    return [{ what: 'food', name: standing.nameOf(food), leftG, needG, date }];
  });
}

function needOf({ needs }: WeekFacts, food: string): Grams {
  return needs.reduce((sum, need) => sum + (need.food === food ? need.grams : 0), 0);
}

/** Dishes still to be cooked that are another dish now, or none. */
function otherRecipes({ pans }: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  const open = pans.filter(({ done, date }) => done === undefined && date >= now.today);
  const names = new Map(open.map(({ recipe, name }) => [recipe, name]));
  return [...names].flatMap(([recipe, name]): WeekChange[] => {
    const [before, after] = [then.dishes.get(recipe), now.dishes.get(recipe)];
    if (!before || (after && sameMacros(before.perPortion, after.perPortion))) return [];
    return [{ what: 'recipe', name, gone: !after }];
  });
}

function otherPrices({ nameOf }: StandingWeek, then: WeekFacts, now: WeekFacts): WeekChange[] {
  const foods = [...new Set(now.needs.map(({ food }) => food))];
  return foods.flatMap((food): WeekChange[] => {
    const [from, to] = [then.centsPer100g.get(food), now.centsPer100g.get(food)];
    if (from === undefined || to === undefined || Math.abs(to - from) <= PRICE_SHARE * from) return [];
    return [{ what: 'price', name: nameOf(food), from, to }];
  });
}

function otherWay(then: WeekWay, now: WeekWay): WeekChange[] {
  const [before, after] = [flat(then), flat(now)];
  const parts = wayParts.filter((part) => JSON.stringify(before[part]) !== JSON.stringify(after[part]));
  return parts.length === 0 ? [] : [{ what: 'way', parts }];
}

function flat({ days, cookWeekdays, rules }: WeekWay) {
  return { days, cookWeekdays, ...rules };
}

const wayParts = [
  'days',
  'cookWeekdays',
  'portionsPerDay',
  'sameDishPerDay',
  'wantedDishes',
  'toleratedPortions',
  'pansPerCookDay',
  'foodsPerDay',
  'freezer',
] as const;

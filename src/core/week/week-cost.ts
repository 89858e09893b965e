import { addDays } from '../units/civil-date.ts';
import type { PlannedDay, PlannedPan } from './week-plan.ts';
import { macroNames, weekWeights, type Macros, type WeekRequest } from './week-request.ts';

export interface DrawnWeek {
  readonly days: readonly PlannedDay[];
  readonly pans: readonly PlannedPan[];
}

/** What a plan costs, part by part, counted from the plan alone: the solver's own sum is never taken for it. */
export interface WeekCost {
  readonly macros: number;
  readonly cooking: number;
  readonly variety: number;
  readonly frozen: number;
  readonly waste: number;
  readonly money: number;
  readonly total: number;
}

export function weekCost(request: WeekRequest, week: DrawnWeek): WeekCost {
  const parts = {
    macros: sum(week.days.map(({ target, totals }) => macroCost(target, totals))),
    cooking:
      weekWeights.cookDay * new Set(week.pans.map((pan) => pan.date)).size +
      weekWeights.pan * week.pans.length,
    variety: varietyCost(request, week),
    frozen:
      weekWeights.portionFrozen *
      sum(
        week.days.flatMap((day) =>
          day.dishes.map((dish) => (dish.from === 'pan' && dish.frozen ? dish.portions : 0)),
        ),
      ),
    waste: weekWeights.portionWasted * (wastedPortions(request, week) + lostPortions(request, week)),
    money: weekWeights.cent * centsOf(request, week),
  };
  return { ...parts, total: sum(Object.values(parts)) };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

export function macroCost(target: Macros, totals: Macros): number {
  const off = (name: (typeof macroNames)[number]) => totals[name] - target[name];
  return sum(
    macroNames.map(
      (name) => weekWeights[name] * (name === 'fibreG' ? Math.max(0, -off(name)) : Math.abs(off(name))),
    ),
  );
}

/** What a day holds, from its portions and foods. */
export function totalsOfDay(request: WeekRequest, day: Pick<PlannedDay, 'dishes' | 'foods'>): Macros {
  const held: [Macros | undefined, number][] = [
    ...day.dishes.map((dish): [Macros | undefined, number] => [perPortion(request, dish), dish.portions]),
    ...day.foods.map(({ food, grams }): [Macros | undefined, number] => [
      request.foods.find((one) => one.food === food)?.per100g,
      grams / 100,
    ]),
  ];
  const total = (name: (typeof macroNames)[number]) =>
    sum(held.map(([per, times]) => (per?.[name] ?? 0) * times));
  return {
    proteinG: total('proteinG'),
    carbohydrateG: total('carbohydrateG'),
    fatG: total('fatG'),
    fibreG: total('fibreG'),
  };
}

function perPortion(request: WeekRequest, dish: PlannedDay['dishes'][number]): Macros | undefined {
  return dish.from === 'pan'
    ? request.dishes.find((one) => one.recipe === dish.recipe)?.perPortion
    : request.ready.find((one) => one.batch === dish.batch)?.perPortion;
}

/** The dish that portions count as: their recipe, or the batch itself. */
export function dishName(request: WeekRequest, dish: PlannedDay['dishes'][number]): string {
  if (dish.from === 'pan') return dish.recipe;
  return request.ready.find((one) => one.batch === dish.batch)?.recipe ?? `batch ${dish.batch}`;
}

function varietyCost(request: WeekRequest, { days }: DrawnWeek): number {
  const times = new Map<string, number>();
  let few = 0;
  for (const day of days) {
    let portions = 0;
    for (const dish of day.dishes) {
      const name = dishName(request, dish);
      times.set(name, (times.get(name) ?? 0) + dish.portions);
      portions += dish.portions;
    }
    few += Math.max(0, request.rules.portionsPerDay.min - portions);
  }
  const often = sum(
    [...times.values()].map((portions) => Math.max(0, portions - request.rules.toleratedPortions)),
  );
  const missing = Math.max(0, request.rules.wantedDishes - times.size);
  const offered = request.dishes.length + request.ready.length > 0;
  return weekWeights.portionTooOften * often + (offered ? weekWeights.dishMissing * (missing + few) : 0);
}

function wastedPortions(request: WeekRequest, { days, pans }: DrawnWeek): number {
  const eaten = days.flatMap((day) => day.dishes);
  const fromPan = ({ recipe, date }: PlannedPan) =>
    sum(
      eaten.map((dish) =>
        dish.from === 'pan' && dish.recipe === recipe && dish.cookedOn === date ? dish.portions : 0,
      ),
    );
  const fromBatch = (batch: string) =>
    sum(eaten.map((dish) => (dish.from === 'ready' && dish.batch === batch ? dish.portions : 0)));
  return (
    sum(pans.map((pan) => Math.max(0, pan.portions - fromPan(pan)))) +
    sum(
      request.ready.map((one) =>
        one.lastDay === undefined ? 0 : Math.max(0, one.portions - fromBatch(one.batch)),
      ),
    )
  );
}

/** Portions of what was bought raw and is cooked too late or not at all; where no day was left for it, no plan could help. */
function lostPortions({ bought = [], dishes, days }: WeekRequest, { pans }: DrawnWeek): number {
  return sum(
    bought.map(({ recipes, lastDay, portions }) => {
      const inTime = days.slice(0, lastDay + 1).filter(({ cooking }) => cooking);
      if (inTime.length === 0 || !dishes.some(({ recipe }) => recipes.includes(recipe))) return 0;
      const cooked = pans.some(
        (pan) => recipes.includes(pan.recipe) && inTime.some(({ date }) => date === pan.date),
      );
      return cooked ? 0 : portions;
    }),
  );
}

function centsOf(request: WeekRequest, { days, pans }: DrawnWeek): number {
  const dish = (recipe: string) => request.dishes.find((one) => one.recipe === recipe)?.centsPerPortion ?? 0;
  const food = (id: string) => request.foods.find((one) => one.food === id)?.centsPer100g ?? 0;
  return (
    sum(pans.map((pan) => dish(pan.recipe) * pan.portions)) +
    sum(days.flatMap((day) => day.foods.map(({ food: id, grams }) => (food(id) * grams) / 100)))
  );
}

/** Where a plan breaks what it must keep; empty for a sound one. Worked out without the model (WEK-03). */
export function weekFaults(request: WeekRequest, week: DrawnWeek): string[] {
  const { rules } = request;
  const faults: string[] = [];
  for (const day of week.days) {
    const perDish = new Map<string, number>();
    for (const dish of day.dishes) {
      const name = dishName(request, dish);
      perDish.set(name, (perDish.get(name) ?? 0) + dish.portions);
      const late = lateness(request, day.date, dish);
      if (late !== undefined) faults.push(`${day.date}: ${late}`);
    }
    const portions = sum([...perDish.values()]);
    if (portions > rules.portionsPerDay.max) faults.push(`${day.date}: ${portions} portions`);
    for (const [name, times] of perDish)
      if (times > rules.sameDishPerDay) faults.push(`${day.date}: ${times} times ${name}`);
    if (day.foods.length > rules.foodsPerDay) faults.push(`${day.date}: ${day.foods.length} foods`);
  }
  for (const pan of week.pans) {
    const dish = request.dishes.find((one) => one.recipe === pan.recipe);
    if (!dish || pan.portions > dish.mostPortions || pan.portions < dish.leastPortions)
      faults.push(`${pan.date}: a pan of ${pan.portions} portions`);
    if (request.days.find((day) => day.date === pan.date)?.cooking !== true)
      faults.push(`${pan.date}: no day to cook on`);
    const on = week.pans.filter((other) => other.date === pan.date).length;
    if (on > rules.pansPerCookDay) faults.push(`${pan.date}: ${on} pans`);
  }
  return [...faults, ...shortPans(week), ...shortBatches(request, week)];
}

function lateness(
  request: WeekRequest,
  date: string,
  dish: PlannedDay['dishes'][number],
): string | undefined {
  if (dish.from === 'ready') {
    const last = request.ready.find((one) => one.batch === dish.batch)?.lastDay;
    const lastDate = last === undefined ? undefined : request.days[last]?.date;
    return last !== undefined && (lastDate === undefined || date > lastDate)
      ? `${dish.batch} is out`
      : undefined;
  }
  const of = request.dishes.find((one) => one.recipe === dish.recipe);
  if (!of || date < dish.cookedOn) return `${dish.recipe} is not cooked yet`;
  const fresh = date < addDays(dish.cookedOn, of.keepsDays);
  if (dish.frozen)
    return of.freezes && request.rules.freezer ? undefined : `${dish.recipe} is not for freezing`;
  return fresh ? undefined : `${dish.recipe} of ${dish.cookedOn} is out`;
}

function shortPans({ days, pans }: DrawnWeek): string[] {
  const eaten = new Map<string, number>();
  for (const dish of days.flatMap((day) => day.dishes)) {
    if (dish.from !== 'pan') continue;
    const key = `${dish.recipe} of ${dish.cookedOn}`;
    eaten.set(key, (eaten.get(key) ?? 0) + dish.portions);
  }
  return [...eaten].flatMap(([key, portions]) => {
    const cooked = sum(pans.flatMap((pan) => (`${pan.recipe} of ${pan.date}` === key ? [pan.portions] : [])));
    return portions > cooked ? [`${key}: ${portions} eaten, ${cooked} cooked`] : [];
  });
}

function shortBatches(request: WeekRequest, { days }: DrawnWeek): string[] {
  return request.ready.flatMap((one) => {
    const eaten = sum(
      days.flatMap((day) =>
        day.dishes.map((dish) => (dish.from === 'ready' && dish.batch === one.batch ? dish.portions : 0)),
      ),
    );
    return eaten > one.portions ? [`${one.batch}: ${eaten} eaten of ${one.portions}`] : [];
  });
}

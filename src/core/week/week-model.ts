import { macroNames, weekWeights, type Macros, type WeekFood, type WeekRequest } from './week-request.ts';

/** Names of the model's columns: the model is written and its solution read by the same ones. */
export const columns = {
  cooks: (dish: number, day: number) => `y${dish}_${day}`,
  portions: (dish: number, day: number) => `q${dish}_${day}`,
  eaten: (dish: number, cookDay: number, day: number) => `z${dish}_${cookDay}_${day}`,
  ready: (batch: number, day: number) => `s${batch}_${day}`,
  grams: (food: number, day: number) => `x${food}_${day}`,
  onDay: (food: number, day: number) => `w${food}_${day}`,
} as const;

/**
 * How foods beside the dishes are taken: `loose` in any amount, which no plan can better and so bounds every plan from below;
 * `whole` as they are really eaten, in whole units and no less than their least.
 */
export type FoodGrain = 'loose' | 'whole';

/**
 * Which pan a portion comes from: `free` leaves it to the network between whole pans and whole days, whose corners are whole
 * of themselves, and is solved several times as fast; `whole` says so, for the day a solution is no corner.
 */
export type Flows = 'free' | 'whole';

/** A model being written in CPLEX LP text. */
interface Draft {
  readonly request: WeekRequest;
  readonly grain: FoodGrain;
  readonly flows: Flows;
  readonly objective: string[];
  readonly rows: string[];
  readonly bounds: string[];
  readonly general: string[];
  readonly binary: string[];
}

/**
 * The week as one mixed-integer model (WEK-02): which dish is cooked when, in how many portions, what is eaten on each day, so
 * that macros missed, evenings at the stove, repeats, waste and money cost least together.
 */
export function weekModel(request: WeekRequest, grain: FoodGrain, flows: Flows = 'free'): string {
  const draft: Draft = {
    request,
    grain,
    flows,
    objective: [],
    rows: [],
    bounds: [],
    general: [],
    binary: [],
  };
  request.days.forEach((_, day) => addDay(draft, day));
  request.dishes.forEach((_, dish) => {
    addDish(draft, dish);
    addWholeDays(draft, dish);
  });
  request.ready.forEach((_, batch) => addReady(draft, batch));
  request.foods.forEach((food, index) => addFood(draft, food, index));
  addVariety(draft);
  addBought(draft);
  return [
    'Minimize',
    ` cost: ${inLines(draft.objective)}`,
    'Subject To',
    ...draft.rows.map((row) => ` ${row}`),
    'Bounds',
    ...draft.bounds.map((bound) => ` ${bound}`),
    'General',
    ...draft.general.map((name) => ` ${name}`),
    'Binary',
    ...draft.binary.map((name) => ` ${name}`),
    'End',
    '',
  ].join('\n');
}

/** One day with its dishes settled: what is left of its target, to be filled with foods. */
export function fillRequest(request: WeekRequest, day: number, held: Macros): WeekRequest {
  const { days, foods, rules } = request;
  const of = days[day];
  if (!of) return { days: [], dishes: [], ready: [], foods, rules };
  const left = (name: keyof Macros) => of.target[name] - held[name];
  const target = {
    proteinG: left('proteinG'),
    carbohydrateG: left('carbohydrateG'),
    fatG: left('fatG'),
    fibreG: left('fibreG'),
  };
  return { days: [{ ...of, target }], dishes: [], ready: [], foods, rules };
}

/** On which days a portion cooked on a day may be eaten, and whether it is frozen until then. */
export function daysOfPortion(
  request: WeekRequest,
  dish: number,
  cookDay: number,
): readonly { readonly day: number; readonly frozen: boolean }[] {
  const of = request.dishes[dish];
  if (!of) return [];
  return request.days.flatMap((_, day) => {
    const frozen = day >= cookDay + of.keepsDays;
    const may = day >= cookDay && (!frozen || (of.freezes && request.rules.freezer));
    return may ? [{ day, frozen }] : [];
  });
}

function inLines(terms: readonly string[]): string {
  return terms.length === 0 ? '0 none' : terms.join('\n  ');
}

function addDay(draft: Draft, day: number): void {
  const { request, objective, rows, binary } = draft;
  const { days, dishes, ready, foods, rules } = request;
  const target = days[day]?.target;
  for (const name of macroNames) {
    const terms = [
      ...dishes.flatMap((dish, r) =>
        portionsOn(request, r, day).map((z) => `+ ${dish.perPortion[name]} ${z}`),
      ),
      ...ready.flatMap((one, b) =>
        mayEat(request, b, day) ? [`+ ${one.perPortion[name]} ${columns.ready(b, day)}`] : [],
      ),
      ...foods.map(
        (food, f) => `+ ${(food.per100g[name] / 100) * (food.unitG ?? 1)} ${columns.grams(f, day)}`,
      ),
    ];
    const [under, over] = [`u_${name}_${day}`, `o_${name}_${day}`];
    const above = name === 'fibreG' ? '' : ` + ${weekWeights[name]} ${over}`;
    objective.push(`+ ${weekWeights[name]} ${under}${above}`);
    rows.push(`${inLines(terms)} + ${under} - ${over} = ${target?.[name] ?? 0}`);
  }
  const portions = [
    ...dishes.flatMap((_, r) => portionsOn(request, r, day)),
    ...ready.flatMap((_, b) => (mayEat(request, b, day) ? [columns.ready(b, day)] : [])),
  ];
  if (portions.length > 0) {
    rows.push(`${portions.join(' + ')} <= ${rules.portionsPerDay.max}`);
    objective.push(`+ ${weekWeights.dishMissing} few_${day}`);
    rows.push(`${portions.join(' + ')} + few_${day} >= ${rules.portionsPerDay.min}`);
  }
  if (foods.length > 0 && draft.grain === 'whole')
    rows.push(`${foods.map((_, f) => columns.onDay(f, day)).join(' + ')} <= ${rules.foodsPerDay}`);
  if (dishes.length > 0 && days[day]?.cooking === true) {
    const pans = dishes.map((_, r) => columns.cooks(r, day)).join(' + ');
    objective.push(`+ ${weekWeights.cookDay} d${day}`);
    binary.push(`d${day}`);
    rows.push(`${pans} - ${rules.pansPerCookDay} d${day} <= 0`);
    // Said for each pan as well: the bound is tighter for it.
    for (const [r] of dishes.entries()) rows.push(`${columns.cooks(r, day)} - d${day} <= 0`);
  }
}

/** Columns of one dish's portions eaten on a day, from whatever pan. */
function portionsOn(request: WeekRequest, dish: number, day: number): string[] {
  return request.days.flatMap(({ cooking }, cookDay) =>
    cooking && daysOfPortion(request, dish, cookDay).some((one) => one.day === day)
      ? [columns.eaten(dish, cookDay, day)]
      : [],
  );
}

/** Portions of a dish on a day are whole, whichever pans they come from. */
function addWholeDays(draft: Draft, dish: number): void {
  for (const [day] of draft.request.days.entries()) {
    const portions = portionsOn(draft.request, dish, day);
    if (portions.length === 0) continue;
    const whole = `e${dish}_${day}`;
    draft.general.push(whole);
    draft.rows.push(`${portions.join(' + ')} - ${whole} = 0`);
  }
}

function mayEat({ ready }: WeekRequest, batch: number, day: number): boolean {
  const last = ready[batch]?.lastDay;
  return last === undefined || day <= last;
}

function addDish(draft: Draft, dish: number): void {
  const { request, objective, rows, general, binary } = draft;
  const of = request.dishes[dish];
  if (!of) return;
  const cents = (of.centsPerPortion ?? 0) * weekWeights.cent;
  request.days.forEach(({ cooking }, cookDay) => {
    if (!cooking) return;
    const [y, q] = [columns.cooks(dish, cookDay), columns.portions(dish, cookDay)];
    binary.push(y);
    general.push(q);
    objective.push(`+ ${weekWeights.pan} ${y}`);
    if (cents > 0) objective.push(`+ ${cents} ${q}`);
    rows.push(`${q} - ${of.mostPortions} ${y} <= 0`, `${q} - ${of.leastPortions} ${y} >= 0`);
    const eaten = daysOfPortion(request, dish, cookDay);
    const left = `l${dish}_${cookDay}`;
    objective.push(`+ ${weekWeights.portionWasted} ${left}`);
    rows.push(
      `${eaten.map(({ day }) => columns.eaten(dish, cookDay, day)).join(' + ')} + ${left} - ${q} = 0`,
    );
    for (const { day, frozen } of eaten) {
      const z = columns.eaten(dish, cookDay, day);
      if (draft.flows === 'whole') general.push(z);
      if (frozen) objective.push(`+ ${weekWeights.portionFrozen} ${z}`);
      rows.push(`${z} - ${request.rules.sameDishPerDay} ${y} <= 0`);
    }
  });
}

function addReady(draft: Draft, batch: number): void {
  const { request, objective, rows, general } = draft;
  const of = request.ready[batch];
  if (!of) return;
  const eaten = request.days.flatMap((_, day) =>
    mayEat(request, batch, day) ? [columns.ready(batch, day)] : [],
  );
  general.push(...eaten);
  const left = `k${batch}`;
  // What keeps past the days is no waste.
  if (of.lastDay !== undefined) objective.push(`+ ${weekWeights.portionWasted} ${left}`);
  rows.push(`${[...eaten, left].join(' + ')} = ${of.portions}`);
}

function addFood(draft: Draft, food: WeekFood, index: number): void {
  const { request, grain, objective, rows, bounds, general, binary } = draft;
  const unit = food.unitG ?? 1;
  const [low, high] = [
    Math.max(1, Math.ceil(food.minG / unit - 1e-9)),
    Math.max(1, Math.floor(food.maxG / unit + 1e-9)),
  ];
  const cents = ((food.centsPer100g ?? 0) / 100) * unit * weekWeights.cent;
  request.days.forEach((_, day) => {
    const [x, w] = [columns.grams(index, day), columns.onDay(index, day)];
    if (cents > 0) objective.push(`+ ${cents} ${x}`);
    if (grain === 'loose') {
      bounds.push(`0 <= ${x} <= ${food.maxG / unit}`);
      return;
    }
    binary.push(w);
    if (food.unitG !== undefined) general.push(x);
    rows.push(`${x} - ${high} ${w} <= 0`, `${x} - ${low} ${w} >= 0`);
  });
}

/** Different dishes, none of them too often on one day or over all days. */
function addVariety(draft: Draft): void {
  const { request, objective, rows, binary, bounds } = draft;
  const { rules } = request;
  const names = [...new Set([...request.dishes.map((dish) => dish.recipe), ...request.ready.map(dishOf)])];
  const used: string[] = [];
  for (const [place, name] of names.entries()) {
    const byDay = request.days.map((_, day) => [
      ...request.dishes.flatMap((dish, r) => (dish.recipe === name ? portionsOn(request, r, day) : [])),
      ...request.ready.flatMap((one, b) =>
        dishOf(one) === name && mayEat(request, b, day) ? [columns.ready(b, day)] : [],
      ),
    ]);
    for (const day of byDay) if (day.length > 0) rows.push(`${day.join(' + ')} <= ${rules.sameDishPerDay}`);
    const all = byDay.flat();
    if (all.length === 0) continue;
    const [use, often] = [`v${place}`, `b${place}`];
    used.push(use);
    binary.push(use);
    objective.push(`+ ${weekWeights.portionTooOften} ${often}`);
    rows.push(
      `${all.join(' + ')} - ${use} >= 0`,
      `${all.join(' + ')} - ${often} <= ${rules.toleratedPortions}`,
    );
  }
  if (used.length === 0) return;
  objective.push(`+ ${weekWeights.dishMissing} few`);
  rows.push(`${used.join(' + ')} + few >= ${rules.wantedDishes}`);
  bounds.push('few >= 0');
}

/** What is bought raw is cooked in time, or its portions count as thrown away. */
function addBought({ request, objective, rows }: Draft): void {
  for (const [place, bought] of (request.bought ?? []).entries()) {
    const cooks = request.dishes.flatMap(({ recipe }, r) =>
      bought.recipes.includes(recipe)
        ? request.days.flatMap(({ cooking }, day) =>
            cooking && day <= bought.lastDay ? [columns.cooks(r, day)] : [],
          )
        : [],
    );
    if (cooks.length === 0) continue;
    const lost = `lost${place}`;
    objective.push(`+ ${weekWeights.portionWasted * bought.portions} ${lost}`);
    rows.push(`${[...cooks, lost].join(' + ')} >= 1`);
  }
}

function dishOf(ready: WeekRequest['ready'][number]): string {
  return ready.recipe ?? `batch ${ready.batch}`;
}

import { formatClock, parseClock } from '../units/clock.ts';
import { clamp, roundTo } from '../units/rounding.ts';
import type { DayRequest } from './day-request.ts';
import type { DaySituation } from './day-situation.ts';
import type { HeldFood, PlateFood } from './plate-problem.ts';
import type { ScheduledMeal } from './schedule.ts';

/** Wishes as the plates can carry them. */
export interface HeldFoods {
  /** For each free meal. */
  readonly held: readonly (readonly HeldFood[])[];
  /** Kins that at least one free plate must carry. */
  readonly asked: ReadonlySet<number>;
  /** What was not taken up as wished, a sentence each. */
  readonly notes: readonly string[];
}

/**
 * Puts fixed foods on the free meal nearest to the wished time (the earlier on a tie) and sees which asked foods are still to be
 * planned. Serving limits, units, stock and room on the plate come first; what they change is said. Rules DAY-18, DAY-19.
 */
export function holdFoods(
  day: DaySituation,
  free: readonly ScheduledMeal[],
  foods: readonly PlateFood[],
): HeldFoods {
  const notes: string[] = [];
  const held: HeldFood[][] = free.map(() => []);
  const stock = foods.map((food) => food.stockSteps);
  for (const wish of day.request.fixed) {
    const m = nearestMeal(free, wish.at);
    const plate = held[m];
    if (plate === undefined) {
      notes.push(`${wish.food} wished at ${wish.at} finds no meal left to be in.`);
    } else if (plate.length >= day.rules.maxFoodsPerMeal) {
      notes.push(`${wish.food} wished at ${wish.at} finds no room: a plate carries ${plate.length} foods.`);
    } else {
      holdOne(wish, foods, stock, plate, notes);
    }
  }
  const asked = askedKins(day, free, foods, held, notes);
  return { held, asked, notes };
}

function nearestMeal(free: readonly ScheduledMeal[], at: string): number {
  const wished = parseClock(at) ?? 0;
  const away = free.map((meal) => Math.abs(meal.at - wished));
  return away.indexOf(Math.min(...away));
}

function holdOne(
  wish: DayRequest['fixed'][number],
  foods: readonly PlateFood[],
  stock: number[],
  plate: HeldFood[],
  notes: string[],
): void {
  const ways = foods.flatMap((food, index) => (food.id === wish.food ? [{ food, index }] : []));
  const fit = ways
    .filter(({ food, index }) => food.minSteps <= (stock[index] ?? 0))
    .map(({ food, index }) => ({ index, food, steps: stepsFor(food, stock[index] ?? 0, wish.grams) }))
    .sort(
      (a, b) =>
        Math.abs(a.steps * a.food.stepG - (wish.grams ?? 0)) -
        Math.abs(b.steps * b.food.stepG - (wish.grams ?? 0)),
    );
  const best = fit[0];
  if (best === undefined) {
    notes.push(`${wish.food} wished at ${wish.at} is not there to be served.`);
    return;
  }
  if (plate.some((other) => foods[other.food]?.kin === best.food.kin)) {
    notes.push(`${wish.food} is wished twice in the meal at ${wish.at}; the first wish holds.`);
    return;
  }
  // Without grams the least serving is set aside, so that a later wish cannot take it away.
  stock[best.index] = (stock[best.index] ?? 0) - best.steps;
  plate.push(wish.grams === undefined ? { food: best.index } : { food: best.index, steps: best.steps });
  const servedG = best.steps * best.food.stepG;
  if (wish.grams !== undefined && Math.abs(servedG - wish.grams) > 1e-6) {
    notes.push(
      `${wish.food} is held at ${roundTo(servedG, 1)} g, not ${wish.grams} g: serving limits, whole units or stock allow no nearer.`,
    );
  }
}

function stepsFor(food: PlateFood, stockSteps: number, wishedG: number | undefined): number {
  if (wishedG === undefined) return food.minSteps;
  return clamp(Math.round(wishedG / food.stepG), food.minSteps, Math.min(food.maxSteps, stockSteps));
}

function askedKins(
  day: DaySituation,
  free: readonly ScheduledMeal[],
  foods: readonly PlateFood[],
  held: readonly (readonly HeldFood[])[],
  notes: string[],
): ReadonlySet<number> {
  const { request } = day;
  const there = new Set(
    [...request.eaten, ...request.pinned].flatMap((meal) =>
      meal.items.flatMap((item) => ('food' in item ? [item.food] : [])),
    ),
  );
  for (const held1 of held.flat()) there.add(foods[held1.food]?.id ?? '');
  let room = free.length * day.rules.maxFoodsPerMeal - held.flat().length;
  const asked = new Set<number>();
  for (const [kin, food] of request.foods.entries()) {
    if (!food.asked || there.has(food.id)) continue;
    if (!foods.some((candidate) => candidate.kin === kin)) {
      notes.push(`${food.id} is asked for today but cannot be served.`);
    } else if (room === 0) {
      notes.push(`${food.id} is asked for today but finds no room on ${mealsNamed(free)}.`);
    } else {
      room -= 1;
      asked.add(kin);
    }
  }
  return asked;
}

function mealsNamed(free: readonly ScheduledMeal[]): string {
  if (free.length === 0) return 'any meal: none is left to plan';
  return `the plates at ${free.map((meal) => formatClock(meal.at)).join(', ')}`;
}

import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import type { RequestFood } from './day-request.ts';
import { PLATE_COST, type PlateFood } from './plate-problem.ts';

const PLATE_NUTRIENTS = ['proteinG', 'carbohydrateG', 'fatG', 'fibreG', 'sodiumMg'] as const;
/** Takes the binary dust off a quotient before it is cut to a whole number. */
const DUST = 1e-9;

/** The ways a food can go on a plate, or why it cannot. Packed portions of different weight are foods of one kin. */
export type FoodOnPlates =
  | { readonly usable: true; readonly foods: readonly PlateFood[] }
  | { readonly usable: false; readonly because: string };

/**
 * Turns a food of the request into steps: whole grams, whole units, or whole packed portions. `pinnedG` are its
 * grams in pinned meals, no longer free. Rules DAY-15 to DAY-17.
 */
export function foodOnPlates(food: RequestFood, kin: number, pinnedG: readonly Grams[]): FoodOnPlates {
  if (food.banned) return { usable: false, because: `${food.id} is banned today` };
  const ways = food.portionsG === undefined ? [oneWay(food, pinnedG)] : portionWays(food, pinnedG);
  const stocked = ways.filter((way) => way.stockSteps > 0);
  if (stocked.length === 0) return { usable: false, because: `${food.id} is not in stock` };
  const served = stocked.filter((way) => way.minSteps <= way.maxSteps);
  const unit = served.length === 0 ? stocked[0] : undefined;
  if (unit) {
    return {
      usable: false,
      because: `${food.id} cannot be served: no whole ${grams(unit.stepG)} lies between ${grams(food.minG)} and ${grams(food.maxG)}`,
    };
  }
  const enough = served.filter((way) => way.minSteps <= way.stockSteps);
  if (enough.length === 0) {
    const most = Math.max(...served.map((way) => way.stockSteps * way.stepG));
    return {
      usable: false,
      because: `${food.id} is too little to serve: ${grams(most)} free, a plate takes at least ${grams(food.minG)}`,
    };
  }
  return { usable: true, foods: enough.map((way) => plateFood(food, kin, way)) };
}

interface Way {
  readonly stepG: Grams;
  readonly minSteps: number;
  readonly maxSteps: number;
  readonly stockSteps: number;
}

function oneWay(food: RequestFood, pinnedG: readonly Grams[]): Way {
  const heldBackG = pinnedG.reduce((sum, grams) => sum + grams, 0);
  const stepG = food.unitG ?? 1;
  const freeG = food.availableG === undefined ? Number.POSITIVE_INFINITY : food.availableG - heldBackG;
  return way(food, stepG, Math.floor(freeG / stepG + DUST));
}

function portionWays(food: RequestFood, pinnedG: readonly Grams[]): readonly Way[] {
  const portions = [...(food.portionsG ?? [])].sort((a, b) => a - b);
  // A pinned portion is the one of its own weight; where none has that weight, the smallest that covers it.
  for (const grams of pinnedG) {
    const exact = portions.findIndex((portion) => Math.abs(portion - grams) < 0.5);
    const place = exact >= 0 ? exact : portions.findIndex((portion) => portion >= grams);
    if (place >= 0) portions.splice(place, 1);
  }
  const weights = [...new Set(portions)];
  return weights.map((weightG) =>
    way(food, weightG, portions.filter((portion) => portion === weightG).length),
  );
}

function way(food: RequestFood, stepG: Grams, stockSteps: number): Way {
  const maxSteps = Math.floor(food.maxG / stepG + DUST);
  return {
    stepG,
    minSteps: Math.max(1, Math.ceil(food.minG / stepG - DUST)),
    maxSteps,
    stockSteps: Math.max(0, stockSteps),
  };
}

function plateFood(
  food: RequestFood,
  kin: number,
  { stepG, minSteps, maxSteps, stockSteps }: Way,
): PlateFood {
  const [protein, carbohydrate, fat, fibre, sodium] = PLATE_NUTRIENTS.map(
    (key) => ((food.per100g[key] ?? 0) * stepG) / 100,
  );
  return {
    id: food.id,
    stepG,
    perStep: [protein ?? 0, carbohydrate ?? 0, fat ?? 0, fibre ?? 0, sodium ?? 0],
    minSteps,
    maxSteps: Math.min(maxSteps, stockSteps),
    stockSteps,
    plateCost: PLATE_COST + food.dislike,
    asked: food.asked,
    kin,
  };
}

function grams(value: Grams): string {
  return `${roundTo(value, 1)} g`;
}

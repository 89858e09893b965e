import {
  DAY_WEIGHTS,
  FAT_BEFORE_TRAINING_WEIGHT,
  FIBRE_WEIGHT,
  MEAL_WEIGHTS,
  type PlateProblem,
  SODIUM_WEIGHT,
} from '#core/day/plate-problem.ts';

/**
 * The plate problem as flat arrays. A column is one food on one plate, in grams; a row is a sum of columns (a nutrient of the day,
 * a macro of a meal, the grams of a food that is short in stock) with a convex cost of at most three straight pieces:
 * slopes `slope0 | slope1 | slope2` between `break0` and `break1`, and `costAtBreak0`.
 */
export interface PlateModel {
  readonly meals: number;
  readonly foods: number;
  readonly rows: number;
  readonly columns: number;
  /** Five per food and gram: protein, carbohydrate, fat, fibre, sodium. */
  readonly perGram: Float64Array;
  /** Row of a food's stock, or -1 where it is not short. */
  readonly stockRow: Int32Array;
  readonly break0: Float64Array;
  readonly break1: Float64Array;
  readonly slope0: Float64Array;
  readonly slope1: Float64Array;
  readonly slope2: Float64Array;
  readonly costAtBreak0: Float64Array;
  /** Per food: grams of one step, least and most grams on a plate, cost of being on one. */
  readonly stepG: Float64Array;
  readonly minG: Float64Array;
  readonly maxG: Float64Array;
  readonly plateCost: Float64Array;
}

/** Rows 0 to 4 are the day's nutrients; a meal's three macros follow, meal after meal; then the short foods. */
export const DAY_ROWS = 5;
export const NUTRIENTS = 5;
export const MACROS = 3;

/** Per gram beyond a hard limit: far above what any gram can save (at most about 40 kcal), small enough to stay exact. */
export const BEYOND_LIMIT = 1000;

/** First row of a meal's macros. */
export function mealRow(meal: number): number {
  return DAY_ROWS + MACROS * meal;
}

export function plateModel(problem: PlateProblem): PlateModel {
  const meals = problem.meals.length;
  const foods = problem.foods.length;
  const stockRow = new Int32Array(foods).fill(-1);
  let rows = DAY_ROWS + MACROS * meals;
  problem.foods.forEach((food, f) => {
    if (food.stockSteps < food.maxSteps * meals) stockRow[f] = rows++;
  });
  const model: PlateModel = {
    meals,
    foods,
    rows,
    columns: meals * foods,
    perGram: Float64Array.from(
      problem.foods.flatMap((food) => food.perStep.map((amount) => amount / food.stepG)),
    ),
    stockRow,
    break0: new Float64Array(rows),
    break1: new Float64Array(rows).fill(Number.POSITIVE_INFINITY),
    slope0: new Float64Array(rows),
    slope1: new Float64Array(rows),
    slope2: new Float64Array(rows),
    costAtBreak0: new Float64Array(rows),
    stepG: Float64Array.from(problem.foods, (food) => food.stepG),
    minG: Float64Array.from(problem.foods, (food) => food.minSteps * food.stepG),
    maxG: Float64Array.from(problem.foods, (food) => food.maxSteps * food.stepG),
    plateCost: Float64Array.from(problem.foods, (food) => food.plateCost),
  };
  dayRows(model, problem);
  problem.meals.forEach((meal, m) => {
    for (let k = 0; k < MACROS; k++) {
      bend(model, mealRow(m) + k, meal.target[k] ?? 0, -(MEAL_WEIGHTS[k] ?? 0), MEAL_WEIGHTS[k] ?? 0);
    }
    if (meal.fatCapG !== undefined) fatCap(model, mealRow(m) + 2, meal.target[2], meal.fatCapG);
  });
  problem.foods.forEach((food, f) => {
    const row = stockRow[f] ?? -1;
    if (row >= 0) bend(model, row, food.stockSteps * food.stepG, 0, BEYOND_LIMIT);
  });
  return model;
}

function dayRows(model: PlateModel, problem: PlateProblem): void {
  for (let k = 0; k < MACROS; k++) {
    bend(model, k, problem.left[k] ?? 0, -(DAY_WEIGHTS[k] ?? 0), DAY_WEIGHTS[k] ?? 0);
  }
  const { fibreMissingG, sodiumRoomMg } = problem;
  if (fibreMissingG === undefined) bend(model, 3, 0, 0, 0);
  else bend(model, 3, fibreMissingG, -FIBRE_WEIGHT, 0);
  if (sodiumRoomMg === undefined) bend(model, 4, 0, 0, 0);
  else bend(model, 4, sodiumRoomMg, 0, SODIUM_WEIGHT);
}

/** One bend: `below` before it, `above` after it. */
function bend(model: PlateModel, row: number, at: number, below: number, above: number): void {
  model.break0[row] = at;
  model.slope0[row] = below;
  model.slope1[row] = above;
  model.slope2[row] = above;
}

/** Fat of a meal before training bends twice: at its target and at the cap. */
function fatCap(model: PlateModel, row: number, targetG: number, capG: number): void {
  const weight = MEAL_WEIGHTS[2];
  const above = weight + FAT_BEFORE_TRAINING_WEIGHT;
  if (targetG === capG) {
    bend(model, row, targetG, -weight, above);
    return;
  }
  model.break0[row] = Math.min(targetG, capG);
  model.break1[row] = Math.max(targetG, capG);
  model.slope0[row] = -weight;
  model.slope1[row] = targetG < capG ? weight : FAT_BEFORE_TRAINING_WEIGHT - weight;
  model.slope2[row] = above;
  model.costAtBreak0[row] = weight * Math.max(0, targetG - capG);
}

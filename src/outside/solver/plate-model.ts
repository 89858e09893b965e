import {
  DAY_WEIGHTS,
  FAT_BEFORE_TRAINING_WEIGHT,
  FIBRE_WEIGHT,
  MEAL_WEIGHTS,
  type PlateMeal,
  type PlateProblem,
  SODIUM_WEIGHT,
} from '#core/day/plate-problem.ts';
import { PiecewiseProgram } from './piecewise-program.ts';
import { type PlateChoices, plateChoices } from './plate-choices.ts';

/** The day's nutrients: protein, carbohydrate, fat, fibre, sodium. The first three are also counted meal by meal. */
export const NUTRIENTS = 5;
export const MACROS = 3;

/** Per gram beyond the stock, and for an asked food left out: far above what a gram can save, some 40 kcal. */
const BEYOND_STOCK = 1000;
/** Per gram beyond what may be served: above every price a gram can have, that of stock with it; small enough for exact sums. */
export const BEYOND_SERVING = 100_000;

/**
 * The plate problem as flat arrays. What the plates share is counted in joint rows: the day's five nutrients, then the grams of each
 * food that is short in stock, then each asked food (how many plates carry it).
 */
export interface PlateModel extends PlateChoices {
  readonly problem: PlateProblem;
  readonly meals: number;
  /** Costs of the joint rows. */
  readonly joint: PiecewiseProgram;
  /** First of the joint rows that count plates, not grams. */
  readonly firstAsked: number;
  /** Per choice and joint row: what a gram adds (nutrients, stock). */
  readonly perGram: Float64Array;
  /** Per choice and joint row: what being on a plate adds (asked foods). */
  readonly perPlate: Float64Array;
}

export function plateModel(problem: PlateProblem): PlateModel {
  const choices = plateChoices(problem);
  const short = problem.foods.flatMap((food, f) =>
    food.stockSteps < food.maxSteps * problem.meals.length ? [f] : [],
  );
  const asked = [...new Set(problem.foods.flatMap((food) => (food.asked ? [food.kin] : [])))];
  const rows = NUTRIENTS + short.length + asked.length;
  const joint = new PiecewiseProgram(rows, 0, 0);
  bendDay(joint, problem);
  short.forEach((f, i) => {
    const { stockSteps = 0, stepG = 1 } = problem.foods[f] ?? {};
    joint.bendOnce(NUTRIENTS + i, stockSteps * stepG, 0, BEYOND_STOCK);
  });
  asked.forEach((_, i) => {
    joint.bendOnce(NUTRIENTS + short.length + i, 1, -BEYOND_STOCK, 0);
  });
  const perGram = new Float64Array(choices.choices.length * rows);
  const perPlate = new Float64Array(choices.choices.length * rows);
  choices.choices.forEach(({ food, kin }, c) => {
    const { perStep = [], stepG = 1 } = problem.foods[food] ?? {};
    perStep.forEach((amount, k) => {
      perGram[c * rows + k] = amount / stepG;
    });
    const stock = short.indexOf(food);
    if (stock >= 0) perGram[c * rows + NUTRIENTS + stock] = 1;
    const wish = asked.indexOf(kin);
    if (wish >= 0) perPlate[c * rows + NUTRIENTS + short.length + wish] = 1;
  });
  const firstAsked = NUTRIENTS + short.length;
  return { ...choices, problem, meals: problem.meals.length, joint, firstAsked, perGram, perPlate };
}

function bendDay(joint: PiecewiseProgram, problem: PlateProblem): void {
  DAY_WEIGHTS.forEach((weight, k) => {
    joint.bendOnce(k, problem.left[k] ?? 0, -weight, weight);
  });
  const { fibreMissingG, sodiumRoomMg } = problem;
  joint.bendOnce(3, fibreMissingG ?? 0, fibreMissingG === undefined ? 0 : -FIBRE_WEIGHT, 0);
  joint.bendOnce(4, sodiumRoomMg ?? 0, 0, sodiumRoomMg === undefined ? 0 : SODIUM_WEIGHT);
}

/** The three macro rows of a meal, from row `first` on. Fat before training bends twice: at its target and at the cap. */
export function bendMeal(program: PiecewiseProgram, first: number, meal: PlateMeal): void {
  MEAL_WEIGHTS.forEach((weight, k) => {
    program.bendOnce(first + k, meal.target[k] ?? 0, -weight, weight);
  });
  const capG = meal.fatCapG;
  if (capG === undefined) return;
  const targetG = meal.target[2];
  const weight = MEAL_WEIGHTS[2];
  const between = targetG < capG ? weight : FAT_BEFORE_TRAINING_WEIGHT - weight;
  program.bendTwice(
    first + 2,
    [Math.min(targetG, capG), Math.max(targetG, capG)],
    [-weight, between, weight + FAT_BEFORE_TRAINING_WEIGHT],
    weight * Math.max(0, targetG - capG),
  );
}

import type { PlateModel } from './plate-model.ts';
import { PlatePricer } from './plate-pricer.ts';

/** Meals that ask for the same: one search for plates serves them all. */
export interface MealClass {
  readonly meals: readonly number[];
  readonly pricer: PlatePricer;
}

export function mealClasses(model: PlateModel): readonly MealClass[] {
  const alike = new Map<string, number[]>();
  model.problem.meals.forEach((meal, m) => {
    const key = JSON.stringify(meal);
    const meals = alike.get(key);
    if (meals) meals.push(m);
    else alike.set(key, [m]);
  });
  return [...alike.values()].map((meals) => ({ meals, pricer: new PlatePricer(model, meals[0] ?? 0) }));
}

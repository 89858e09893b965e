import { roundTo } from '../units/rounding.ts';
import type { Grams } from '../units/quantities.ts';
import type { MealRole } from './meal-role.ts';
import type { MacroGrams } from './plate-problem.ts';

/** How much more carbohydrate a meal near training gets than one away from it, and fat the other way round (common practice, no source). */
const LEAN = 2;
/** Least share of the carbohydrate left that meals around training carry where both kinds of meal are there; the contract says 60 %. */
const CARBOHYDRATE_NEAR_SHARE = 0.62;
/**
 * Splits what is left of the day over the meals to come: protein evenly, carbohydrate leaning to the meals around training, fat
 * away from it and under the cap before training as far as other meals can take it. The parts add up to what is left.
 * Rules DAY-11 to DAY-14.
 */
export function mealTargets(
  roles: readonly MealRole[],
  left: MacroGrams,
  fatBeforeTrainingMaxG: Grams,
): readonly MacroGrams[] {
  const protein = split(
    left[0],
    roles.map(() => 1),
  );
  const carbohydrate = split(left[1], carbohydrateWeights(roles));
  const fat = fatShares(roles, left[2], fatBeforeTrainingMaxG);
  return roles.map((_, m) => [protein[m] ?? 0, carbohydrate[m] ?? 0, fat[m] ?? 0]);
}

function carbohydrateWeights(roles: readonly MealRole[]): readonly number[] {
  const near = roles.filter((role) => role !== 'away').length;
  const away = roles.length - near;
  if (near === 0 || away === 0) return roles.map(() => 1);
  const share = Math.max(CARBOHYDRATE_NEAR_SHARE, (LEAN * near) / (LEAN * near + away));
  return roles.map((role) => (role === 'away' ? (1 - share) / away : share / near));
}

function fatShares(roles: readonly MealRole[], leftG: Grams, capG: Grams): readonly Grams[] {
  const weights = roles.map((role) => (role === 'away' ? LEAN : 1));
  const plain = split(leftG, weights);
  const over = roles.some((role, m) => role === 'before-training' && (plain[m] ?? 0) > capG);
  const others = roles.some((role) => role !== 'before-training');
  if (!over || !others) return plain;
  const before = roles.filter((role) => role === 'before-training').length;
  const rest = split(
    leftG - capG * before,
    roles.map((role, m) => (role === 'before-training' ? 0 : (weights[m] ?? 0))),
  );
  return roles.map((role, m) => (role === 'before-training' ? capG : (rest[m] ?? 0)));
}

/**
 * Parts in proportion to the weights, to a millionth of a gram: meals alike get targets that are equal to the last digit, by which
 * the solver knows them for the same.
 */
function split(totalG: Grams, weights: readonly number[]): readonly Grams[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => roundTo((totalG * weight) / sum, 6));
}

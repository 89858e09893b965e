import type { DayAnswer } from '#core/day/day-answer.ts';
import type { DayRequest } from '#core/day/day-request.ts';
import {
  DAY_WEIGHTS,
  FAT_BEFORE_TRAINING_WEIGHT,
  FIBRE_WEIGHT,
  MEAL_WEIGHTS,
  PLATE_COST,
  SODIUM_WEIGHT,
} from '#core/day/plate-problem.ts';

const MACROS = ['proteinG', 'carbohydrateG', 'fatG'] as const;

/**
 * The whole day as one mixed-integer model in CPLEX LP text: the slow, plain reference that a general solver is given. For requests
 * without eaten meals, pins or portions. With `wholeGrams` the solver too is held to whole grams, which is harder for it.
 */
export function wholeModel(request: DayRequest, answer: DayAnswer, wholeGrams = false): string {
  const objective: string[] = [];
  const rows: string[] = [];
  const bounds: string[] = [];
  const general: string[] = [];
  const binary: string[] = [];
  const { meals } = answer;
  const per = (f: number, key: (typeof MACROS)[number] | 'fibreG' | 'sodiumMg') => {
    const food = request.foods[f];
    return ((food?.per100g[key] ?? 0) / 100) * (food?.unitG ?? 1);
  };
  const sum = (key: Parameters<typeof per>[1], some: readonly number[]) =>
    some.flatMap((m) => request.foods.map((_, f) => `+ ${per(f, key)} x${m}_${f}`)).join(' ');
  const every = meals.map((_, m) => m);
  MACROS.forEach((key, k) => {
    objective.push(`+ ${DAY_WEIGHTS[k]} du${k} + ${DAY_WEIGHTS[k]} do${k}`);
    rows.push(`day${k}: ${sum(key, every)} + du${k} - do${k} = ${request.targets[key]}`);
    for (const m of every) {
      objective.push(`+ ${MEAL_WEIGHTS[k]} mu${m}_${k} + ${MEAL_WEIGHTS[k]} mo${m}_${k}`);
      rows.push(
        `meal${m}_${k}: ${sum(key, [m])} + mu${m}_${k} - mo${m}_${k} = ${meals[m]?.target[key] ?? 0}`,
      );
    }
  });
  objective.push(`+ ${FIBRE_WEIGHT} fibre + ${SODIUM_WEIGHT} sodium`);
  rows.push(`fibre: ${sum('fibreG', every)} + fibre >= ${request.targets.fibreG?.min ?? 0}`);
  rows.push(`sodium: ${sum('sodiumMg', every)} - sodium <= ${request.targets.sodiumMg?.max ?? 1e6}`);
  for (const m of every) {
    if (meals[m]?.role === 'before-training') {
      objective.push(`+ ${FAT_BEFORE_TRAINING_WEIGHT} fat${m}`);
      rows.push(`fat${m}: ${sum('fatG', [m])} - fat${m} <= ${request.rules.fatBeforeTrainingMaxG}`);
    }
    rows.push(
      `count${m}: ${request.foods.map((_, f) => `+ y${m}_${f}`).join(' ')} <= ${request.rules.maxFoodsPerMeal}`,
    );
    request.foods.forEach((food, f) => {
      const unit = food.unitG ?? 1;
      const [low, high] = [Math.ceil(food.minG / unit), Math.floor(food.maxG / unit)];
      objective.push(`+ ${PLATE_COST} y${m}_${f}`);
      rows.push(
        `hi${m}_${f}: x${m}_${f} - ${high} y${m}_${f} <= 0`,
        `lo${m}_${f}: x${m}_${f} - ${low} y${m}_${f} >= 0`,
      );
      bounds.push(`0 <= x${m}_${f} <= ${high}`);
      binary.push(`y${m}_${f}`);
      if (wholeGrams || food.unitG !== undefined) general.push(`x${m}_${f}`);
    });
  }
  request.foods.forEach((food, f) => {
    if (food.availableG === undefined) return;
    rows.push(
      `stock${f}: ${every.map((m) => `+ ${food.unitG ?? 1} x${m}_${f}`).join(' ')} <= ${food.availableG}`,
    );
  });
  return [
    'Minimize',
    `cost: ${objective.join(' ')}`,
    'Subject To',
    ...rows,
    'Bounds',
    ...bounds,
    ...(general.length > 0 ? ['General', general.join(' ')] : []),
    'Binary',
    binary.join(' '),
    'End',
  ].join('\n');
}

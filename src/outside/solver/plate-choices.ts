import type { PlateProblem } from '#core/day/plate-problem.ts';

/** One way a food can be on a plate: between two amounts, or in exactly one. */
export interface PlateChoice {
  /** Place in the problem's foods. */
  readonly food: number;
  readonly lowG: number;
  readonly highG: number;
  /** Whole multiples of it only. */
  readonly stepG: number;
  readonly cost: number;
  /** Of one kin a plate carries at most one choice. */
  readonly kin: number;
}

/** A food in so few whole units is one choice per count: the solver then never meets half an egg. */
const COUNTS_AS_CHOICES = 10;

/** Every choice a plate has, and for each meal those one of which it must take, wish by wish. */
export interface PlateChoices {
  readonly choices: readonly PlateChoice[];
  /** Choices open to every meal are the first `open`; those after are held in one meal. */
  readonly open: number;
  readonly held: readonly (readonly (readonly number[])[])[];
}

export function plateChoices(problem: PlateProblem): PlateChoices {
  const choices: PlateChoice[] = [];
  const ofFood: number[][] = problem.foods.map((_, food) => {
    const first = choices.length;
    choices.push(...choicesOf(problem, food));
    return choices.slice(first).map((_, i) => first + i);
  });
  const open = choices.length;
  const held = problem.meals.map((meal) =>
    meal.held.map(({ food, steps }) => {
      const ways = ofFood[food] ?? [];
      if (steps === undefined) return ways;
      const grams = steps * (problem.foods[food]?.stepG ?? 1);
      choices.push({ ...choiceBetween(problem, food, 0, 0), lowG: grams, highG: grams });
      return [choices.length - 1];
    }),
  );
  return { choices, open, held };
}

function choicesOf(problem: PlateProblem, food: number): PlateChoice[] {
  const { stepG = 1, minSteps = 1, maxSteps = 0 } = problem.foods[food] ?? {};
  const counts = maxSteps - minSteps + 1;
  if (stepG === 1 || counts > COUNTS_AS_CHOICES) return [choiceBetween(problem, food, minSteps, maxSteps)];
  return Array.from({ length: counts }, (_, i) => choiceBetween(problem, food, minSteps + i, minSteps + i));
}

function choiceBetween(problem: PlateProblem, food: number, low: number, high: number): PlateChoice {
  const { stepG = 1, plateCost = 0, kin = food } = problem.foods[food] ?? {};
  return { food, lowG: low * stepG, highG: high * stepG, stepG, cost: plateCost, kin };
}

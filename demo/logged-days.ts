import type { RandomStream } from '#core/random/random-stream.ts';
import { addDays } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { trains } from './cardio.ts';
import { mealDaysFrom, mealIntake } from './kitchen-days.ts';
import { heldRehearsal } from './rehearsal.ts';
import { targetSteps } from './season.ts';
import { story } from './story.ts';

/** A day's food as the journal has it. */
export interface LoggedDay {
  readonly energyKcal: number;
  readonly proteinG: number;
  readonly carbohydrateG: number;
  readonly fatG: number;
  readonly sodiumMg: number;
}

/** Her salt on an ordinary day; while she loads a little more goes with the rice. */
const SODIUM_MG = { usual: 2600, loading: 2900 } as const;

/** Whether a day's food was weighed and written meal by meal, or only its total. */
export function loggedFinely(number: number): boolean {
  return number >= mealDaysFrom;
}

/** What was logged on a day: near the targets of its kind, the load of the rehearsal, or the meals one by one. */
export function loggedDay(number: number, chance: RandomStream): LoggedDay {
  const [a, b, c] = [chance.normal(), chance.normal(), chance.normal()];
  if (loggedFinely(number)) return mealIntake(number - mealDaysFrom);
  const loads = heldRehearsal.fromDay <= number && number < heldRehearsal.fromDay + heldRehearsal.loadDays;
  const target = loads ? heldRehearsal.target : targetOn(number);
  const proteinG = roundTo(target.p + 4 * a, 0);
  const carbohydrateG = roundTo(target.c + 12 * b, 0);
  const fatG = roundTo(target.f + 4 * c, 0);
  return {
    energyKcal: roundTo(4 * proteinG + 4 * carbohydrateG + 9 * fatG, 0),
    proteinG,
    carbohydrateG,
    fatG,
    sodiumMg: roundTo((loads ? SODIUM_MG.loading : SODIUM_MG.usual) + 350 * a + 250 * c, 0),
  };
}

function targetOn(number: number): { readonly p: number; readonly c: number; readonly f: number } {
  const step = targetSteps.findLast((candidate) => candidate.fromDay <= number) ?? targetSteps[0];
  return trains(addDays(story.begins, number)) ? step.training : step.rest;
}

import { randomStream } from '#core/random/random-stream.ts';
import { addDays, isoWeekday } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { targetSteps, trainingWeekdays } from './season.ts';
import { story } from './story.ts';

/** One invented morning: what the scale and the tape say, and what was logged that day. */
export interface BodyDay {
  readonly scaleKg: number;
  readonly waistCm: number;
  /** Her true body fat, which no method reads exactly. */
  readonly fatPercent: number;
  readonly logged: {
    readonly energyKcal: number;
    readonly proteinG: number;
    readonly carbohydrateG: number;
    readonly fatG: number;
    readonly sodiumMg: number;
  };
}

const START_KG = 66.4;
const START_FAT_KG = 15.4;
/** Fat in a kilogram of tissue lost. */
const FAT_SHARE = 0.8;
const START_WAIST_CM = 73.5;
const MAINTENANCE_KCAL = 2240;
/** What a kilogram lost frees at this leanness: about four fifths of it fat. */
const KCAL_PER_KG = 7400;
/** Days of her cycle; the scale stands highest as the menses begin. */
export const CYCLE_DAYS = 29;
/** A plateau of the last weeks that is water: it rises from a day on, and has half gone again by the end. */
const PLATEAU = { from: 94, top: 104, kg: 0.8 } as const;

/**
 * The story's sixteen weeks: tissue follows the energy balance with expenditure falling along, the scale adds water of
 * salt, carbohydrate and cycle, and the day's noise.
 */
export function bodyPath(seed: number): readonly BodyDay[] {
  const chance = randomStream(seed, 'demo body');
  const days: BodyDay[] = [];
  let tissueKg = START_KG;
  let adapted = 0;
  let water = 0;
  for (let number = 0; number < story.weeks * 7; number += 1) {
    const logged = loggedDay(number, chance.normal(), chance.normal(), chance.normal());
    // She weighs in before she eats: the water of the day's food is there the next morning.
    const morningWater = water + plateauKg(number);
    water = 0.75 * water + 0.25 * (0.0005 * (logged.sodiumMg - 2600) + 0.006 * (logged.carbohydrateG - 170));
    const cycle = 0.45 * Math.cos((2 * Math.PI * number) / CYCLE_DAYS);
    days.push({
      scaleKg: tissueKg + morningWater + cycle + 0.3 * chance.normal(),
      waistCm: START_WAIST_CM - 1.05 * (START_KG - tissueKg) + 0.3 * chance.normal(),
      fatPercent: (100 * (START_FAT_KG - FAT_SHARE * (START_KG - tissueKg))) / tissueKg,
      logged,
    });
    // She forgets about a twentieth of what she eats, as people do.
    const eatenKcal = logged.energyKcal * 1.05;
    const spentKcal = MAINTENANCE_KCAL - 22 * (START_KG - tissueKg) - adapted;
    adapted += (0.12 * (spentKcal - eatenKcal) - adapted) / 14;
    tissueKg += (eatenKcal - spentKcal) / KCAL_PER_KG;
  }
  return days;
}

function plateauKg(number: number): number {
  if (number < PLATEAU.from) return 0;
  const rising = (number - PLATEAU.from) / (PLATEAU.top - PLATEAU.from);
  const falling = 1 - (number - PLATEAU.top) / (2 * (PLATEAU.top - PLATEAU.from));
  return PLATEAU.kg * Math.min(rising, falling, 1);
}

function loggedDay(number: number, a: number, b: number, c: number): BodyDay['logged'] {
  const step = targetSteps.findLast((candidate) => candidate.fromDay <= number) ?? targetSteps[0];
  const weekday = isoWeekday(addDays(story.begins, number));
  const {
    p,
    c: carbohydrate,
    f,
  } = trainingWeekdays.some((one) => one === weekday) ? step.training : step.rest;
  const proteinG = roundTo(p + 4 * a, 0);
  const carbohydrateG = roundTo(carbohydrate + 12 * b, 0);
  const fatG = roundTo(f + 4 * c, 0);
  return {
    energyKcal: roundTo(4 * proteinG + 4 * carbohydrateG + 9 * fatG, 0),
    proteinG,
    carbohydrateG,
    fatG,
    sodiumMg: roundTo(2600 + 350 * a + 250 * c, 0),
  };
}

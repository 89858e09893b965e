import type { KilocaloriesPerDay, Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { narrow, openLimit, stepAtOrAbove, type Limit } from './limit.ts';
import { fatFloor, proteinFloor } from './macro-floors.ts';
import { narrowByOwn, type OwnLimits } from './own-limits.ts';
import { publishedLimits, type Sex } from './published-limits.ts';

export interface EnergyFloorInput {
  readonly sex: Sex;
  readonly massKg: Kilograms;
  /** Fat-free mass: body mass less fat. */
  readonly leanKg: Kilograms;
  /** Net energy of exercise, as logged: resting cost not counted twice. */
  readonly exerciseKcal: KilocaloriesPerDay;
  readonly own?: OwnLimits;
}

/**
 * The least daily energy the tool plans on average over a week (LIM-10): what a single day needs, and energy
 * availability, which is a matter of days rather than of one.
 */
export function dailyEnergyFloor(input: EnergyFloorInput): Limit {
  const { sex, leanKg, exerciseKcal, own = {} } = input;
  const availability = energyAvailabilityFloor(sex, own);
  const available: KilocaloriesPerDay = availability.present * leanKg + exerciseKcal;
  return narrow(singleDayFloor(input), {
    limit: publishedLimits.energyAvailability.limit,
    value: available,
    source: availability.tightest?.source ?? publishedLimits.energyAvailability[sex].source,
    words: `Nothing below ${stepAtOrAbove(available, 1)} kcal a day is planned: ${roundTo(leanKg, 1)} kg of fat-free mass at ${availability.present} kcal each, and ${roundTo(exerciseKcal, 0)} kcal of exercise.`,
  });
}

/** The least a single day is planned at (LIM-10): lowest intake by sex, protein and fat floors together, the own floor. */
export function singleDayFloor({
  sex,
  massKg,
  leanKg,
  own = {},
}: Omit<EnergyFloorInput, 'exerciseKcal'>): Limit {
  const lowest = publishedLimits.intake[sex].minKcalPerDay;
  const proteinG = proteinFloor(leanKg, own).present;
  const fatG = fatFloor(massKg, own).present;
  let floor = openLimit('Daily energy', 'kcal', 'floor');
  floor = narrow(floor, {
    limit: publishedLimits.intake.limit,
    value: lowest,
    source: publishedLimits.intake.source,
    words: `Nothing below ${lowest} kcal a day is planned: lower intakes belong under medical care.`,
  });
  floor = narrow(floor, {
    limit: publishedLimits.protein.limit,
    value: 4 * proteinG + 9 * fatG,
    source: publishedLimits.protein.source,
    words: `Nothing below ${stepAtOrAbove(4 * proteinG + 9 * fatG, 1)} kcal a day is planned: ${stepAtOrAbove(proteinG, 1)} g of protein and ${stepAtOrAbove(fatG, 1)} g of fat need it before any carbohydrate.`,
  });
  return narrowByOwn(
    floor,
    own.energyKcal?.min,
    (value) => `Nothing below ${value} kcal a day is planned: your own limit.`,
  );
}

/** Energy availability, kcal per kg of fat-free mass a day, that no plan goes below (LIM-11). */
export function energyAvailabilityFloor(sex: Sex, own: OwnLimits = {}): Limit {
  const { limit } = publishedLimits.energyAvailability;
  const { minKcalPerKgLean, source } = publishedLimits.energyAvailability[sex];
  const words =
    sex === 'female'
      ? `Energy availability stays at ${minKcalPerKgLean} kcal per kg of fat-free mass or above: below it, hormones, bone and the cycle suffer.`
      : `Energy availability stays at ${minKcalPerKgLean} kcal per kg of fat-free mass or above: men have no agreed threshold, but below it muscle, hormones and mood have suffered.`;
  const open = openLimit('Energy availability', 'kcal/kg', 'floor');
  return narrowByOwn(
    narrow(open, { limit, value: minKcalPerKgLean, source, words }),
    own.energyAvailability?.min,
    (value) => `Energy availability stays at ${value} kcal per kg of fat-free mass or above: your own limit.`,
  );
}

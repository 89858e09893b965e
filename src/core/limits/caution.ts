import type { Kilocalories, KilocaloriesPerDay, Kilograms, Percent } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { bodyFatFloor } from './body-fat-floor.ts';
import { energyAvailabilityFloor } from './daily-energy-floor.ts';
import type { Limit, LimitReason } from './limit.ts';
import { keeps, onSafeStep } from './limit.ts';
import { lossRateCeiling } from './loss-rate-ceiling.ts';
import { fatFloor, proteinFloor } from './macro-floors.ts';
import type { OwnLimits } from './own-limits.ts';
import { publishedLimits, type Sex } from './published-limits.ts';

/** A limit that present habits or the present course run against. `value` is the limit's, in its own unit. */
export interface Caution {
  readonly limit: string;
  readonly value: number;
  readonly source: string;
  readonly words: string;
}

/** What is eaten, done and lost now, on average over the last weeks or along the present course. Absent: not known. */
export interface Habits {
  readonly sex: Sex;
  readonly massKg: Kilograms;
  readonly fatKg: Kilograms;
  readonly energyKcal?: KilocaloriesPerDay;
  readonly exerciseKcal?: Kilocalories;
  readonly proteinG?: number;
  readonly fatG?: number;
  /** Tissue lost, percent of body mass a week; above zero is a loss. */
  readonly lossPercentPerWeek?: Percent;
  /** Energy drawn from the stores each day. */
  readonly deficitKcal?: KilocaloriesPerDay;
  /** Body fat the target asks for. */
  readonly targetBodyFatPercent?: Percent;
}

const REFERRAL = 'See a physician or a sports dietitian before going on like this.';

/** Every limit that habits run against, each with its sentence (LIM-30). */
export function cautionsFor(habits: Habits, own: OwnLimits = {}): Caution[] {
  return [
    ...targetCaution(habits, own),
    ...paceCaution(habits, own),
    ...availabilityCaution(habits, own),
    ...intakeCaution(habits),
    ...macroCautions(habits, own),
    ...fatDrawCaution(habits),
  ];
}

function against(
  limit: Limit,
  found: number | undefined,
  sentence: (reason: LimitReason, found: number) => string,
): Caution[] {
  const reason = limit.tightest;
  if (found === undefined || reason === undefined || keeps(limit, found)) return [];
  return [
    { limit: reason.limit, value: shown(limit), source: reason.source, words: sentence(reason, found) },
  ];
}

/** The limit's figure to a hundredth, rounded to the safe side. */
function shown(limit: Limit): number {
  return onSafeStep(limit, 0.01);
}

function targetCaution({ sex, targetBodyFatPercent }: Habits, own: OwnLimits): Caution[] {
  return against(
    bodyFatFloor(sex, own),
    targetBodyFatPercent,
    ({ words }, found) => `The target of ${found} % body fat is below what is planned here. ${words}`,
  );
}

function paceCaution({ lossPercentPerWeek }: Habits, own: OwnLimits): Caution[] {
  return against(
    lossRateCeiling(own),
    lossPercentPerWeek,
    ({ words }, found) => `The present course loses ${roundTo(found, 2)} % of body mass a week. ${words}`,
  );
}

function availabilityCaution(habits: Habits, own: OwnLimits): Caution[] {
  const { sex, massKg, fatKg, energyKcal, exerciseKcal = 0 } = habits;
  if (energyKcal === undefined) return [];
  return against(
    energyAvailabilityFloor(sex, own),
    (energyKcal - exerciseKcal) / (massKg - fatKg),
    ({ words }, found) =>
      `Energy availability is about ${roundTo(found, 1)} kcal per kg of fat-free mass. ${words} ${REFERRAL}`,
  );
}

function intakeCaution({ sex, energyKcal }: Habits): Caution[] {
  const { limit, source } = publishedLimits.intake;
  const { minKcalPerDay } = publishedLimits.intake[sex];
  if (energyKcal === undefined || energyKcal >= minKcalPerDay) return [];
  const words = `Intake is about ${roundTo(energyKcal, 0)} kcal a day; below ${minKcalPerDay} kcal it belongs under medical care. ${REFERRAL}`;
  return [{ limit, value: minKcalPerDay, source, words }];
}

function macroCautions(habits: Habits, own: OwnLimits): Caution[] {
  const { massKg, fatKg, proteinG, fatG } = habits;
  return [
    ...against(
      proteinFloor(massKg - fatKg, own),
      proteinG,
      ({ words }, found) => `Protein is about ${roundTo(found, 0)} g a day. ${words}`,
    ),
    ...against(
      fatFloor(massKg, own),
      fatG,
      ({ words }, found) => `Fat is about ${roundTo(found, 0)} g a day. ${words}`,
    ),
  ];
}

function fatDrawCaution({ fatKg, deficitKcal }: Habits): Caution[] {
  const { limit, cautionKcalPerKgFat, source } = publishedLimits.fatDraw;
  const most = cautionKcalPerKgFat * fatKg;
  if (deficitKcal === undefined || deficitKcal <= most) return [];
  const words = `The deficit is about ${roundTo(deficitKcal, 0)} kcal a day; ${roundTo(fatKg, 1)} kg of fat can give about ${roundTo(most, 0)}, so more of it comes from muscle. The figure is an estimate with a wide band.`;
  return [{ limit, value: cautionKcalPerKgFat, source, words }];
}

import type { Kilograms, Kilojoules } from '#core/units/quantities.ts';
import { toKilojoules } from '#core/units/energy.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { baselineFluidKg } from './baseline-fluid.ts';
import { fatPercentFromIndex } from './fat-from-index.ts';
import { wetGlycogenKg } from './glycogen-balance.ts';
import { type BodySize, restingMifflin } from './resting-energy-mifflin.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** Who the dynamic model is asked about. `activityLevel` is total over resting energy (PAL). */
export interface AdultEnergyPerson extends BodySize {
  readonly activityLevel: number;
  /** Measured fat, kg; by body-mass index where it is not known. */
  readonly fatKg?: Kilograms;
}

/** The body in balance before anything changes; energies kJ per day. */
export interface AdultEnergyBaseline {
  readonly massKg: Kilograms;
  readonly fatKg: Kilograms;
  /** Lean tissue without extracellular fluid, glycogen and its water. */
  readonly leanKg: Kilograms;
  readonly fluidKg: Kilograms;
  readonly glycogenKg: Kilograms;
  readonly restingKj: Kilojoules;
  readonly intakeKj: Kilojoules;
  /** delta of equation 9, kJ per kg and day. */
  readonly activityKjPerKg: number;
  /** K of equation 10, kJ per day. */
  readonly constantKj: Kilojoules;
}

/** Baseline of the dynamic model (hall-2011, equations 9 and 10). Adults from 18 years, PAL 1.4 to 2.4. */
export function adultEnergyBaseline(person: AdultEnergyPerson): Studied<AdultEnergyBaseline> {
  const { age, activityLevel } = person;
  return withinStudied(
    [
      { quantity: 'ageYears', found: age, low: 18, high: 100 },
      { quantity: 'activityLevel', found: activityLevel, low: 1.4, high: 2.4 },
    ],
    () => baselineOf(person),
  );
}

function baselineOf(person: AdultEnergyPerson): AdultEnergyBaseline {
  const { massKg, heightCm, sex, age, activityLevel } = person;
  const index = massKg / (heightCm / 100) ** 2;
  const fatKg = person.fatKg ?? (massKg * fatPercentFromIndex(sex, age, index)) / 100;
  const fluidKg = baselineFluidKg(person);
  const glycogenKg = ADULT_ENERGY.baselineGlycogenKg;
  const leanKg = massKg - fatKg - fluidKg - wetGlycogenKg(glycogenKg);
  // A day's energy and a rate per day are one number here.
  const restingKcal: number = restingMifflin(person);
  const restingKj = toKilojoules(restingKcal);
  const intakeKj = activityLevel * restingKj;
  const activityKjPerKg = (((1 - ADULT_ENERGY.thermicEffectShare) * activityLevel - 1) * restingKj) / massKg;
  const constantKj =
    intakeKj -
    ADULT_ENERGY.leanMaintenanceKjPerKgDay * leanKg -
    ADULT_ENERGY.fatMaintenanceKjPerKgDay * fatKg -
    activityKjPerKg * massKg;
  return { massKg, fatKg, leanKg, fluidKg, glycogenKg, restingKj, intakeKj, activityKjPerKg, constantKj };
}

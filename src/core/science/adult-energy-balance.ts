import type { Kilograms, Kilojoules, Milligrams } from '#core/units/quantities.ts';
import type { AdultEnergyBaseline } from './adult-energy-baseline.ts';
import { ADULT_ENERGY } from './adult-energy-parameters.ts';
import { forbesEnergyShare } from './energy-partition.ts';
import { fluidRate } from './extracellular-fluid.ts';
import { glycogenRate, wetGlycogenKg } from './glycogen-balance.ts';

/** The state of the dynamic model: fat, lean, glycogen, fluid (kg) and adaptive thermogenesis (kJ per day). */
export interface AdultEnergyState {
  readonly fatKg: Kilograms;
  readonly leanKg: Kilograms;
  readonly glycogenKg: Kilograms;
  readonly fluidKg: Kilograms;
  readonly adaptationKj: Kilojoules;
}

/** What is eaten and done on a day, as changes from baseline. */
export interface AdultEnergyDay {
  /** Metabolisable energy eaten, kJ per day. */
  readonly intakeKj: Kilojoules;
  /** Carbohydrate over its baseline. */
  readonly carbohydrateRatio: number;
  /** Carbohydrate energy at baseline, kJ per day. */
  readonly baselineCarbohydrateKj: Kilojoules;
  readonly sodiumChangeMg: Milligrams;
  /** Change of the activity cost delta, kJ per kg and day. */
  readonly activityChangeKjPerKg: number;
}

/** Rates per day of the five states, and expenditure. */
export interface AdultEnergyRates extends AdultEnergyState {
  readonly spentKj: Kilojoules;
}

/** Body mass, equation 1. */
export function adultMassKg({ fatKg, leanKg, fluidKg, glycogenKg }: AdultEnergyState): Kilograms {
  return fatKg + leanKg + fluidKg + wetGlycogenKg(glycogenKg);
}

/**
 * Equations 1 to 8 of hall-2011 in their explicit form: the cost of laying down tissue is moved to the left, so that
 * expenditure needs no iteration. `partition` answers the share of energy that goes to lean tissue (equation 6).
 */
export function adultEnergyRates(
  baseline: AdultEnergyBaseline,
  state: AdultEnergyState,
  day: AdultEnergyDay,
  partition: (fatKg: Kilograms) => number = forbesEnergyShare,
): AdultEnergyRates {
  const glycogen = glycogenRate(state.glycogenKg, {
    carbohydrateKjPerDay: day.carbohydrateRatio * day.baselineCarbohydrateKj,
    baselineCarbohydrateKjPerDay: day.baselineCarbohydrateKj,
  });
  const change = day.intakeKj - baseline.intakeKj;
  const atRest =
    baseline.constantKj +
    ADULT_ENERGY.fatMaintenanceKjPerKgDay * state.fatKg +
    ADULT_ENERGY.leanMaintenanceKjPerKgDay * state.leanKg +
    (baseline.activityKjPerKg + day.activityChangeKjPerKg) * adultMassKg(state) +
    ADULT_ENERGY.thermicEffectShare * change +
    state.adaptationKj;
  const toGlycogen = ADULT_ENERGY.glycogenDensityKjPerKg * glycogen;
  const lean = partition(state.fatKg);
  const deposition =
    1 +
    (ADULT_ENERGY.fatDepositionKjPerKg * (1 - lean)) / ADULT_ENERGY.fatDensityKjPerKg +
    (ADULT_ENERGY.leanDepositionKjPerKg * lean) / ADULT_ENERGY.leanDensityKjPerKg;
  const laidDown = (day.intakeKj - toGlycogen - atRest) / deposition;
  return {
    fatKg: ((1 - lean) * laidDown) / ADULT_ENERGY.fatDensityKjPerKg,
    leanKg: (lean * laidDown) / ADULT_ENERGY.leanDensityKjPerKg,
    glycogenKg: glycogen,
    fluidKg: fluidRate(state.fluidKg - baseline.fluidKg, {
      sodiumChangeMgPerDay: day.sodiumChangeMg,
      carbohydrateRatio: day.carbohydrateRatio,
    }),
    adaptationKj: (ADULT_ENERGY.adaptationShare * change - state.adaptationKj) / ADULT_ENERGY.adaptationDays,
    spentKj: day.intakeKj - toGlycogen - laidDown,
  };
}

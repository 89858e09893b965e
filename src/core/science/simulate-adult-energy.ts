import type { Kilograms, Kilojoules } from '#core/units/quantities.ts';
import type { AdultEnergyBaseline } from './adult-energy-baseline.ts';
import {
  type AdultEnergyDay,
  type AdultEnergyRates,
  adultEnergyRates,
  type AdultEnergyState,
  adultMassKg,
} from './adult-energy-balance.ts';
import { forbesEnergyShare } from './energy-partition.ts';

/** Where a course stands after so many days. */
export interface AdultEnergyPoint extends AdultEnergyState {
  readonly day: number;
  readonly massKg: Kilograms;
  /** Expenditure at that moment, kJ per day. */
  readonly spentKj: Kilojoules;
}

export interface AdultEnergyCourse {
  readonly days: number;
  /** What is eaten and done on day 0, 1, ...; constant within a day. */
  readonly dayAt: (day: number) => AdultEnergyDay;
  /** Runge-Kutta steps a day. */
  readonly stepsPerDay?: number;
  readonly partition?: (fatKg: Kilograms) => number;
}

/** Integrates the dynamic model from its baseline by the classical Runge-Kutta method; answers every whole day, day 0 first. */
export function simulateAdultEnergy(
  baseline: AdultEnergyBaseline,
  course: AdultEnergyCourse,
): AdultEnergyPoint[] {
  const { days, dayAt, stepsPerDay = 4, partition = forbesEnergyShare } = course;
  const { fatKg, leanKg, glycogenKg, fluidKg } = baseline;
  let state: AdultEnergyState = { fatKg, leanKg, glycogenKg, fluidKg, adaptationKj: 0 };
  const points: AdultEnergyPoint[] = [];
  for (let day = 0; ; day++) {
    const load = dayAt(day);
    const rates = (at: AdultEnergyState) => adultEnergyRates(baseline, at, load, partition);
    points.push({ ...state, day, massKg: adultMassKg(state), spentKj: rates(state).spentKj });
    if (day === days) return points;
    for (let step = 0; step < stepsPerDay; step++) state = rungeKutta(state, rates, 1 / stepsPerDay);
  }
}

/** An isocaloric start: the day that keeps the baseline, with so much of its energy as carbohydrate. */
export function levelDay(baseline: AdultEnergyBaseline, carbohydrateShare = 0.5): AdultEnergyDay {
  return {
    intakeKj: baseline.intakeKj,
    carbohydrateRatio: 1,
    baselineCarbohydrateKj: carbohydrateShare * baseline.intakeKj,
    sodiumChangeMg: 0,
    activityChangeKjPerKg: 0,
  };
}

/** The level day with its energy changed at an unchanged make-up of the food. */
export function changedDay(
  baseline: AdultEnergyBaseline,
  intakeChangeKj: Kilojoules,
  carbohydrateShare = 0.5,
): AdultEnergyDay {
  const intakeKj = baseline.intakeKj + intakeChangeKj;
  return {
    ...levelDay(baseline, carbohydrateShare),
    intakeKj,
    carbohydrateRatio: intakeKj / baseline.intakeKj,
  };
}

function rungeKutta(
  state: AdultEnergyState,
  rates: (at: AdultEnergyState) => AdultEnergyRates,
  step: number,
): AdultEnergyState {
  const first = rates(state);
  const second = rates(moved(state, first, step / 2));
  const third = rates(moved(state, second, step / 2));
  const fourth = rates(moved(state, third, step));
  const along = (key: keyof AdultEnergyState) =>
    state[key] + (step / 6) * (first[key] + 2 * second[key] + 2 * third[key] + fourth[key]);
  return {
    fatKg: along('fatKg'),
    leanKg: along('leanKg'),
    glycogenKg: along('glycogenKg'),
    fluidKg: along('fluidKg'),
    adaptationKj: along('adaptationKj'),
  };
}

function moved(state: AdultEnergyState, rates: AdultEnergyRates, step: number): AdultEnergyState {
  return {
    fatKg: state.fatKg + step * rates.fatKg,
    leanKg: state.leanKg + step * rates.leanKg,
    glycogenKg: state.glycogenKg + step * rates.glycogenKg,
    fluidKg: state.fluidKg + step * rates.fluidKg,
    adaptationKj: state.adaptationKj + step * rates.adaptationKj,
  };
}

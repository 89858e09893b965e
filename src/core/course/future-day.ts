import type { Kilocalories, Milligrams } from '#core/units/quantities.ts';

/** One day between now and the show, as planned: intake as it will be logged. */
export interface FutureDay {
  readonly date: string;
  readonly energyKcal: Kilocalories;
  readonly carbohydrateKcal: Kilocalories;
  /** NaN where nothing is known of it. */
  readonly sodiumMg: Milligrams;
  readonly cardioKcal: Kilocalories;
  /** Whether the intake is known (a row of the plan) or goes on as before, with the spread of habit. */
  readonly certain: boolean;
  /** How much of the water at the onset of menses and of creatine is there on this day, 0 to 1. */
  readonly cycleShare: number;
  readonly creatineShare: number;
}

/** How what is eaten strays from what is planned: learnt from the log, or believed before there is one. */
export interface Adherence {
  /** Logged over planned, on average. 1 where no plan is known. */
  readonly share: number;
  /** Spread of a week's average about it, a share of the plan. */
  readonly weekSd: number;
  /** Spread of one day about its week, a share of the plan. */
  readonly daySd: number;
  /** Cardio done over cardio planned, on average. */
  readonly cardioShare: number;
  readonly cardioSd: number;
}

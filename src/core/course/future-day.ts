import type { Milligrams } from '#core/units/quantities.ts';

/**
 * One day between now and the show, as planned: intake as it will be logged. Its energies are those of one day and
 * rates per day at once, so they carry neither flavour.
 */
export interface FutureDay {
  readonly date: string;
  readonly energyKcal: number;
  readonly carbohydrateKcal: number;
  /** NaN where nothing is known of it. */
  readonly sodiumMg: Milligrams;
  readonly cardioKcal: number;
  readonly basis: Basis;
  /** How much of the water at the onset of menses and of creatine is there on this day, 0 to 1. */
  readonly cycleShare: number;
  readonly creatineShare: number;
}

/**
 * Where a day's intake comes from: `known` is eaten as it stands; `planned` is meant, and strays by its average and its
 * spread; `habit` goes on as before, and strays by its spread alone.
 */
export type Basis = 'known' | 'planned' | 'habit';

/** How what is eaten strays from what is planned: learnt from the log, or believed before there is one. */
export interface Adherence {
  /** Logged over planned, on average. 1 where no plan is known. */
  readonly share: number;
  /** Spread of a week's average about it, a share of the plan. */
  readonly weekSd: number;
  /** How far the level itself wanders from one week to the next, a share of it. */
  readonly levelSd: number;
  /** Spread of one day about its week, a share of the plan. */
  readonly daySd: number;
  /** Cardio done over cardio planned, on average. */
  readonly cardioShare: number;
  readonly cardioSd: number;
}

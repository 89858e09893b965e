import { BALANCE, BALANCE_SIZE, dayBalance, type BodyReference } from '#core/body/day-balance.ts';
import { GLYCOGEN_WITH_WATER } from '#core/body/glycogen-water.ts';
import { waterShares } from '#core/body/moving-water.ts';
import { STATE, STATE_SIZE } from '#core/body/state-layout.ts';
import { cardioEnergy } from '#core/cycle/cardio-energy.ts';
import type { RandomStream } from '#core/random/random-stream.ts';
import { restingMifflin } from '#core/science/resting-energy-mifflin.ts';
import { addDays, isoWeekday } from '#core/units/civil-date.ts';
import { cardioOf } from './cardio.ts';
import { type LoggedDay, loggedFinely } from './logged-days.ts';
import { story } from './story.ts';

/** Her true body on a morning before food, which no scale and no method reads exactly. */
export interface TrueMorning {
  readonly fatKg: number;
  readonly leanKg: number;
  readonly glycogenKg: number;
  /** Water that salt and carbohydrate move, above or below baseline. */
  readonly fluidKg: number;
  /** Water of the cycle and of sore muscle. */
  readonly otherWaterKg: number;
  readonly massKg: number;
}

/** What really went in and out on a day, true kilocalories. */
export interface TrueEnergy {
  readonly eatenKcal: number;
  readonly spentKcal: number;
}

/** A body that lives: how it stands, and a day that passes. */
export interface TrueBody {
  morning(): TrueMorning;
  /** Gut content above or below its mean: on the scale, not of the body. */
  gutKg(): number;
  live(logged: LoggedDay): TrueEnergy;
}

/** Days of her cycle. */
export const CYCLE_DAYS = 29;

/** She as she began. All of it invented, inside what the tool believes of anyone. */
const START = { massKg: 66.4, fatKg: 14.9, glycogenKg: 0.49, fluidKg: -0.3 } as const;
/** Of what she eats a twentieth is forgotten, as people do; the rest are multiples of the published model's answers. */
const TRAITS = {
  baselineKcal: 2150,
  trueShare: 1.05,
  partition: 0.35,
  carbohydrateFluid: 0.8,
  sodiumFluid: 0.7,
  cardioShare: 0.9,
  cycleKg: 0.7,
} as const;
/** How far single days stray: a share of the log, of expenditure, kg of water and gut; and what is left a day later. */
const NOISE = {
  log: 0.05,
  finely: 0.02,
  carbohydrate: 0.04,
  wobbleKcal: 80,
  wobbleKept: 0.74,
  waterKg: 0.15,
  waterKept: 0.85,
  gutKg: 0.22,
  gutKept: 0.57,
} as const;
/**
 * The plateau that is real: in the dark weeks she walks less without noticing, and at weekends shared dishes are guessed
 * too low. It ends with the correction, when she weighs them again; the steps come back as the days grow longer.
 */
const DARK = { from: 41, deep: 46, until: 63, light: 84, kcal: -170, stays: 0.5, guessedLow: 0.25 } as const;
/** Two days of carrying hulls up the slip leave water in sore muscle: kg on the mornings after. */
const SORE = { days: [104, 105], kg: [0.45, 0.25] } as const;

const beganAge = Number(story.begins.slice(0, 4)) - story.birthYear;
const leanKg = START.massKg - START.fatKg - GLYCOGEN_WITH_WATER * START.glycogenKg - START.fluidKg;

export const reference: BodyReference = {
  fatKg: START.fatKg,
  leanKg,
  massKg: START.massKg,
  restingKcal: restingMifflin({
    sex: story.sex,
    massKg: START.massKg,
    heightCm: story.heightCm,
    age: beganAge,
  }),
};

const onsets = Array.from({ length: Math.ceil((7 * story.weeks + 1) / CYCLE_DAYS) }, (_, turn) => ({
  date: addDays(story.begins, CYCLE_DAYS * turn),
  cycleDay: 1,
}));
const cycleShare = waterShares(onsets, undefined).cycle;

/** The body on the first morning; it lives by the tool's own model of a day, and what the model only knows by its spread is drawn. */
export function trueBody(chance: RandomStream): TrueBody {
  const state = startState();
  const results = new Float64Array(BALANCE_SIZE);
  let number = 0;
  const swing = (place: number, sd: number, kept: number): void => {
    state[place] = kept * at(state, place) + sd * Math.sqrt(1 - kept * kept) * chance.normal();
  };
  return {
    morning: () => standing(state, number),
    gutKg: () => at(state, STATE.gut),
    live(logged) {
      const day = addDays(story.begins, number);
      const cardioKcal = cardioEnergy(cardioOf(day), standing(state, number).massKg)?.netKcal ?? 0;
      const { energyKcal, carbohydrateG, sodiumMg } = logged;
      const load = { energyKcal, carbohydrateKcal: 4 * carbohydrateG, sodiumMg, cardioKcal };
      const logError = errorOn(number, day, chance);
      state[STATE.drift] = driftOn(number);
      dayBalance(state, 0, reference, load, logError, NOISE.carbohydrate * chance.normal(), results);
      const { fat, lean, glycogen, fluid, adaptation, spent } = BALANCE;
      for (const [place, from] of [
        [STATE.fat, fat],
        [STATE.lean, lean],
        [STATE.glycogen, glycogen],
        [STATE.fluid, fluid],
        [STATE.adaptation, adaptation],
      ] as const)
        state[place] = at(results, from);
      number += 1;
      swing(STATE.wobble, NOISE.wobbleKcal, NOISE.wobbleKept);
      swing(STATE.slowWater, NOISE.waterKg, NOISE.waterKept);
      swing(STATE.gut, NOISE.gutKg, NOISE.gutKept);
      const sore = SORE.days.findIndex((one) => one === number);
      state[STATE.slowWater] = at(state, STATE.slowWater) + (SORE.kg[sore] ?? 0);
      return {
        eatenKcal: TRAITS.trueShare * energyKcal * (1 + logError),
        spentKcal: TRAITS.trueShare * at(results, spent),
      };
    },
  };
}

function startState(): Float64Array {
  const state = new Float64Array(STATE_SIZE);
  state[STATE.fat] = START.fatKg;
  state[STATE.lean] = leanKg;
  state[STATE.glycogen] = START.glycogenKg;
  state[STATE.fluid] = START.fluidKg;
  state[STATE.baseline] = TRAITS.baselineKcal;
  state[STATE.trueShare] = TRAITS.trueShare;
  state[STATE.partition] = TRAITS.partition;
  state[STATE.carbohydrateFluid] = TRAITS.carbohydrateFluid;
  state[STATE.sodiumFluid] = TRAITS.sodiumFluid;
  state[STATE.cardioShare] = TRAITS.cardioShare;
  return state;
}

function standing(state: Float64Array, number: number): TrueMorning {
  const [fatKg, lean, glycogenKg, fluidKg] = [
    at(state, STATE.fat),
    at(state, STATE.lean),
    at(state, STATE.glycogen),
    at(state, STATE.fluid),
  ];
  const otherWaterKg =
    at(state, STATE.slowWater) + TRAITS.cycleKg * cycleShare(addDays(story.begins, number));
  const massKg = fatKg + lean + GLYCOGEN_WITH_WATER * glycogenKg + fluidKg + otherWaterKg;
  return { fatKg, leanKg: lean, glycogenKg, fluidKg, otherWaterKg, massKg };
}

function errorOn(number: number, day: string, chance: RandomStream): number {
  const weekend = isoWeekday(day) >= 6;
  const guessed = weekend && number >= DARK.from && number < DARK.until ? DARK.guessedLow : 0;
  return guessed + (loggedFinely(number) ? NOISE.finely : NOISE.log) * chance.normal();
}

function driftOn(number: number): number {
  const { from, deep, until, light, kcal, stays } = DARK;
  const falling = Math.min(1, Math.max(0, (number - from) / (deep - from)));
  const rising = Math.min(1, Math.max(0, (number - until) / (light - until)));
  return kcal * falling * (1 - (1 - stays) * rising);
}

function at(values: Float64Array, place: number): number {
  return values[place] ?? 0;
}

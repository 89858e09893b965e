import type { RandomStream } from '#core/random/random-stream.ts';
import { type AthleteWorld, drawn } from './athlete-world.ts';
import type { EatenDay } from './simulated-plan.ts';

/**
 * A body that lives by the published dynamic model (Hall et al. 2011, equations 1 to 10) in kilocalories, written
 * out again here and stepped eight times a day by Euler's rule, so that a slip in the estimator's own closed forms
 * cannot hide in the simulator. Around it stand the things the model does not know.
 */
export interface Body {
  readonly baselineKcal: number;
  readonly loggedShare: number;
  readonly traits: Traits;
  readonly start: { readonly fatKg: number; readonly leanKg: number; readonly massKg: number };
  fatKg: number;
  leanKg: number;
  glycogenKg: number;
  fluidKg: number;
  adaptationKcal: number;
  wobbleKcal: number;
  driftKcal: number;
  slowWaterKg: number;
  gutKg: number;
  day: number;
}

interface Traits {
  readonly activityPerKg: number;
  readonly partition: number;
  readonly constantPartition: boolean;
  readonly wobbleSdKcal: number;
  readonly wobbleKept: number;
  readonly driftKcal: number;
  readonly adaptationShare: number;
  readonly cardioKept: number;
  readonly gutSdKg: number;
  readonly slowWaterSdKg: number;
  readonly waterAnswer: number;
  readonly cycleKg: number;
  readonly cycleDays: number;
  readonly cyclePhase: number;
  readonly baselineCarbohydrateKcal: number;
}

export interface BodyTruth {
  readonly before: { readonly massKg: number; readonly fatKg: number; readonly gutKg: number };
  readonly after: { readonly massKg: number; readonly fatKg: number; readonly gutKg: number };
  readonly spentKcal: number;
}

export interface BodyStart {
  readonly male: boolean;
  readonly heightCm: number;
  readonly age: number;
  readonly massKg: number;
  readonly fatShare: number;
}

const STEPS = 8;

export function newBody(world: AthleteWorld, stream: RandomStream, start: BodyStart): Body {
  const resting = 9.99 * start.massKg + 6.25 * start.heightCm - 4.92 * start.age + (start.male ? 5 : -161);
  const activity = drawn(stream, world.activityFactor);
  const baselineKcal = activity * resting;
  const fatKg = start.fatShare * start.massKg;
  const leanKg = start.massKg - fatKg - 3.7 * 0.5;
  const traits: Traits = {
    activityPerKg: (0.9 * baselineKcal - resting) / start.massKg,
    constantPartition: stream.uniform() < world.constantPartitionShare,
    partition: drawn(stream, world.partition),
    wobbleSdKcal: drawn(stream, world.wobbleSdKcal),
    wobbleKept: drawn(stream, world.wobbleKept),
    driftKcal: drawn(stream, world.driftKcal),
    adaptationShare: drawn(stream, world.adaptationShare),
    cardioKept: drawn(stream, world.cardioKept),
    gutSdKg: drawn(stream, world.gutSdKg),
    slowWaterSdKg: drawn(stream, world.slowWaterSdKg),
    waterAnswer: drawn(stream, world.waterAnswer),
    cycleKg: start.male ? 0 : drawn(stream, world.cycleKg),
    cycleDays: 26 + stream.integer(6),
    cyclePhase: stream.integer(28),
    baselineCarbohydrateKcal: baselineKcal * drawn(stream, [0.4, 0.52]),
  };
  return {
    baselineKcal,
    loggedShare: drawn(stream, world.loggedShare),
    traits,
    start: { fatKg, leanKg, massKg: start.massKg },
    fatKg,
    leanKg,
    glycogenKg: 0.5,
    fluidKg: 0,
    adaptationKcal: 0,
    wobbleKcal: traits.wobbleSdKcal * stream.normal(),
    driftKcal: 0,
    slowWaterKg: 0,
    gutKg: 0,
    day: 0,
  };
}

/** Lives one day; answers how the body stood before and after it and what it spent. */
export function livedDay(body: Body, eaten: EatenDay, stream: RandomStream): BodyTruth {
  const { traits } = body;
  const before = stand(body);
  const swing = (sd: number, kept: number) => sd * Math.sqrt(1 - kept * kept) * stream.normal();
  body.wobbleKcal = body.wobbleKcal * traits.wobbleKept + swing(traits.wobbleSdKcal, traits.wobbleKept);
  body.driftKcal += traits.driftKcal * stream.normal();
  let spentKcal = 0;
  for (let step = 0; step < STEPS; step++) spentKcal += livedPart(body, eaten, 1 / STEPS);
  body.slowWaterKg = body.slowWaterKg * 0.85 + swing(traits.slowWaterSdKg, 0.85);
  body.gutKg = body.gutKg * 0.6 + swing(traits.gutSdKg, 0.6);
  body.day += 1;
  return { before, after: stand(body), spentKcal };
}

function livedPart(body: Body, eaten: EatenDay, dt: number): number {
  const { traits, start } = body;
  const carbohydrate = 4 * eaten.carbohydrateG;
  const drain = traits.baselineCarbohydrateKcal / 0.25;
  const glycogenRate = (carbohydrate - drain * body.glycogenKg ** 2) / 4207;
  const fluidRate =
    (traits.waterAnswer * (eaten.sodiumMg - 4200) -
      3000 * body.fluidKg -
      traits.waterAnswer * 4000 * (1 - carbohydrate / traits.baselineCarbohydrateKcal)) /
    3220;
  const change = eaten.energyKcal - body.baselineKcal;
  const tissueMassKg = body.fatKg + body.leanKg - start.fatKg - start.leanKg;
  const atRest =
    body.baselineKcal +
    3.107 * (body.fatKg - start.fatKg) +
    21.99 * (body.leanKg - start.leanKg) +
    traits.activityPerKg * tissueMassKg +
    0.1 * change +
    body.adaptationKcal +
    traits.cardioKept * eaten.cardioKcal +
    body.wobbleKcal +
    body.driftKcal;
  const partition = leanEnergyShare(body);
  const laidDown =
    (eaten.energyKcal - 4207 * glycogenRate - atRest) /
    (1 + (179.3 * (1 - partition)) / 9441 + (229.4 * partition) / 1816);
  body.fatKg = Math.max(1, body.fatKg + (dt * (1 - partition) * laidDown) / 9441);
  body.leanKg += (dt * partition * laidDown) / 1816;
  body.glycogenKg += dt * glycogenRate;
  body.fluidKg += dt * fluidRate;
  body.adaptationKcal += (dt * (traits.adaptationShare * change - body.adaptationKcal)) / 14;
  return dt * (eaten.energyKcal - 4207 * glycogenRate - laidDown);
}

function leanEnergyShare(body: Body): number {
  const { partition, constantPartition } = body.traits;
  if (constantPartition) {
    const lean = Math.min(0.5, 0.4 * partition);
    return (lean * 1816) / (lean * 1816 + (1 - lean) * 9441);
  }
  const scaled = 2.001 * partition;
  return scaled / (scaled + body.fatKg);
}

function stand(body: Body): BodyTruth['before'] {
  const { traits } = body;
  const phase = (body.day + traits.cyclePhase) % traits.cycleDays;
  const fromOnset = Math.min(phase, traits.cycleDays - phase);
  const cycleKg = traits.cycleKg * Math.exp(-0.5 * (fromOnset / 4) ** 2);
  return {
    massKg: body.fatKg + body.leanKg + 3.7 * body.glycogenKg + body.fluidKg + body.slowWaterKg + cycleKg,
    fatKg: body.fatKg,
    gutKg: body.gutKg,
  };
}

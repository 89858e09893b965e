import { randomStream, type RandomStream } from '#core/random/random-stream.ts';
import { drawn, type Range } from './athlete-world.ts';

/** What may differ between simulated lifters; a draw is uniform over a closed range. None is fitted to anyone. */
export interface LifterWorld {
  readonly name: string;
  readonly weeks: Range;
  readonly sessionsAWeek: Range;
  /** Change of strength, percent a week, before and during the preparation. */
  readonly trendBefore: Range;
  readonly trendDuring: Range;
  /** Wander of strength, percent per square root of a week. */
  readonly wander: Range;
  /** Form of the day, percent; heavy-tailed. */
  readonly form: Range;
  /** Loss by a set taken to failure, percent; part of it comes back with rest. */
  readonly fatigue: Range;
  /** Repetitions possible at 75 % of the maximum. */
  readonly repsAt75: Range;
  /** Whole repetitions more or less than strength would have it, standard deviation. */
  readonly repsNoise: Range;
  /** What is felt to be left: bias in repetitions, error near failure, error per repetition left. */
  readonly reserveBias: Range;
  readonly reserveError: Range;
  readonly reserveErrorPerRep: Range;
  readonly reserveMissing: Range;
  readonly targetReserve: Range;
  /** Share of sets typed wrong. */
  readonly slips: number;
  readonly lostKgAWeek: Range;
}

export const trainedWorld: LifterWorld = {
  name: 'trained',
  weeks: [18, 26],
  sessionsAWeek: [1, 2],
  trendBefore: [0, 0.4],
  trendDuring: [-0.7, 0.1],
  wander: [0.3, 1.2],
  form: [1, 3],
  fatigue: [1.5, 4],
  repsAt75: [8, 14],
  repsNoise: [0.2, 0.6],
  reserveBias: [-0.5, 0.7],
  reserveError: [0.3, 0.7],
  reserveErrorPerRep: [0.15, 0.45],
  reserveMissing: [0, 0.5],
  targetReserve: [0, 2.5],
  slips: 0.003,
  lostKgAWeek: [0.2, 0.8],
};

/** Rough logs: reserve seldom said and badly felt, form that swings, slips of the thumb. */
export const roughWorld: LifterWorld = {
  ...trainedWorld,
  name: 'rough',
  form: [2, 4.5],
  reserveBias: [-1, 1.5],
  reserveMissing: [0.4, 1],
  repsNoise: [0.4, 1],
  slips: 0.015,
};

/** Regular lifters who train to failure and note it. */
export const tidyWorld: LifterWorld = {
  ...trainedWorld,
  name: 'tidy',
  form: [0.7, 2],
  reserveBias: [-0.2, 0.2],
  reserveMissing: [0, 0.1],
  targetReserve: [0, 1],
  slips: 0,
};

export const lifterWorlds: readonly LifterWorld[] = [trainedWorld, roughWorld, tidyWorld];

export interface SimulatedSet {
  /** Day of the log, from 0. */
  readonly day: number;
  readonly session: number;
  /** Place in the session, from 0. */
  readonly place: number;
  readonly loadKg: number;
  readonly reps: number;
  readonly rir: number | undefined;
  readonly restSeconds: number | undefined;
  readonly massKg: number;
  /** True whole repetitions to failure at the load as loaded, which the log never shows. */
  readonly couldReps: number;
  /** True one-repetition maximum of the day, fresh. */
  readonly oneRepKg: number;
  readonly typedWrong: boolean;
}

export interface SimulatedLifter {
  readonly seed: number;
  readonly world: string;
  readonly sets: readonly SimulatedSet[];
  /** Day on which the preparation begins. */
  readonly preparationDay: number;
}

/** Families of the repetition curve, each bent so that a lifter has their own repetitions at 75 %. */
type Curve = (share: number) => number;
const CURVES: readonly ((at75: number) => Curve)[] = [
  // Power of a line: share = (1 + (r - 1) / 30)^-k.
  (at75) => {
    const bend = Math.log(1 / 0.75) / Math.log(1 + (at75 - 1) / 30);
    return (share) => 1 + 30 * (share ** (-1 / bend) - 1);
  },
  // Straight line in repetitions.
  (at75) => (share) => 1 + ((1 - share) / 0.25) * (at75 - 1),
  // Exponential that levels off at 45 %.
  (at75) => {
    const rate = -Math.log((0.75 - 0.45) / 0.55) / (at75 - 1);
    return (share) => (share <= 0.46 ? 60 : 1 - Math.log((share - 0.45) / 0.55) / rate);
  },
];

interface Nature {
  readonly curve: Curve;
  readonly fatigue: number;
  readonly recovers: number;
  readonly form: number;
  readonly repsNoise: number;
  readonly reserveBias: number;
  readonly reserveError: number;
  readonly reserveErrorPerRep: number;
  readonly reserveMissing: number;
  readonly targetReserve: number;
  readonly stepKg: number;
  readonly repsRange: readonly [number, number];
  readonly workingSets: number;
  readonly backOffShare: number;
  readonly slips: number;
}

/** One lifter's log of one exercise over base weeks and a preparation. Same world and seed, same log. */
export function simulateLifter(world: LifterWorld, seed: number): SimulatedLifter {
  const stream = randomStream(seed, `lifter ${world.name}`);
  const nature = natureOf(world, stream);
  const weeks = Math.round(drawn(stream, world.weeks));
  const preparationDay = 7 * 6;
  const gapDays = 7 / drawn(stream, world.sessionsAWeek);
  const [before, during] = [drawn(stream, world.trendBefore), drawn(stream, world.trendDuring)];
  const wander = drawn(stream, world.wander) / 100 / Math.sqrt(7);
  const lost = drawn(stream, world.lostKgAWeek) / 7;
  let massKg = 70 + 35 * stream.uniform();
  let strength = Math.log(40 + 160 * stream.uniform());
  const plan = { loadKg: roundTo(0.72 * Math.exp(strength), nature.stepKg) };
  const sets: SimulatedSet[] = [];
  let session = 0;
  let nextDay = 0;
  for (let day = 0; day < 7 * weeks; day++) {
    const preparing = day >= preparationDay;
    strength += (preparing ? during : before) / 700 + wander * stream.normal();
    if (preparing) massKg -= lost;
    if (day < nextDay) continue;
    sets.push(...trainOnce(stream, nature, plan, { day, session, massKg: roundTo(massKg, 0.1), strength }));
    session += 1;
    // Now and then a session is missed or a week is travelled.
    const pause = stream.uniform() < 0.04 ? 7 : 0;
    nextDay = day + Math.max(2, Math.round(gapDays + 0.8 * stream.normal())) + pause;
  }
  return { seed, world: world.name, sets, preparationDay };
}

function natureOf(world: LifterWorld, stream: RandomStream): Nature {
  const curve = CURVES[stream.integer(CURVES.length)] ?? CURVES[0];
  const low = 5 + stream.integer(6);
  if (!curve) throw new Error('no curve');
  return {
    curve: curve(drawn(stream, world.repsAt75)),
    fatigue: drawn(stream, world.fatigue) / 100,
    recovers: 0.3 + 0.5 * stream.uniform(),
    form: drawn(stream, world.form) / 100,
    repsNoise: drawn(stream, world.repsNoise),
    reserveBias: drawn(stream, world.reserveBias),
    reserveError: drawn(stream, world.reserveError),
    reserveErrorPerRep: drawn(stream, world.reserveErrorPerRep),
    reserveMissing: drawn(stream, world.reserveMissing),
    targetReserve: drawn(stream, world.targetReserve),
    stepKg: [1, 2.5, 2.5, 5][stream.integer(4)] ?? 2.5,
    repsRange: [low, low + 2 + stream.integer(4)],
    workingSets: 2 + stream.integer(3),
    backOffShare: stream.uniform() < 0.5 ? 1 : 0.88,
    slips: world.slips,
  };
}

/** A session: straight sets or a top set with back-off sets; the load follows double progression. */
function trainOnce(
  stream: RandomStream,
  nature: Nature,
  plan: { loadKg: number },
  today: { day: number; session: number; massKg: number; strength: number },
): SimulatedSet[] {
  const heavy =
    1 / Math.sqrt(Math.max(0.15, (stream.normal() ** 2 + stream.normal() ** 2 + stream.normal() ** 2) / 3));
  const form = nature.form * stream.normal() * Math.min(2.5, heavy) * 0.85;
  const sets: SimulatedSet[] = [];
  let tired = 0;
  for (let place = 0; place < nature.workingSets; place++) {
    const restSeconds = 60 * (1 + stream.integer(4));
    tired *= 1 - nature.recovers * (1 - Math.exp(-restSeconds / 180)) * 0.4;
    const loadKg = place === 0 ? plan.loadKg : roundTo(nature.backOffShare * plan.loadKg, nature.stepKg);
    const share = loadKg / Math.exp(today.strength + form - tired);
    const could = Math.max(0, Math.floor(nature.curve(share) + nature.repsNoise * stream.normal()));
    const set = liftSet(stream, nature, could);
    tired += nature.fatigue * Math.exp(-(could - set.reps) / 3);
    const wrong = stream.uniform() < nature.slips;
    sets.push({
      day: today.day,
      session: today.session,
      place,
      loadKg: wrong ? roundTo(loadKg * 2.2046, 0.5) : loadKg,
      reps: set.reps,
      rir: set.rir,
      restSeconds: stream.uniform() < 0.7 ? restSeconds : undefined,
      massKg: today.massKg,
      couldReps: could,
      oneRepKg: Math.exp(today.strength),
      typedWrong: wrong,
    });
  }
  progress(stream, nature, plan, sets[0]?.reps ?? 0);
  return sets;
}

/** Repetitions until the reserve felt is the one aimed at, and what is noted of it. */
function liftSet(
  stream: RandomStream,
  nature: Nature,
  could: number,
): { reps: number; rir: number | undefined } {
  const aim = Math.max(0, Math.round(nature.targetReserve + 0.6 * stream.normal()));
  const felt =
    nature.reserveBias +
    nature.reserveError * stream.normal() +
    nature.reserveErrorPerRep * aim * stream.normal();
  const left = aim === 0 ? 0 : Math.max(0, Math.round(aim - felt));
  const reps = Math.max(could === 0 ? 0 : 1, could - left);
  const noted = Math.max(0, aim + (reps === could ? Math.min(0, stream.integer(2) - 1) : 0));
  return { reps, rir: stream.uniform() < nature.reserveMissing ? undefined : noted };
}

function progress(stream: RandomStream, nature: Nature, plan: { loadKg: number }, reps: number): void {
  const [low, high] = nature.repsRange;
  if (reps >= high) plan.loadKg += nature.stepKg;
  else if (reps < low) plan.loadKg = Math.max(nature.stepKg, roundTo(0.95 * plan.loadKg, nature.stepKg));
  else if (stream.uniform() < 0.08)
    plan.loadKg = Math.max(nature.stepKg, roundTo(0.92 * plan.loadKg, nature.stepKg));
}

function roundTo(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toFixed(4));
}

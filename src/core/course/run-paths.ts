import { BELIEFS } from '#core/body/beliefs.ts';
import {
  BALANCE,
  BALANCE_SIZE,
  type BodyReference,
  type DayLoad,
  dayBalance,
} from '#core/body/day-balance.ts';
import { STATE, STATE_SIZE } from '#core/body/state-layout.ts';
import type { Starts } from './draw-starts.ts';
import type { Adherence, Basis, FutureDay } from './future-day.ts';
import { POOL_BITS, POOL_SIZE } from './normal-pool.ts';

const MASK = POOL_SIZE - 1;
/** Draws of one day, each at a place of its own, so that two plans meet the same chance on the same day. */
const DRAW = {
  log: 0,
  carbohydrate: 1,
  fluid: 2,
  slow: 3,
  drift: 4,
  wobble: 5,
  day: 6,
  week: 7,
  partition: 8,
  level: 9,
} as const;
const DRAWS = 10;
/** How much of a week's straying from the plan is left a week later. Common practice, no source. */
const WEEK_KEPT = 0.6;
const WEEK_NEW = lasting(WEEK_KEPT);
/** Least fat a path may hold, a share of lean tissue: below it no model is tested and no one lives. */
const LEAST_FAT_SHARE = 0.02;
/** A day strays to no less than this share of its plan. */
const LEAST_STRAY = 0.2;

export interface Run {
  /** Paths run: the first so many of the starts. */
  readonly paths: number;
  /** Indices of future days on which the paths are looked at, ascending; -1 is the start. */
  readonly looks: readonly number[];
  /** [look][path] one after the other: whole-body mass, fat, and tissue (mass without glycogen and moving water). */
  readonly massKg: Float64Array;
  readonly fatKg: Float64Array;
  readonly tissueKg: Float64Array;
}

export interface RunInput {
  readonly starts: Starts;
  readonly days: readonly FutureDay[];
  readonly adherence: Adherence;
  readonly pool: Float64Array;
  readonly paths: number;
  readonly looks: readonly number[];
}

/**
 * Lets every path live through the days to come: the same model of a day that the estimate uses, its own parameters,
 * the noise the estimate believes in, and the straying from the plan the log has shown. Two runs on the same pool
 * meet the same chance, so that their difference is that of the plans alone (CRS-03).
 */
export function runPaths(input: RunInput): Run {
  const { starts, paths, looks } = input;
  const size = looks.length * paths;
  const run: Run = {
    paths,
    looks,
    massKg: new Float64Array(size),
    fatKg: new Float64Array(size),
    tissueKg: new Float64Array(size),
  };
  const state = new Float64Array(STATE_SIZE);
  for (let path = 0; path < paths; path++) {
    state.set(starts.states.subarray(path * STATE_SIZE, (path + 1) * STATE_SIZE));
    livePath(input, run, path, state);
  }
  return run;
}

/** What one path carries through its days besides its state. */
interface Path {
  readonly state: Float64Array;
  readonly reference: BodyReference;
  /** Mirrored pairs read the same draws with opposite sign. */
  readonly sign: number;
  /** Where in the pool the path's draws begin. */
  readonly from: number;
  readonly driftSd: number;
  readonly slowSd: number;
  readonly wobbleSd: number;
  readonly cardioShare: number;
  /** How far this week strays from the plan, in standard deviations; how far the level has wandered, a share. */
  week: number;
  level: number;
}

function livePath(input: RunInput, run: Run, index: number, state: Float64Array): void {
  const { days, looks } = input;
  const path = setOut(input, index, state);
  const beforeFood = input.starts.beforeFood[input.starts.members[index] ?? 0] ?? false;
  let look = 0;
  for (; looks[look] === -1; look++) record(run, look, index, state, days[0]);
  for (let d = 0; d < days.length && look < looks.length; d++) {
    const day = days[d];
    if (day === undefined) return;
    const looked = looks[look] === d;
    if (looked && beforeFood) record(run, look, index, state, day);
    liveDay(input, path, day, d);
    if (looked && !beforeFood) record(run, look, index, state, day);
    if (looked) look += 1;
  }
}

function setOut({ starts, adherence, pool }: RunInput, index: number, state: Float64Array): Path {
  const member = starts.members[index] ?? 0;
  const reference = starts.references[member];
  if (reference === undefined) throw new RangeError(`path ${index} belongs to no member`);
  const sign = index % 2 === 0 ? 1 : -1;
  const from = Math.imul((index >> 1) + 1, 0x9e3779b1) >>> (32 - POOL_BITS);
  return {
    state,
    reference,
    sign,
    from,
    driftSd: (starts.driftSdKcal[member] ?? 0) * lasting(BELIEFS.driftKeptPerDay),
    slowSd: (starts.slowWaterSdKg[member] ?? 0) * lasting(BELIEFS.slowWater.kept),
    wobbleSd: BELIEFS.wobble.share * get(state, STATE.baseline) * lasting(BELIEFS.wobble.kept),
    cardioShare: Math.max(
      0,
      adherence.cardioShare + sign * adherence.cardioSd * get(pool, (from - 1) & MASK),
    ),
    week: 0,
    level: 0,
  };
}

const load: DayLoad = { energyKcal: 0, carbohydrateKcal: 0, sodiumMg: 0, cardioKcal: 0 };
const out = new Float64Array(BALANCE_SIZE);

function liveDay({ adherence, pool }: RunInput, path: Path, day: FutureDay, d: number): void {
  const { state, sign } = path;
  const first = path.from + d * DRAWS;
  if (d % 7 === 0) {
    path.week = WEEK_KEPT * path.week + WEEK_NEW * sign * get(pool, (first + DRAW.week) & MASK);
    path.level += adherence.levelSd * sign * get(pool, (first + DRAW.level) & MASK);
  }
  const stray = strayOf(day.basis, adherence, path, sign * get(pool, (first + DRAW.day) & MASK));
  load.energyKcal = day.energyKcal * stray;
  load.carbohydrateKcal = day.carbohydrateKcal * stray;
  load.sodiumMg = day.sodiumMg;
  load.cardioKcal = day.basis === 'known' ? day.cardioKcal : day.cardioKcal * path.cardioShare;
  const logError = BELIEFS.logErrorShare * sign * get(pool, (first + DRAW.log) & MASK);
  const carbohydrateError =
    BELIEFS.carbohydrateErrorShare * sign * get(pool, (first + DRAW.carbohydrate) & MASK);
  dayBalance(state, 0, path.reference, load, logError, carbohydrateError, out);
  const fluidSd = Number.isNaN(day.sodiumMg) ? BELIEFS.fluidNoiseWithoutSodiumKg : BELIEFS.fluidNoiseKg;
  const leanKg = get(out, BALANCE.lean);
  state[STATE.fat] = Math.max(get(out, BALANCE.fat), LEAST_FAT_SHARE * leanKg);
  state[STATE.lean] = leanKg;
  state[STATE.glycogen] = get(out, BALANCE.glycogen);
  state[STATE.fluid] = get(out, BALANCE.fluid) + fluidSd * sign * get(pool, (first + DRAW.fluid) & MASK);
  state[STATE.adaptation] = get(out, BALANCE.adaptation);
  state[STATE.slowWater] =
    BELIEFS.slowWater.kept * get(state, STATE.slowWater) +
    path.slowSd * sign * get(pool, (first + DRAW.slow) & MASK);
  state[STATE.partition] =
    get(state, STATE.partition) + BELIEFS.partitionWalk * sign * get(pool, (first + DRAW.partition) & MASK);
  state[STATE.drift] =
    BELIEFS.driftKeptPerDay * get(state, STATE.drift) +
    path.driftSd * sign * get(pool, (first + DRAW.drift) & MASK);
  state[STATE.wobble] =
    BELIEFS.wobble.kept * get(state, STATE.wobble) +
    path.wobbleSd * sign * get(pool, (first + DRAW.wobble) & MASK);
}

/** What is eaten over what the day says. */
function strayOf(basis: Basis, adherence: Adherence, { week, level: wandered }: Path, day: number): number {
  if (basis === 'known') return 1;
  const level = basis === 'planned' ? adherence.share : 1;
  return Math.max(LEAST_STRAY, level + wandered + adherence.weekSd * week + adherence.daySd * day);
}

function record(run: Run, look: number, path: number, state: Float64Array, day: FutureDay | undefined): void {
  const at = look * run.paths + path;
  const tissue = get(state, STATE.fat) + get(state, STATE.lean);
  run.fatKg[at] = get(state, STATE.fat);
  run.tissueKg[at] = tissue;
  run.massKg[at] =
    tissue +
    3.7 * get(state, STATE.glycogen) +
    get(state, STATE.fluid) +
    get(state, STATE.slowWater) +
    (day?.cycleShare ?? 0) * get(state, STATE.cycle) +
    (day?.creatineShare ?? 0) * get(state, STATE.creatine);
}

/** What a share kept per step leaves for new noise, so that the spread stays the same. */
function lasting(kept: number): number {
  return Math.sqrt(1 - kept * kept);
}

function get(values: Float64Array, index: number): number {
  return values[index] ?? 0;
}

import { BELIEFS } from './beliefs.ts';
import { BALANCE_SIZE, type DayLoad, dayBalance } from './day-balance.ts';
import {
  DRIVERS,
  type DayJacobian,
  JACOBIAN_SIZE,
  KEPT,
  MOVED,
  moveCovariance,
  restingPlaces,
} from './day-transition.ts';
import { type Row, spread } from './gaussian.ts';
import type { Member } from './member.ts';
import { METHOD_STATES, SPENT_DAYS, STATE, STATE_SIZE } from './state-layout.ts';

/** A day's load and how far its log may be off, a share of it (1 sd). */
export interface LoadedDay extends DayLoad {
  logErrorSd: number;
}

/** Step by which the errors of the log are differentiated. */
const ERROR_STEP = 0.02;
/** The model is not exact to the gram, kg per square root of a day. */
const MODEL_NOISE_KG = 0.001;

/** Room for the arithmetic of one filter, so that no day allocates a matrix. */
export interface Workspace {
  readonly covariance: Float64Array;
  readonly jacobian: DayJacobian;
  /** States that the model of a day does not move and that this log uses. */
  readonly resting: Int32Array;
  readonly middle: Float64Array;
  readonly above: Float64Array;
  readonly below: Float64Array;
}

export function workspace(unused: ReadonlySet<number>): Workspace {
  return {
    covariance: new Float64Array(STATE_SIZE * STATE_SIZE),
    jacobian: new Float64Array(JACOBIAN_SIZE),
    resting: restingPlaces(unused),
    middle: new Float64Array(BALANCE_SIZE),
    above: new Float64Array(BALANCE_SIZE),
    below: new Float64Array(BALANCE_SIZE),
  };
}

/**
 * Moves a member through one day: the mean by the model itself, the covariance by its derivative (extended Kalman
 * filter), with the noise of the log and of the body. The derivative is left in `room.jacobian`.
 */
export function predictDay(member: Member, day: Readonly<LoadedDay>, room: Workspace): void {
  const { belief, reference } = member;
  const { mean } = belief;
  dayBalance(mean, 0, reference, day, 0, 0, room.middle);
  differentiate(member, day, room);
  const byLog = errorDirection(member, day, ERROR_STEP, 0, room);
  const byCarbohydrate = errorDirection(member, day, 0, ERROR_STEP, room);
  moveCovariance(belief.covariance, room.jacobian, room.resting, room.covariance);
  for (let i = SPENT_DAYS - 1; i > 0; i--) mean[STATE.spent + i] = mean[STATE.spent + i - 1] ?? 0;
  for (let r = 0; r < BALANCE_SIZE; r++) mean[MOVED[r] ?? 0] = room.middle[r] ?? 0;
  for (const [place, kept] of KEPT) mean[place] = (mean[place] ?? 0) * kept;
  spread(belief, byLog, day.logErrorSd ** 2);
  spread(belief, byCarbohydrate, BELIEFS.carbohydrateErrorShare ** 2);
  addNoise(member, Number.isNaN(day.sodiumMg));
}

/** Central differences of the day by each driver, with the fat that sets the partition held still. */
function differentiate(member: Member, day: Readonly<LoadedDay>, room: Workspace): void {
  const { reference } = member;
  const { mean } = member.belief;
  const { above, below, jacobian } = room;
  const fatKg = mean[STATE.fat] ?? 0;
  for (let k = 0; k < DRIVERS.length; k++) {
    const driver = DRIVERS[k];
    if (!driver) continue;
    const { place, step } = driver;
    const stands = mean[place] ?? 0;
    mean[place] = stands + step;
    dayBalance(mean, 0, reference, day, 0, 0, above, fatKg);
    mean[place] = stands - step;
    dayBalance(mean, 0, reference, day, 0, 0, below, fatKg);
    mean[place] = stands;
    for (let r = 0; r < BALANCE_SIZE; r++)
      jacobian[r * DRIVERS.length + k] = ((above[r] ?? 0) - (below[r] ?? 0)) / (2 * step);
  }
}

/** How the day's results move with an error of the log, or of its carbohydrate alone. */
function errorDirection(
  member: Member,
  day: Readonly<LoadedDay>,
  log: number,
  carbohydrate: number,
  { above, below }: Workspace,
): Row {
  const { belief, reference } = member;
  dayBalance(belief.mean, 0, reference, day, log, carbohydrate, above);
  dayBalance(belief.mean, 0, reference, day, -log, -carbohydrate, below);
  const width = 2 * (log + carbohydrate);
  return { places: MOVED, factors: MOVED.map((_, r) => ((above[r] ?? 0) - (below[r] ?? 0)) / width) };
}

function addNoise({ belief, hypothesis }: Member, withoutSodium: boolean): void {
  const { covariance } = belief;
  const add = (place: number, sd: number): void => {
    const at = place * STATE_SIZE + place;
    covariance[at] = (covariance[at] ?? 0) + sd * sd;
  };
  const { wobble, slowWater, gut, driftKeptPerDay } = BELIEFS;
  add(STATE.wobble, wobble.share * (belief.mean[STATE.baseline] ?? 0) * lasting(wobble.kept));
  add(STATE.drift, hypothesis.driftSdKcal * lasting(driftKeptPerDay));
  add(STATE.fluid, withoutSodium ? BELIEFS.fluidNoiseWithoutSodiumKg : BELIEFS.fluidNoiseKg);
  add(STATE.slowWater, hypothesis.slowWaterSdKg * lasting(slowWater.kept));
  add(STATE.gut, gut.sdKg * lasting(gut.kept));
  add(STATE.fat, MODEL_NOISE_KG);
  add(STATE.lean, MODEL_NOISE_KG);
  add(STATE.partition, BELIEFS.partitionWalk);
  for (let place = STATE.firstMethod; place < STATE.firstMethod + METHOD_STATES; place++)
    if (covariance[place * STATE_SIZE + place] !== 0) add(place, BELIEFS.methodWalkPercent);
}

/** What a share kept per day leaves for new noise, so that the spread stays the same. */
function lasting(kept: number): number {
  return Math.sqrt(1 - kept * kept);
}

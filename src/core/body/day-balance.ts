import { ADULT_ENERGY } from '#core/science/adult-energy-parameters.ts';
import { KILOJOULES_PER_KILOCALORIE } from '#core/units/energy.ts';
import type { Kilocalories, KilocaloriesPerDay, Kilograms, Milligrams } from '#core/units/quantities.ts';
import { STATE } from './state-layout.ts';

/** What is fixed for one athlete: the point about which expenditure is developed. */
export interface BodyReference {
  readonly fatKg: Kilograms;
  readonly leanKg: Kilograms;
  /** Resting energy at the start, true kcal per day. */
  readonly restingKcal: KilocaloriesPerDay;
  /** Mass at the start. */
  readonly massKg: Kilograms;
}

/** What one day brings. Intake as logged; `sodiumMg` is NaN where it was not logged. */
export interface DayLoad {
  energyKcal: Kilocalories;
  carbohydrateKcal: Kilocalories;
  sodiumMg: Milligrams;
  cardioKcal: Kilocalories;
}

/** Where `dayBalance` writes its six results. */
export const BALANCE = { fat: 0, lean: 1, glycogen: 2, fluid: 3, adaptation: 4, spent: 5 } as const;
export const BALANCE_SIZE = 6;

const KJ = KILOJOULES_PER_KILOCALORIE;
const RHO_FAT = ADULT_ENERGY.fatDensityKjPerKg / KJ;
const RHO_LEAN = ADULT_ENERGY.leanDensityKjPerKg / KJ;
const RHO_GLYCOGEN = ADULT_ENERGY.glycogenDensityKjPerKg / KJ;
const GAMMA_FAT = ADULT_ENERGY.fatMaintenanceKjPerKgDay / KJ;
const GAMMA_LEAN = ADULT_ENERGY.leanMaintenanceKjPerKgDay / KJ;
const ETA_FAT = ADULT_ENERGY.fatDepositionKjPerKg / KJ;
const ETA_LEAN = ADULT_ENERGY.leanDepositionKjPerKg / KJ;
const FORBES_ENERGY_KG = (ADULT_ENERGY.forbesKg * RHO_LEAN) / RHO_FAT;
const BETA_TEF = ADULT_ENERGY.thermicEffectShare;
const FLUID_RATE = ADULT_ENERGY.renalSodiumMgPerLitreDay / ADULT_ENERGY.fluidSodiumMgPerLitre;
const FLUID_KEPT = Math.exp(-FLUID_RATE);
const ADAPTATION_STEP = 1 - Math.exp(-1 / ADULT_ENERGY.adaptationDays);

/** Share of carbohydrate in the energy of baseline: common practice of mixed diets, no source. */
const BASELINE_CARBOHYDRATE_SHARE = 0.45;
/** Sodium about which fluid is developed, mg per day: only departures count, the level is learnt. */
const REFERENCE_SODIUM_MG = 4_000;
/** Bounds that only a draw from the far tail of a belief can meet; inside them nothing is changed. */
const LEAST_TRUE_SHARE = 0.4;
const LEAST_BASELINE_KCAL = 600;
const LEAST_ACTIVITY_PER_KG = 2;
const MOST_ACTIVITY_PER_KG = 14;
/** Muscle may be gained while fat is lost, but not much (garthe-2011). */
const LEAST_PARTITION = -0.3;
const MOST_PARTITION = 4;
const LEAST_PARTITION_FAT_KG = 1.5;
/** Below this much carbohydrate a day the glycogen equation is stiff and its answer no different, kcal. */
const LEAST_CARBOHYDRATE_KCAL = 40;

/**
 * One day of the body: where fat, lean tissue, glycogen, fluid and adaptive thermogenesis stand a day later, and
 * what was spent. Equations 1 to 10 of hall-2011, with glycogen and fluid solved in closed form over the day, the
 * Forbes partition scaled by the state's own multiple, and expenditure developed about the athlete's own baseline.
 * `state` is read from `at` on and left alone; `out` receives the six results. The errors are shares of the log.
 * `partitionFatKg` stands in for the state's fat in the partition: the filter holds it still while it differentiates.
 */
export function dayBalance(
  state: Float64Array,
  at: number,
  reference: BodyReference,
  day: Readonly<DayLoad>,
  logError: number,
  carbohydrateError: number,
  out: Float64Array,
  partitionFatKg: Kilograms = read(state, at + STATE.fat),
): void {
  const share = Math.max(LEAST_TRUE_SHARE, read(state, at + STATE.trueShare));
  const baseline = read(state, at + STATE.baseline);
  const trueBaseline = Math.max(LEAST_BASELINE_KCAL, share * baseline);
  const logged = day.energyKcal * (1 + logError);
  const carbohydrate = Math.max(
    LEAST_CARBOHYDRATE_KCAL,
    share * day.carbohydrateKcal * (1 + logError) * (1 + carbohydrateError),
  );
  const baselineCarbohydrate = BASELINE_CARBOHYDRATE_SHARE * trueBaseline;
  const glycogenKg = read(state, at + STATE.glycogen);
  const glycogenAfter = glycogenADayLater(glycogenKg, carbohydrate, baselineCarbohydrate);
  const forTissue = share * logged - RHO_GLYCOGEN * (glycogenAfter - glycogenKg);

  const partition = partitionOf(read(state, at + STATE.partition), partitionFatKg);
  const deposition = 1 + (ETA_FAT * (1 - partition)) / RHO_FAT + (ETA_LEAN * partition) / RHO_LEAN;
  const atRest = spentAtRest(state, at, reference, day.cardioKcal, logged, share);
  const laidDown = (forTissue - share * atRest) / deposition;

  const adaptation = read(state, at + STATE.adaptation);
  const sodiumMg = day.sodiumMg * (1 + logError);
  out[BALANCE.fat] = read(state, at + STATE.fat) + ((1 - partition) * laidDown) / RHO_FAT;
  out[BALANCE.lean] = read(state, at + STATE.lean) + (partition * laidDown) / RHO_LEAN;
  out[BALANCE.glycogen] = glycogenAfter;
  out[BALANCE.fluid] = fluidADayLater(state, at, share, carbohydrate / baselineCarbohydrate, sodiumMg);
  out[BALANCE.adaptation] =
    adaptation + (ADULT_ENERGY.adaptationShare * (logged - baseline) - adaptation) * ADAPTATION_STEP;
  out[BALANCE.spent] = (forTissue - laidDown) / share;
}

/** Expenditure but for the cost of laying down tissue, logged kcal per day (equations 7, 9 and 10). */
function spentAtRest(
  state: Float64Array,
  at: number,
  reference: BodyReference,
  cardioKcal: Kilocalories,
  logged: Kilocalories,
  share: number,
): number {
  const baseline = read(state, at + STATE.baseline);
  const fatChangeKg = read(state, at + STATE.fat) - reference.fatKg;
  const leanChangeKg = read(state, at + STATE.lean) - reference.leanKg;
  const perKg = ((1 - BETA_TEF) * share * baseline - reference.restingKcal) / reference.massKg;
  const activity = Math.min(MOST_ACTIVITY_PER_KG, Math.max(LEAST_ACTIVITY_PER_KG, perKg));
  const carried = (GAMMA_FAT + activity) * fatChangeKg + (GAMMA_LEAN + activity) * leanChangeKg;
  return (
    baseline +
    (carried + read(state, at + STATE.cardioShare) * cardioKcal) / share +
    BETA_TEF * (logged - baseline) +
    read(state, at + STATE.adaptation) +
    read(state, at + STATE.drift) +
    read(state, at + STATE.wobble)
  );
}

/** Equation 2 over one day of constant intake: a Riccati equation, solved exactly by a hyperbolic tangent. */
function glycogenADayLater(
  glycogenKg: Kilograms,
  carbohydrate: number,
  baselineCarbohydrate: number,
): number {
  const drain = baselineCarbohydrate / ADULT_ENERGY.baselineGlycogenKg ** 2;
  const settled = Math.sqrt(carbohydrate / drain);
  const pull = Math.tanh(Math.sqrt(carbohydrate * drain) / RHO_GLYCOGEN);
  const start = Math.max(0, glycogenKg);
  return (settled * (start + settled * pull)) / (settled + start * pull);
}

/** Equation 3 over one day of constant intake: exponential towards where the day's sodium and carbohydrate settle. */
function fluidADayLater(
  state: Float64Array,
  at: number,
  share: number,
  carbohydrateRatio: number,
  sodiumMg: Milligrams,
): number {
  const bySodium = Number.isNaN(sodiumMg)
    ? 0
    : read(state, at + STATE.sodiumFluid) * (share * sodiumMg - REFERENCE_SODIUM_MG);
  const byCarbohydrate =
    read(state, at + STATE.carbohydrateFluid) *
    ADULT_ENERGY.carbohydrateSodiumMgPerDay *
    (carbohydrateRatio - 1);
  const settled = (bySodium + byCarbohydrate) / ADULT_ENERGY.renalSodiumMgPerLitreDay;
  return settled + (read(state, at + STATE.fluid) - settled) * FLUID_KEPT;
}

/** Equation 6 with the Forbes constant scaled: the share of energy that goes to or comes from lean tissue. */
export function partitionOf(multiple: number, fatKg: Kilograms): number {
  const scaled = FORBES_ENERGY_KG * Math.min(MOST_PARTITION, Math.max(LEAST_PARTITION, multiple));
  return scaled / (scaled + Math.max(LEAST_PARTITION_FAT_KG, fatKg));
}

function read(values: Float64Array, index: number): number {
  return values[index] ?? 0;
}

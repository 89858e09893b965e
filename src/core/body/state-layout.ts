/**
 * Where each quantity of the body's state stands in the state vector. Energies are in the athlete's own logged
 * kilocalories unless the name says "true"; the share that turns the one into the other is itself a state.
 */
export const STATE = {
  /** Body fat, kg. */
  fat: 0,
  /** Everything that is neither fat, glycogen with its water, nor a departure of body water, kg. */
  lean: 1,
  /** Glycogen without its water, kg. */
  glycogen: 2,
  /** Extracellular fluid that sodium and carbohydrate move, as a departure from baseline, kg. */
  fluid: 3,
  /** Body water that comes and goes over days for reasons not logged, kg. */
  slowWater: 4,
  /** Gut content above or below its mean: on the scale, not of the body, kg. */
  gut: 5,
  /** Adaptive thermogenesis, logged kcal per day. */
  adaptation: 6,
  /** Expenditure at the start, in energy balance and without logged cardio, logged kcal per day. */
  baseline: 7,
  /** Slow change of expenditure that the model does not foresee, logged kcal per day. */
  drift: 8,
  /** Day-to-day swing of expenditure, logged kcal per day. */
  wobble: 9,
  /** True kilocalories in one logged kilocalorie. */
  trueShare: 10,
  /** Lean share of loss as a multiple of the Forbes curve (1 untrained dieters, 0 all fat). */
  partition: 11,
  /** Answer of body water to carbohydrate, a multiple of the published one. */
  carbohydrateFluid: 12,
  /** Answer of body water to logged sodium, a multiple of the published one. */
  sodiumFluid: 13,
  /** Share of logged net cardio that shows up as expenditure. */
  cardioShare: 14,
  /** Weekday rhythm of the scale, kg: cosine and sine of the week. */
  weekCosine: 15,
  weekSine: 16,
  /** Water at the onset of menses, kg. */
  cycle: 17,
  /** Water of creatine once muscle is full, kg. */
  creatine: 18,
  /** Offset of another scale while travelling, kg. */
  scaleOffset: 19,
  /** First of the biases of body-fat methods, points of percent. */
  firstMethod: 20,
  /** Expenditure of the last day, then of the six days before it, logged kcal per day. */
  spent: 24,
} as const;

/** Body-fat methods with a bias of their own; further ones share the last. */
export const METHOD_STATES = 4;
/** Days over which maintenance is averaged. */
export const SPENT_DAYS = 7;
export const STATE_SIZE = STATE.spent + SPENT_DAYS;

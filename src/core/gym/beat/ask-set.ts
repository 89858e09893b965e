import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { figureOfLoad, withFigure } from '../loads/shift-load.ts';

/** What a set is asked to be, and by which rule. */
export interface AskedSet {
  readonly load: SetLoad;
  readonly reps: number;
  /** Chance of as many repetitions with the reserve wanted, where it is known. */
  readonly chance: number | undefined;
  readonly rule: AskRule;
}

export type AskRule =
  | 'one repetition more'
  | 'next load'
  | 'as last time'
  | 'less today'
  | 'lighter for the scheme'
  | 'as the template says'
  | 'as the weaker side'
  | 'held by the caution';

/** Whether a set asks for more than last time, or only for as much. */
export type Push = 'more' | 'match';

interface LoadAndReps {
  readonly load: SetLoad;
  readonly reps: number;
}

export interface AskInput {
  readonly last: LoadAndReps | undefined;
  /** The load that the template names for this set, outright or as a share of the top set. */
  readonly given?: SetLoad | undefined;
  /** What the weaker side did in this very set. */
  readonly weaker?: LoadAndReps | undefined;
  /** Repetitions of the scheme; without them any number stands. */
  readonly reps: { readonly min: number; readonly max: number } | undefined;
  /** Repetitions to be left. */
  readonly rir: number;
  readonly push: Push;
  readonly caution: { readonly ceilingKg?: Kilograms | undefined; readonly repsFloor?: number | undefined };
  /** The next figure up or down from one that the place has weights for. */
  readonly nextFigure: (load: SetLoad, figureKg: Kilograms, side: 1 | -1) => Kilograms;
  /** The heaviest figure at or below one that the place has weights for. */
  readonly figureAtMost: (load: SetLoad, figureKg: Kilograms) => Kilograms;
  /** Chance of so many repetitions to failure with a load; undefined where nothing is known of it. */
  readonly chanceOf: (load: SetLoad, repsToFailure: number) => number | undefined;
}

/** A set is asked for where it comes off at least about every second time. Our own rule. */
const LIKELY = 0.45;
/** A step up in load may ask for the scheme's fewest repetitions a little more boldly: it comes off one time in three. */
const STEP_UP = 0.35;
const MOST_STEPS_DOWN = 12;

/**
 * The set to ask for (GYM-25): a repetition more than last time until the scheme's most is reached, then the next load
 * with the fewest; never past what is likely today; never past the caution. Where it is only to match, as last time.
 * A load that the template gives stands (GYM-29); the stronger side does no more than the weaker (GYM-52).
 */
export function askSet(input: AskInput): AskedSet | undefined {
  const asked = askedAlone(input);
  return asked && notOverWeaker(input, asked);
}

function askedAlone(input: AskInput): AskedSet | undefined {
  const { last, given } = input;
  const load = given ?? last?.load;
  if (!load) return undefined;
  const reps = startReps(input, load);
  if (reps === undefined) return undefined;
  const start = { load, reps };
  const held = heldByCaution(input, start, figureOfLoad(load));
  if (held) return held;
  if (!last || (given && !isSameLoad(given, last.load)))
    return { ...start, chance: chanceOf(input, load, reps), rule: 'as the template says' };
  const asked = againstLast(input, last);
  return lighterForScheme(input, asked) ?? asked;
}

/** One repetition short of the scheme is a day; more than that is a load too heavy for it (common practice, no source). */
function lighterForScheme(input: AskInput, asked: AskedSet): AskedSet | undefined {
  const { reps, given, push } = input;
  let figure = figureOfLoad(asked.load);
  if (!reps || given || push === 'match' || figure === undefined || asked.reps >= reps.min - 1)
    return undefined;
  const wanted = Math.max(reps.min, input.caution.repsFloor ?? 1);
  for (let step = 0; step < MOST_STEPS_DOWN; step++) {
    figure = input.nextFigure(asked.load, figure, -1);
    const load = withFigure(asked.load, figure);
    const chance = chanceOf(input, load, wanted);
    if (chance === undefined) return undefined;
    if (chance >= LIKELY) return { load, reps: wanted, chance, rule: 'lighter for the scheme' };
  }
  return undefined;
}

/** Repetitions of last time at the load; at another load the most of the scheme that are likely. */
function startReps(input: AskInput, load: SetLoad): number | undefined {
  const { last, reps } = input;
  if (last && isSameLoad(load, last.load)) return last.reps;
  if (!reps) return last?.reps;
  for (let wanted = reps.max; wanted > reps.min; wanted--) {
    const chance = chanceOf(input, load, wanted);
    if (chance !== undefined && chance >= LIKELY) return wanted;
  }
  return reps.min;
}

function isSameLoad(a: SetLoad, b: SetLoad): boolean {
  return a.of === b.of && figureOfLoad(a) === figureOfLoad(b);
}

function againstLast(input: AskInput, last: LoadAndReps): AskedSet {
  if (input.push === 'match') return asLastTime(input, last);
  const figure = figureOfLoad(last.load);
  const most = input.reps?.max ?? Number.POSITIVE_INFINITY;
  if (last.reps >= most && figure !== undefined && !input.given) {
    const stepped = stepUp(input, last.load, figure);
    if (stepped) return stepped;
  }
  const more = { load: last.load, reps: Math.min(last.reps + 1, Math.max(most, last.reps)) };
  const chance = chanceOf(input, more.load, more.reps);
  if (chance === undefined || chance >= LIKELY)
    return { ...more, chance, rule: more.reps > last.reps ? 'one repetition more' : 'as last time' };
  return asLastTime(input, last);
}

/** Common practice, no source: the stronger side waits for the weaker. */
function notOverWeaker(input: AskInput, asked: AskedSet): AskedSet {
  const { weaker, caution } = input;
  if (!weaker || weaker.reps < 1 || weaker.load.of !== asked.load.of) return asked;
  const [mine, theirs] = [figureOfLoad(asked.load), figureOfLoad(weaker.load)];
  if (mine === undefined || theirs === undefined || mine < theirs) return asked;
  if (mine === theirs && asked.reps <= weaker.reps) return asked;
  const reps = Math.max(weaker.reps, caution.repsFloor ?? 1);
  const { load } = weaker;
  return { load, reps, chance: chanceOf(input, load, reps), rule: 'as the weaker side' };
}

function chanceOf({ chanceOf: ask, rir }: AskInput, load: SetLoad, reps: number): number | undefined {
  return ask(load, reps + rir);
}

function asLastTime(input: AskInput, last: LoadAndReps): AskedSet {
  const { load } = last;
  const wanted = Math.max(1, last.reps);
  const chance = chanceOf(input, load, wanted);
  if (chance === undefined || chance >= STEP_UP) return { load, reps: wanted, chance, rule: 'as last time' };
  const reps = likelyReps(input, load, wanted);
  return { load, reps, chance: chanceOf(input, load, reps), rule: 'less today' };
}

/** The most repetitions below those of last time that are likely; at least one. */
function likelyReps(input: AskInput, load: SetLoad, below: number): number {
  for (let reps = below - 1; reps > 1; reps--) if ((chanceOf(input, load, reps) ?? 1) >= LIKELY) return reps;
  return 1;
}

function stepUp(input: AskInput, load: SetLoad, figure: Kilograms): AskedSet | undefined {
  const heavier = withFigure(load, input.nextFigure(load, figure, 1));
  if (isOver(input, heavier)) return undefined;
  const reps = Math.max(input.reps?.min ?? 1, input.caution.repsFloor ?? 1);
  const chance = chanceOf(input, heavier, reps);
  return chance === undefined || chance >= STEP_UP
    ? { load: heavier, reps, chance, rule: 'next load' }
    : undefined;
}

function isOver({ caution }: AskInput, load: SetLoad): boolean {
  const figure = figureOfLoad(load);
  return caution.ceilingKg !== undefined && figure !== undefined && figure > caution.ceilingKg + 1e-9;
}

/** A load at most at the ceiling, light enough for the floor of repetitions; undefined where neither is in the way. */
function heldByCaution(
  input: AskInput,
  { load, reps: wanted }: LoadAndReps,
  figure: Kilograms | undefined,
): AskedSet | undefined {
  const { caution } = input;
  if (figure === undefined) return undefined;
  const floor = caution.repsFloor ?? 1;
  let lighter = load;
  let kg = figure;
  for (let step = 0; step < MOST_STEPS_DOWN; step++) {
    const chance = chanceOf(input, lighter, floor);
    if (!isOver(input, lighter) && (floor === 1 || chance === undefined || chance >= LIKELY)) break;
    kg = isOver(input, lighter)
      ? input.figureAtMost(load, caution.ceilingKg ?? kg)
      : input.nextFigure(lighter, kg, -1);
    lighter = withFigure(load, kg);
  }
  // A missed lift is no set below the floor of a caution where there is no caution.
  if (kg === figure && wanted >= (caution.repsFloor ?? 0)) return undefined;
  const reps = Math.max(floor, Math.min(wanted, input.reps?.max ?? wanted));
  return { load: lighter, reps, chance: chanceOf(input, lighter, reps), rule: 'held by the caution' };
}

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
  | 'held by the caution';

/** Whether a set asks for more than last time, or only for as much. */
export type Push = 'more' | 'match';

export interface AskInput {
  readonly last: { readonly load: SetLoad; readonly reps: number } | undefined;
  /** Repetitions of the scheme; without them any number stands. */
  readonly reps: { readonly min: number; readonly max: number } | undefined;
  /** Repetitions to be left. */
  readonly rir: number;
  readonly push: Push;
  readonly caution: { readonly ceilingKg?: Kilograms | undefined; readonly repsFloor?: number | undefined };
  /** The next figure up or down from one that the place has weights for. */
  readonly nextFigure: (load: SetLoad, figureKg: Kilograms, side: 1 | -1) => Kilograms;
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
 */
export function askSet(input: AskInput): AskedSet | undefined {
  const { last, push } = input;
  if (!last) return undefined;
  const figure = figureOfLoad(last.load);
  const held = heldByCaution(input, last.load, figure);
  if (held) return held;
  if (push === 'match') return asLastTime(input, last);
  const most = input.reps?.max ?? Number.POSITIVE_INFINITY;
  if (last.reps >= most && figure !== undefined) {
    const stepped = stepUp(input, last.load, figure);
    if (stepped) return stepped;
  }
  const more = { load: last.load, reps: Math.min(last.reps + 1, Math.max(most, last.reps)) };
  const chance = chanceOf(input, more.load, more.reps);
  if (chance === undefined || chance >= LIKELY)
    return { ...more, chance, rule: more.reps > last.reps ? 'one repetition more' : 'as last time' };
  return asLastTime(input, last);
}

function chanceOf({ chanceOf: ask, rir }: AskInput, load: SetLoad, reps: number): number | undefined {
  return ask(load, reps + rir);
}

function asLastTime(input: AskInput, last: NonNullable<AskInput['last']>): AskedSet {
  const chance = chanceOf(input, last.load, last.reps);
  if (chance === undefined || chance >= STEP_UP) return { ...last, chance, rule: 'as last time' };
  const reps = likelyReps(input, last.load, last.reps);
  return { load: last.load, reps, chance: chanceOf(input, last.load, reps), rule: 'less today' };
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
function heldByCaution(input: AskInput, load: SetLoad, figure: Kilograms | undefined): AskedSet | undefined {
  const { caution, last } = input;
  if (figure === undefined || !last) return undefined;
  const floor = caution.repsFloor ?? 1;
  let lighter = load;
  let kg = figure;
  for (let step = 0; step < MOST_STEPS_DOWN; step++) {
    const chance = chanceOf(input, lighter, floor);
    if (!isOver(input, lighter) && (floor === 1 || chance === undefined || chance >= LIKELY)) break;
    kg = isOver(input, lighter) ? (input.caution.ceilingKg ?? kg) : input.nextFigure(lighter, kg, -1);
    lighter = withFigure(load, kg);
  }
  const reps = Math.max(floor, Math.min(last.reps, input.reps?.max ?? last.reps));
  if (kg === figure && last.reps >= floor) return undefined;
  return { load: lighter, reps, chance: chanceOf(input, lighter, reps), rule: 'held by the caution' };
}

import { randomStream, type RandomStream } from '#core/random/random-stream.ts';
import { curveOf, repetitionsAt } from '#core/gym/strength/repetition-curve.ts';
import type { BodySide, SetKind } from '#core/journal/kinds/gym-scheme.ts';
import { isoWeekday } from '#core/units/civil-date.ts';
import { formatClock } from '#core/units/clock.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';
import { blocksOf, machines, type TrainedExercise, trainingDays } from './training-plan.ts';

/** The story's strength: up a little for six weeks, then down as the body gets lighter; shares a week. */
const TREND = { turnsOnDay: 42, before: 0.003, after: -0.0022 } as const;
const FORM_SD = 0.018;
/** What a set takes from the next, a share. */
const TIRED = 0.012;
const BEGINS = 14 * 60 + 30;

/** Bars, plates, machines, exercises and templates of the invented hall: written on the first day. */
export function writeHall(scribe: Scribe): void {
  const day = story.begins;
  const place = 'Boathouse hall';
  scribe.write(day, '06:10', 'implement-described', {
    implement: machines.bar,
    name: 'Bar',
    place,
    empty: { mass: 20, unit: 'kg' },
    sides: 2,
  });
  scribe.write(day, '06:11', 'weights-counted', {
    place,
    plates: [
      { mass: 20, unit: 'kg', count: 8 },
      { mass: 15, unit: 'kg', count: 2 },
      { mass: 10, unit: 'kg', count: 6 },
      { mass: 5, unit: 'kg', count: 6 },
      { mass: 2.5, unit: 'kg', count: 4 },
      { mass: 1.25, unit: 'kg', count: 4 },
      { mass: 45, unit: 'lb', count: 2 },
    ],
    dumbbellPairs: [4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24].map((mass) => ({
      mass,
      unit: 'kg' as const,
    })),
  });
  scribe.write(day, '06:12', 'machine-described', {
    machine: machines.triplePeg,
    name: 'Lever press with three pegs',
    place,
    geometry: {
      of: 'lever',
      range: { fromDeg: -25, toDeg: 50 },
      lever: { massKg: 18, radiusM: 0.55, angleDeg: 0 },
      pegs: [
        { name: 'low', radiusM: 0.7, angleDeg: -30 },
        { name: 'middle', radiusM: 0.9, angleDeg: 0 },
        { name: 'high', radiusM: 0.75, angleDeg: 35 },
      ],
      padM: 1.05,
      sides: 1,
    },
  });
  scribe.write(day, '06:13', 'machine-described', {
    machine: machines.legStack,
    name: 'Leg extension',
    place,
    geometry: { of: 'stack', firstKg: 5, stepKg: 5, lastKg: 90, halfPinKg: 2.5 },
  });
  writeExercises(scribe, day);
  for (const training of trainingDays)
    scribe.write(day, '06:16', 'session-planned', {
      template: training.template,
      name: training.name,
      blocks: blocksOf(training),
    });
}

function writeExercises(scribe: Scribe, day: string): void {
  scribe.write(day, '06:14', 'exercise-described', {
    exercise: 'one-leg-press',
    name: 'One-leg press',
    machine: machines.triplePeg,
    main: true,
    caution: {
      joint: 'knee',
      side: 'left',
      repsFloor: 8,
      tempo: '3-0-1-0',
      words: 'No bounce at the bottom.',
    },
  });
  scribe.write(day, '06:15', 'exercise-described', {
    exercise: 'hack-squat',
    name: 'Hack squat',
    main: true,
    caution: { joint: 'knee', ceilingKg: 80, repsFloor: 8 },
  });
  for (const exercise of ['incline-bench-press', 'barbell-row', 'overhead-press', 'stiff-legged-deadlift'])
    scribe.write(day, '06:15', 'exercise-described', {
      exercise,
      name: NAMES[exercise] ?? exercise,
      implement: machines.bar,
    });
}

const NAMES: Readonly<Record<string, string>> = {
  'incline-bench-press': 'Incline bench press',
  'barbell-row': 'Barbell row',
  'overhead-press': 'Overhead press',
  'stiff-legged-deadlift': 'Stiff-legged deadlift',
};

/** Loads as they stand after each session; strength and form come from the day and from chance. */
export interface Trainer {
  /** Writes the session of a day, if it is one for training. */
  train(scribe: Scribe, day: string, dayNumber: number): void;
}

export function createTrainer(seed: number): Trainer {
  const chance = randomStream(seed, 'demo training');
  const loads = new Map<string, number>();
  return {
    train(scribe, day, dayNumber) {
      const training = trainingDays.find(({ weekday }) => weekday === isoWeekday(day));
      if (!training) return;
      const session = `${training.template} ${day}`;
      scribe.write(day, formatClock(BEGINS), 'session-begun', {
        session,
        template: training.template,
        place: 'Boathouse hall',
      });
      let minute = BEGINS + 8;
      for (const exercise of training.blocks.flat())
        minute = trainExercise({ scribe, day, dayNumber, session, chance, loads }, exercise, minute);
      writeKnee(scribe, day, dayNumber, session, minute);
      scribe.write(day, formatClock(minute + 4), 'session-ended', { session });
    },
  };
}

interface Hour {
  readonly scribe: Scribe;
  readonly day: string;
  readonly dayNumber: number;
  readonly session: string;
  readonly chance: RandomStream;
  readonly loads: Map<string, number>;
}

function trainExercise(hour: Hour, exercise: TrainedExercise, from: number): number {
  const { chance, loads } = hour;
  const { exercise: key, reps, sets, leftLess, backOff, drop } = exercise;
  const kg = loads.get(key) ?? exercise.firstKg;
  const form = strengthOn(hour.dayNumber) + FORM_SD * chance.normal();
  let fewest = Number.POSITIVE_INFINITY;
  let minute = from;
  for (let place = 0; place < sets; place++) {
    const set = place === 0 ? 'top' : backOff === undefined ? 'working' : 'back-off';
    const number = Math.max(1, place);
    const setKg = set === 'back-off' ? toStep((backOff ?? 1) * kg, exercise) : kg;
    for (const side of leftLess === undefined ? [undefined] : (['left', 'right'] as const)) {
      const strength = form - TIRED * place + (side === 'left' ? -(leftLess ?? 0) : 0);
      const done = liftSet(hour, exercise, { set, number, side, kg: setKg, strength, minute });
      if (place === 0) fewest = Math.min(fewest, done);
      minute += side === undefined ? 4 : 2;
    }
  }
  if (drop !== undefined) {
    const strength = form - TIRED * sets - STILL_TIRED;
    const kgDropped = toStep(drop * kg, exercise);
    liftSet(hour, exercise, { set: 'drop', number: 1, kg: kgDropped, strength, minute: minute - 3 });
  }
  if (fewest >= reps[1]) loads.set(key, kg + exercise.stepKg);
  else if (fewest < reps[0] - 1) loads.set(key, kg - exercise.stepKg);
  return minute + 2;
}

/** What a drop still lacks of the set before it, a share of strength. */
const STILL_TIRED = 0.26;

function toStep(kg: number, { stepKg }: TrainedExercise): number {
  return stepKg * Math.round(kg / stepKg);
}

interface SetOfHers {
  readonly set: SetKind;
  readonly number: number;
  readonly side?: BodySide | undefined;
  readonly kg: number;
  readonly strength: number;
  readonly minute: number;
}

/** Writes one set, stopped with none or one left; answers its repetitions. */
function liftSet(
  { scribe, day, session, chance }: Hour,
  exercise: TrainedExercise,
  { set, number, side, kg, strength, minute }: SetOfHers,
): number {
  const could = Math.max(1, Math.floor(possibleReps(exercise, kg, strength)));
  const left = Math.min(could - 1, chance.integer(2));
  const reps = Math.min(could - left, exercise.reps[1] + 1);
  scribe.write(day, formatClock(minute), 'set-done', {
    session,
    slot: exercise.exercise,
    exercise: exercise.exercise,
    set,
    number,
    load: exercise.load(kg),
    reps,
    rir: Math.min(5, could - reps),
    ...(side !== undefined && { side }),
  });
  return reps;
}

/** Logarithm of strength against the first day. */
function strengthOn(dayNumber: number): number {
  const before = Math.min(dayNumber, TREND.turnsOnDay);
  return (before * TREND.before + Math.max(0, dayNumber - TREND.turnsOnDay) * TREND.after) / 7;
}

/** Less help on a pull-up is more load: the body of the story weighs about 64 kg. */
const BODY_KG = 64;

function possibleReps(
  { exercise, firstKg, possible }: TrainedExercise,
  kg: number,
  strength: number,
): number {
  const [first, now] = exercise === 'pull-up' ? [BODY_KG - firstKg, BODY_KG - kg] : [firstKg, kg];
  return repetitionsAt(curveOf(possible) + (Math.log(first / now) + strength) / 1.1);
}

/** The knee that wants protecting, by days before the story's today; the second note holds the load a tenth lower. */
const KNEE: Readonly<Record<number, { readonly score: number; readonly words: string }>> = {
  14: { score: 4, words: 'below the kneecap on the last two sets' },
  7: { score: 4, words: 'the same place again, from the first hard set' },
};

function writeKnee(scribe: Scribe, day: string, dayNumber: number, session: string, minute: number): void {
  const note = KNEE[story.weeks * 7 - dayNumber];
  if (!note) return;
  scribe.write(day, formatClock(minute), 'pain-noted', {
    joint: 'knee',
    side: 'left',
    exercise: 'hack-squat',
    session,
    ...note,
  });
}

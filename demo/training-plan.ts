import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { SessionBlock, SetScheme } from '#core/journal/kinds/gym-scheme.ts';

/** How an invented exercise goes: what carries it, where it began, and how far the next load is. */
export interface TrainedExercise {
  readonly exercise: string;
  /** Repetitions possible with the first load on the first day, none left. */
  readonly possible: number;
  readonly firstKg: number;
  readonly stepKg: number;
  readonly load: (kg: number) => SetLoad;
  readonly sets: number;
  readonly reps: readonly [min: number, max: number];
  /** The left side has so much less, a share. */
  readonly leftLess?: number;
  /** Sets after the top set are back-off sets with this share of it; without one they keep its load. */
  readonly backOff?: number;
  /** The last set is followed by a drop with this share of its load. */
  readonly drop?: number;
}

export const machines = {
  triplePeg: 'triple-peg-press',
  legStack: 'extension-stack',
  bar: 'hall-bar',
} as const;

const bar = (kg: number): SetLoad => ({ of: 'kg', kg });
const pair = (kgEach: number): SetLoad => ({ of: 'each', kgEach });
const pin = (pinKg: number): SetLoad => ({ of: 'stack', pinKg });
const legStack = (pinKg: number): SetLoad => ({ of: 'stack', machine: machines.legStack, pinKg });
const body = (assistKg: number): SetLoad => (assistKg > 0 ? { of: 'body', assistKg } : { of: 'body' });
/** Two thirds on the middle peg, the rest on the low one, which is hard at the start. */
const pegs = (kg: number): SetLoad => ({
  of: 'pegs',
  machine: machines.triplePeg,
  pegs: [
    { peg: 'middle', kg: kg - 10 },
    { peg: 'low', kg: 10 },
  ],
});

const lift = (
  exercise: string,
  load: TrainedExercise['load'],
  [firstKg, stepKg, possible]: readonly [number, number, number],
  reps: TrainedExercise['reps'],
  more: Partial<Pick<TrainedExercise, 'sets' | 'leftLess' | 'backOff' | 'drop'>> = {},
): TrainedExercise => ({ exercise, load, firstKg, stepKg, possible, reps, sets: 3, ...more });

interface TrainingDay {
  readonly template: string;
  readonly name: string;
  /** 1 Monday to 7 Sunday. */
  readonly weekday: number;
  /** Exercises of one inner list are walked as a superset. */
  readonly blocks: readonly (readonly TrainedExercise[])[];
}

/** The week of training, all of it invented. */
export const trainingDays: readonly TrainingDay[] = [
  {
    template: 'press-day',
    name: 'Press',
    weekday: 1,
    blocks: [
      [lift('incline-bench-press', bar, [40, 2.5, 10], [6, 9], { backOff: 0.9 })],
      [lift('dumbbell-shoulder-press', pair, [14, 2, 11], [8, 11])],
      [
        lift('lateral-raise', pair, [7, 1, 15], [11, 15]),
        lift('cable-pushdown', pin, [25, 2.5, 14], [10, 14]),
      ],
    ],
  },
  {
    template: 'pull-day',
    name: 'Pull',
    weekday: 2,
    blocks: [
      [lift('pull-up', body, [15, -2.5, 9], [6, 9])],
      [lift('barbell-row', bar, [50, 2.5, 11], [7, 10])],
      [lift('reverse-fly', pin, [20, 2.5, 15], [11, 15]), lift('dumbbell-curl', pair, [9, 1, 14], [9, 12])],
    ],
  },
  {
    template: 'legs-front',
    name: 'Legs, front',
    weekday: 4,
    blocks: [
      [lift('one-leg-press', pegs, [50, 5, 13], [9, 12], { leftLess: 0.09 })],
      [lift('hack-squat', bar, [60, 5, 12], [8, 12])],
      [
        lift('one-leg-extension', legStack, [20, 2.5, 14], [10, 14], { sets: 2, leftLess: 0.07 }),
        lift('lying-leg-curl', pin, [30, 2.5, 12], [8, 12], { sets: 2 }),
      ],
    ],
  },
  {
    template: 'shoulders-arms',
    name: 'Shoulders and arms',
    weekday: 5,
    blocks: [
      [lift('overhead-press', bar, [30, 2.5, 9], [6, 8])],
      [lift('machine-lateral-raise', pin, [25, 2.5, 15], [11, 15], { drop: 0.7 })],
      [
        lift('barbell-curl', bar, [22.5, 2.5, 11], [8, 11]),
        lift('overhead-triceps-extension', pin, [22.5, 2.5, 14], [10, 14]),
      ],
    ],
  },
  {
    template: 'legs-back',
    name: 'Legs, back',
    weekday: 6,
    blocks: [
      [lift('stiff-legged-deadlift', bar, [70, 5, 11], [7, 10])],
      [lift('hip-thrust', bar, [90, 5, 12], [8, 12])],
      [
        lift('seated-leg-curl', pin, [35, 2.5, 13], [9, 12]),
        lift('hip-abduction', pin, [45, 5, 16], [12, 16]),
      ],
    ],
  },
];

/** The template of a day: warm-ups before the first exercise, then its sets. */
export function blocksOf({ blocks }: TrainingDay): SessionBlock[] {
  return blocks.map((exercises, place) => ({
    block: `block-${place + 1}`,
    slots: exercises.map(({ exercise, sets, reps: [min, max], leftLess, backOff, drop }) => {
      const schemes: SetScheme[] = place === 0 ? [{ set: 'warm-up', count: 3 }] : [];
      schemes.push({ set: 'top', count: 1, reps: { min, max }, rir: 1, restSeconds: 150 });
      const after = { count: sets - 1, reps: { min, max }, rir: 1, restSeconds: 120 };
      if (sets > 1)
        schemes.push(
          backOff === undefined
            ? { set: 'working', ...after }
            : { set: 'back-off', share: backOff, ...after },
        );
      if (drop !== undefined) schemes.push({ set: 'drop', count: 1 });
      return {
        slot: exercise,
        exercise,
        ...(leftLess !== undefined && { sides: 'one at a time' as const }),
        sets: schemes,
      };
    }),
  }));
}

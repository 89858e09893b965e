import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';

type CardioDone = DataOf<'cardio-done'>;

export const cardioFigures = [
  'speed',
  'gradePercent',
  'stepsPerMinute',
  'stepHeightCm',
  'watts',
  'level',
] as const;
export type CardioFigure = (typeof cardioFigures)[number];

/** Ways of doing cardio, and what each can be measured by. `words` is what the journal keeps. */
export const cardioWays = {
  'treadmill-walk': { words: 'Treadmill walk', asks: ['speed', 'gradePercent'] },
  'outdoor-walk': { words: 'Outdoor walk', asks: ['speed'] },
  run: { words: 'Run', asks: ['speed', 'gradePercent'] },
  stairs: { words: 'Stair machine', asks: ['stepsPerMinute', 'stepHeightCm', 'level'] },
  bike: { words: 'Bike', asks: ['watts', 'level'] },
  elliptical: { words: 'Elliptical', asks: ['level'] },
  other: { words: '', asks: [] },
} as const satisfies Record<string, { words: string; asks: readonly CardioFigure[] }>;
export type CardioWay = keyof typeof cardioWays;

export const cardioDraft = v.strictObject({
  way: v.picklist(Object.keys(cardioWays) as [CardioWay, ...CardioWay[]]),
  other: v.string(),
  minutes: v.optional(v.number()),
  speed: v.optional(v.number()),
  gradePercent: v.optional(v.number()),
  stepsPerMinute: v.optional(v.number()),
  stepHeightCm: v.optional(v.number()),
  watts: v.optional(v.number()),
  level: v.optional(v.number()),
  heartRate: v.optional(v.number()),
  beforeFood: v.optional(v.boolean()),
});
export type CardioDraft = v.InferOutput<typeof cardioDraft>;

export const emptyCardio: CardioDraft = { way: 'treadmill-walk', other: '', minutes: 30 };

/** International mile in kilometres, exact. */
const KM_PER_MILE = 1.609344;
export type SpeedUnit = 'km/h' | 'mph';

/** The session as the journal takes it (GYM-90); the first missing field is answered by name. */
export function readCardio(typed: CardioDraft, speedUnit: SpeedUnit): Outcome<CardioDone> {
  const activity = typed.way === 'other' ? typed.other.trim() : cardioWays[typed.way].words;
  if (activity === '')
    return refused(
      'gym/no-activity',
      'other',
      'The activity has no name.',
      'Enter what you did: rowing, swimming.',
    );
  if (typed.minutes === undefined || typed.minutes < 1) {
    return refused(
      'gym/no-minutes',
      'minutes',
      'The minutes are missing.',
      'Enter how many minutes it took.',
    );
  }
  if (typed.beforeFood === undefined) {
    return refused(
      'gym/food-unsaid',
      'beforeFood',
      'It is not said whether this was before food.',
      'Choose "Before food" or "After food".',
    );
  }
  const asked = new Set<CardioFigure>(cardioWays[typed.way].asks);
  const { gradePercent, stepsPerMinute, stepHeightCm, watts, level, heartRate, speed } = typed;
  const taken = <Key extends string>(figure: CardioFigure, key: Key, value: number | undefined) =>
    value !== undefined && asked.has(figure) ? ({ [key]: value } as Record<Key, number>) : {};
  return {
    ok: true,
    value: {
      activity,
      minutes: typed.minutes,
      beforeFood: typed.beforeFood,
      ...taken('speed', 'speedKmh', speed && roundTo(speedUnit === 'mph' ? speed * KM_PER_MILE : speed, 3)),
      ...taken('gradePercent', 'gradePercent', gradePercent),
      ...taken('stepsPerMinute', 'stepsPerMinute', stepsPerMinute),
      ...taken('stepHeightCm', 'stepHeightM', stepHeightCm && roundTo(stepHeightCm / 100, 4)),
      ...taken('watts', 'watts', watts),
      ...taken('level', 'level', level),
      ...(heartRate !== undefined && { heartRate }),
    },
  };
}

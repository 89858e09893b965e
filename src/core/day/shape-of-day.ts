import type { Fact, Ledger } from '../journal/ledger.ts';
import { isoWeekday } from '../units/civil-date.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes, Grams, Minutes } from '../units/quantities.ts';

export type DayKind = 'training' | 'rest' | 'higher-carbohydrate';

export interface TrainingTime {
  readonly start: ClockMinutes;
  readonly minutes: Minutes;
  readonly title?: string;
  readonly template?: string;
}

export interface CardioTime {
  readonly start: ClockMinutes;
  readonly minutes: Minutes;
  readonly activity: string;
  readonly beforeFood: boolean;
}

/** The frame of a prep day: when it begins and ends, what is fixed in it, and the rules its meals keep. */
export interface DayShape {
  readonly wake: ClockMinutes;
  readonly sleep: ClockMinutes;
  readonly training?: TrainingTime;
  readonly cardio: readonly CardioTime[];
  readonly dayKind: DayKind;
  readonly rules: MealRules;
  /** Said for this very day, or as usual for its weekday. */
  readonly said: 'for this day' | 'as usual';
  readonly fact: Fact<'day-shaped'>;
}

/** Absent: the contract's default stands. */
export interface MealRules {
  readonly meals?: { readonly min: number; readonly max: number };
  readonly minGapMinutes?: Minutes;
  readonly mealToTrainingMinutes?: Minutes;
  readonly lastMealToSleepMinutes?: Minutes;
  readonly maxFoodsPerMeal?: number;
  readonly fatBeforeTrainingMaxG?: Grams;
}

/**
 * The shape of a prep day: what was said for the day itself, else the newest usual shape of its weekday; undefined
 * where neither was ever said, for waking and sleep are not guessed (RUN-01).
 */
export function shapeOfDay(ledger: Ledger, day: string): DayShape | undefined {
  const shapes = ledger.of('day-shaped');
  const own = shapes.findLast((fact) => fact.day === day && fact.data.scope.of === 'day');
  if (own) return shapeFrom(own, 'for this day');
  const weekday = isoWeekday(day);
  const usual = shapes.findLast(
    ({ day: said, data: { scope } }) =>
      said <= day && scope.of === 'usual' && scope.weekdays.includes(weekday),
  );
  return usual && shapeFrom(usual, 'as usual');
}

function shapeFrom(fact: Fact<'day-shaped'>, said: DayShape['said']): DayShape {
  const { data } = fact;
  const { training } = data;
  return {
    wake: minutesOf(data.wake),
    sleep: minutesOf(data.sleep),
    ...(training && { training: { ...training, start: minutesOf(training.start) } as TrainingTime }),
    cardio: (data.cardio ?? []).map((session) => ({ ...session, start: minutesOf(session.start) })),
    dayKind: data.dayKind ?? (training ? 'training' : 'rest'),
    rules: rulesFrom(data),
    said,
    fact,
  };
}

function rulesFrom(data: Fact<'day-shaped'>['data']): MealRules {
  const { meals, minGapMinutes, mealToTrainingMinutes, lastMealToSleepMinutes } = data;
  const { maxFoodsPerMeal, fatBeforeTrainingMaxG } = data;
  return {
    ...(meals && { meals }),
    ...(minGapMinutes !== undefined && { minGapMinutes }),
    ...(mealToTrainingMinutes !== undefined && { mealToTrainingMinutes }),
    ...(lastMealToSleepMinutes !== undefined && { lastMealToSleepMinutes }),
    ...(maxFoodsPerMeal !== undefined && { maxFoodsPerMeal }),
    ...(fatBeforeTrainingMaxG !== undefined && { fatBeforeTrainingMaxG }),
  };
}

/** The journal's schema has checked the text already. */
function minutesOf(text: string): ClockMinutes {
  const minutes = parseClock(text);
  if (minutes === undefined) throw new RangeError(`not a clock time: ${text}`);
  return minutes;
}

import type { Tie } from '#core/journal/kinds/health.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import type { ClockMinutes, Grams, Minutes } from '#core/units/quantities.ts';

/** The day a dose must fit into, in minutes. */
export interface DayFrame {
  readonly now: ClockMinutes;
  readonly wake: ClockMinutes;
  readonly sleep: ClockMinutes;
  readonly training?: { readonly start: ClockMinutes; readonly end: ClockMinutes };
  /** All meals in order of time. */
  readonly meals: readonly FrameMeal[];
}

export interface FrameMeal {
  readonly slot: string;
  readonly minutes: ClockMinutes;
  readonly carbohydrateG?: Grams;
  readonly fatG?: Grams;
}

/** A time at which a dose may stand; the cheapest is what was asked for. */
export interface TieTime {
  readonly minutes: ClockMinutes;
  readonly slot?: string;
  readonly cost: number;
  readonly words: string;
}

/** Fat that a "fat-holding" meal holds at least, and carbohydrate of one "high in carbohydrate": common practice. */
export const FAT_HOLDING_G: Grams = 10;
export const HIGH_CARBOHYDRATE_G: Grams = 50;
/** Empty stomach: so long after the last meal and before the next (common practice). */
const EMPTY_AFTER_MEAL: Minutes = 120;
const EMPTY_BEFORE_MEAL: Minutes = 30;

const STEP = 10;
/** A meal that does not hold what was asked for is taken only when none does. */
const LACKING = 100;

/**
 * Times for a tie, those still to come, cheapest first. `none` says why today has no such thing at all; an empty list
 * with no `none` means that its moment has passed.
 */
export function tieTimes(
  tie: Tie,
  day: DayFrame,
): { readonly times: readonly TieTime[]; readonly none?: string } {
  const all = allTimes(tie, day);
  if (typeof all === 'string') return { times: [], none: all };
  const times = all.filter(({ minutes }) => minutes >= day.now && minutes <= day.sleep);
  return { times: times.sort((a, b) => a.cost - b.cost || a.minutes - b.minutes) };
}

function allTimes(tie: Tie, day: DayFrame): TieTime[] | string {
  switch (tie.to) {
    case 'first meal':
      return mealTimes(day, day.meals, 'with the first meal');
    case 'last meal':
      return mealTimes(day, [...day.meals].reverse(), 'with the last meal');
    case 'high-carbohydrate meal': {
      const least = tie.atLeastG ?? HIGH_CARBOHYDRATE_G;
      const richest = [...day.meals].sort((a, b) => (b.carbohydrateG ?? -1) - (a.carbohydrateG ?? -1));
      return mealTimes(
        day,
        richest,
        'with a meal high in carbohydrate',
        (meal) => (meal.carbohydrateG ?? 0) >= least,
      );
    }
    case 'fat-holding meal': {
      const least = tie.atLeastG ?? FAT_HOLDING_G;
      const holds = (meal: FrameMeal) => (meal.fatG ?? 0) >= least;
      const fattest = [...day.meals].sort((a, b) => (b.fatG ?? -1) - (a.fatG ?? -1));
      const order = [...day.meals.filter(holds), ...fattest.filter((meal) => !holds(meal))];
      return mealTimes(day, order, 'with a meal that holds fat', holds);
    }
    case 'before training':
      return beforeTraining(day, tie.minutes);
    case 'after training':
      return afterTraining(day);
    case 'before sleep':
      return earlier(day.sleep - tie.minutes, 'before sleep');
    case 'waking, empty stomach':
      return emptyStomach(day);
    case 'clock':
      return around(parseClock(tie.at) ?? day.wake, `at ${tie.at}`);
  }
}

function mealTimes(
  day: DayFrame,
  order: readonly FrameMeal[],
  asked: string,
  holds: (meal: FrameMeal) => boolean = () => true,
): TieTime[] | string {
  if (day.meals.length === 0) return `${asked}: today has no meal`;
  return order.map((meal, rank) => {
    const lacks = !holds(meal);
    const moved = rank > 0 ? `, moved to the meal at ${formatClock(meal.minutes)}` : '';
    return {
      minutes: meal.minutes,
      slot: meal.slot,
      cost: rank * STEP + (lacks ? LACKING : 0),
      words: lacks
        ? `${asked}; no meal to come is known to hold enough, so with the one at ${formatClock(meal.minutes)}`
        : `${asked}${moved}`,
    };
  });
}

function beforeTraining(day: DayFrame, minutes: Minutes): TieTime[] | string {
  const { training } = day;
  if (!training) return 'before training: today has none';
  const asked = training.start - minutes;
  return [0, 15, 30, 45, 60]
    .map((more, rank) => ({ minutes: Math.max(asked - more, Math.min(day.wake, training.start)), rank }))
    .filter(({ minutes: at }, index, list) => list.findIndex((other) => other.minutes === at) === index)
    .map(({ minutes: at, rank }) => ({
      minutes: at,
      cost: rank * STEP,
      words: `${training.start - at} min before training${rank > 0 ? ', moved earlier' : ''}`,
    }));
}

function afterTraining(day: DayFrame): TieTime[] | string {
  const { training } = day;
  if (!training) return 'after training: today has none';
  const after = day.meals.filter(({ minutes }) => minutes >= training.end);
  const meals = after.map((meal, rank) => ({
    minutes: meal.minutes,
    slot: meal.slot,
    cost: rank * STEP * 2,
    words: `after training${rank > 0 ? `, moved to the meal at ${formatClock(meal.minutes)}` : ', with the meal'}`,
  }));
  return [...meals, { minutes: training.end, cost: STEP + 5, words: 'right after training' }];
}

function earlier(asked: ClockMinutes, words: string): TieTime[] {
  return [0, 30, 60, 90, 120, 180].map((less, rank) => ({
    minutes: asked - less,
    cost: rank * STEP,
    words: rank > 0 ? `${words}, moved earlier` : words,
  }));
}

function around(asked: ClockMinutes, words: string): TieTime[] {
  return [0, 30, -30, 60, -60, 90, -90, 120, -120].map((shift, rank) => ({
    minutes: asked + shift,
    cost: rank * STEP,
    words: rank > 0 ? `${words}, moved to ${formatClock(Math.max(0, asked + shift))}` : words,
  }));
}

/** On waking where the first meal leaves room, else between meals far enough apart, else before sleep. */
function emptyStomach(day: DayFrame): TieTime[] | string {
  const starts = [day.wake, ...day.meals.map(({ minutes }) => minutes + EMPTY_AFTER_MEAL)];
  const empty = (at: ClockMinutes) =>
    day.meals.every(({ minutes }) => at - minutes >= EMPTY_AFTER_MEAL || minutes - at >= EMPTY_BEFORE_MEAL);
  const found = starts.filter(empty);
  if (found.length === 0) return 'on an empty stomach: the meals of today leave no room';
  return found.map((minutes, rank) => ({
    minutes,
    cost: rank * STEP * 2,
    words:
      minutes === day.wake
        ? 'on waking, empty stomach'
        : `empty stomach, moved to ${formatClock(minutes)}: on waking there is no room`,
  }));
}

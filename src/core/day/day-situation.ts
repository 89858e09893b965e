import { readShape } from '../problems/from-issues.ts';
import { answered, type Outcome, refused } from '../problems/problem.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes } from '../units/quantities.ts';
import { checkFoods } from './check-foods.ts';
import { type DayRequest, dayRequest } from './day-request.ts';

/** A request whose clock times are read and whose parts agree with each other. */
export interface DaySituation {
  readonly request: DayRequest;
  /** Absent: the day is planned before waking. */
  readonly now?: ClockMinutes;
  readonly wake: ClockMinutes;
  readonly sleep: ClockMinutes;
  readonly training?: { readonly start: ClockMinutes; readonly end: ClockMinutes };
  readonly rules: DayRules;
  /** Ascending. */
  readonly eatenAt: readonly ClockMinutes[];
  /** Ascending; `index` is the place in the request. */
  readonly pinned: readonly { readonly at: ClockMinutes; readonly index: number }[];
  readonly budgetMs: number;
}

export type DayRules = Omit<DayRequest['rules'], 'meals'> & {
  readonly meals: { readonly min: number; readonly max: number };
};

const LEAST_MEALS = 3;
const MOST_MEALS = 5;

/** Reads one request of `stagewright day`. A fault in its shape or between its parts is answered as a problem. */
export function readDay(input: unknown): Outcome<DaySituation> {
  const shape = readShape(dayRequest, input, 'day');
  if (!shape.ok) return shape;
  const request = shape.value;
  const foods = checkFoods(request);
  if (!foods.ok) return foods;
  const clocks = readClocks(request);
  if (!clocks.ok) return clocks;
  const { min, max } = request.rules.meals;
  if (min !== undefined && max !== undefined && min > max) {
    return refused(
      'day/meals-crossed',
      'rules.meals',
      `At least ${min} meals and at most ${max} cannot both hold.`,
      'Make "min" no greater than "max".',
    );
  }
  return clocks;
}

function readClocks(request: DayRequest): Outcome<DaySituation> {
  const { events } = request;
  const wake = minutesOf(events.wake);
  const sleep = minutesOf(events.sleep);
  if (sleep <= wake) {
    return refused(
      'day/sleep-before-waking',
      'events.sleep',
      `Sleep at ${events.sleep} does not come after waking at ${events.wake}.`,
      'Write times past midnight as "24:30".',
    );
  }
  const training = events.training && {
    start: minutesOf(events.training.start),
    end: minutesOf(events.training.start) + events.training.minutes,
  };
  if (training && (training.start < wake || training.start >= sleep)) {
    return refused(
      'day/training-outside-day',
      'events.training.start',
      `Training at ${events.training?.start} lies outside the day from ${events.wake} to ${events.sleep}.`,
      'Correct its time, or leave training out.',
    );
  }
  const now = request.now === undefined ? undefined : minutesOf(request.now);
  const pinned = request.pinned
    .map((meal, index) => ({ at: minutesOf(meal.at), index }))
    .sort((a, b) => a.at - b.at || a.index - b.index);
  const past = pinned.find((meal) => now !== undefined && meal.at < now);
  if (past) {
    return refused(
      'day/pinned-in-the-past',
      `pinned.${past.index}.at`,
      `The pinned meal at ${request.pinned[past.index]?.at} lies before now, ${request.now}.`,
      'Enter it as eaten, or let its time go and fix its foods in a later meal.',
    );
  }
  return answered({
    request,
    ...(now === undefined ? {} : { now }),
    wake,
    sleep,
    ...(training ? { training } : {}),
    rules: { ...request.rules, meals: mealsWanted(request.rules.meals) },
    eatenAt: request.eaten.map((meal) => minutesOf(meal.at)).sort((a, b) => a - b),
    pinned,
    budgetMs: request.budgetMs,
  });
}

/** A limit that is not given gives way to the one that is. */
function mealsWanted({ min, max }: DayRequest['rules']['meals']): DayRules['meals'] {
  return {
    min: min ?? Math.min(LEAST_MEALS, max ?? LEAST_MEALS),
    max: max ?? Math.max(MOST_MEALS, min ?? MOST_MEALS),
  };
}

/** The schema has checked the text already. */
function minutesOf(text: string): ClockMinutes {
  const minutes = parseClock(text);
  if (minutes === undefined) throw new RangeError(`not a clock time: ${text}`);
  return minutes;
}

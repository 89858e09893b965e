import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes, Grams, Minutes } from '#core/units/quantities.ts';

export interface ShowDayInput {
  readonly wake: ClockMinutes;
  /** When the class is called to the stage, at the place of the show. */
  readonly stage: ClockMinutes;
  /** Evening finals, where there are any. */
  readonly finals?: ClockMinutes | undefined;
  readonly checkIn?: ClockMinutes | undefined;
  readonly travelMinutes: Minutes;
  readonly carbohydrateG: Grams;
  readonly proteinG: Grams;
  readonly fatG: Grams;
}

export interface ShowTask {
  readonly at: ClockMinutes;
  readonly title: string;
  readonly type: 'wake' | 'meal' | 'leave' | 'check-in' | 'last touches' | 'pump-up' | 'stage' | 'finals';
  /** Grams of a small meal. */
  readonly meal?: { readonly carbohydrateG: Grams; readonly proteinG: Grams; readonly fatG: Grams };
  /** Moves with the stage when it runs late. */
  readonly withStage: boolean;
}

/** Minutes before the stage; common practice, no source. */
const BEFORE = { pumpUp: 25, lastTouches: 45, lastMeal: 75 } as const;
const MEAL_GAP: Minutes = 150;
const FIRST_MEAL_AFTER_WAKING: Minutes = 30;

/**
 * The show day from waking to the last call (CRS-25): small meals to the gram from half an hour after waking to an hour
 * and a quarter before the stage, the way there, check-in, last touches, pump-up.
 */
export function showDaySheet(input: ShowDayInput): Outcome<readonly ShowTask[]> {
  const { wake, stage, checkIn, finals, travelMinutes } = input;
  const arrive = checkIn ?? stage - 2 * 60;
  const leave = arrive - travelMinutes;
  if (leave < wake + 15)
    return refused(
      'course/show-day-too-tight',
      'wake',
      `Waking at ${formatClock(wake)} leaves no time to leave at ${formatClock(leave)} for the stage at ${formatClock(stage)}.`,
      'Wake earlier, or sleep nearer to the stage.',
    );
  if (finals !== undefined && finals <= stage)
    return refused(
      'course/finals-before-stage',
      'finals',
      `The finals at ${formatClock(finals)} are not after the stage at ${formatClock(stage)}.`,
      'Correct one of the two times.',
    );
  const times = mealTimes(wake + FIRST_MEAL_AFTER_WAKING, stage - BEFORE.lastMeal);
  const tasks: ShowTask[] = [
    { at: wake, title: 'Wake, weigh in as usual', type: 'wake', withStage: false },
    { at: leave, title: 'Leave', type: 'leave', withStage: false },
    ...(checkIn === undefined
      ? []
      : [{ at: checkIn, title: 'Check-in', type: 'check-in', withStage: false } as const]),
    ...mealsAt(times, input),
    {
      at: stage - BEFORE.lastTouches,
      title: 'Last touches of tan, dress',
      type: 'last touches',
      withStage: true,
    },
    { at: stage - BEFORE.pumpUp, title: 'Pump-up, light and short', type: 'pump-up', withStage: true },
    { at: stage, title: 'Stage', type: 'stage', withStage: true },
    ...(finals === undefined
      ? []
      : [{ at: finals, title: 'Finals', type: 'finals', withStage: true } as const]),
  ];
  return answered(tasks.sort((a, b) => a.at - b.at));
}

function mealTimes(first: ClockMinutes, last: ClockMinutes): readonly ClockMinutes[] {
  if (last <= first) return [first];
  const count = Math.max(1, Math.floor((last - first) / MEAL_GAP));
  return Array.from({ length: count + 1 }, (_, k) => Math.round(first + (k * (last - first)) / count));
}

/** Equal small meals; the grams left over by rounding go to the first. */
function mealsAt(times: readonly ClockMinutes[], input: ShowDayInput): ShowTask[] {
  const part = (grams: Grams, k: number) => {
    const each = Math.floor(grams / times.length);
    return k === 0 ? Math.round(grams) - each * (times.length - 1) : each;
  };
  return times.map((at, k) => ({
    at,
    title: k === times.length - 1 && times.length > 1 ? 'Last small meal' : 'Small meal',
    type: 'meal',
    meal: {
      carbohydrateG: part(input.carbohydrateG, k),
      proteinG: part(input.proteinG, k),
      fatG: part(input.fatG, k),
    },
    withStage: k === times.length - 1 && times.length > 1,
  }));
}

/** So much longer from the last meal to the stage than was meant, and another bite is due; what it holds. Common practice, no source. */
const BITE = { afterMinutes: 90, carbohydrateG: 25 } as const;

/**
 * The stage runs late (or early): what is past stays, what hangs on the stage moves with it, and a long wait gets a
 * bite more (CRS-25). Moving it to a moment that is past is refused.
 */
export function stageMoved(
  tasks: readonly ShowTask[],
  now: ClockMinutes,
  stage: ClockMinutes,
): Outcome<readonly ShowTask[]> {
  const planned = tasks.find((task) => task.type === 'stage');
  if (planned === undefined || stage < now)
    return refused(
      'course/stage-is-past',
      'stage',
      `The stage cannot be moved to ${formatClock(stage)}: it is ${formatClock(now)}.`,
      'Give the time at which your class is called now.',
    );
  const delay = stage - planned.at;
  const moved = tasks.map((task) =>
    task.withStage && task.at >= now ? { ...task, at: Math.max(now, task.at + delay) } : task,
  );
  const lastMeal = moved.findLast((task) => task.type === 'meal');
  const bite: ShowTask[] =
    lastMeal !== undefined && lastMeal.at < now && stage - lastMeal.at >= BEFORE.lastMeal + BITE.afterMinutes
      ? [
          {
            at: Math.max(now, Math.min(stage - BEFORE.lastTouches, now + 15)),
            title: 'A bite more for the wait',
            type: 'meal',
            meal: { carbohydrateG: BITE.carbohydrateG, proteinG: 0, fatG: 0 },
            withStage: false,
          },
        ]
      : [];
  return answered([...moved, ...bite].sort((a, b) => a.at - b.at));
}

/**
 * Whole days to a show, counted where the show is: the date there now, by its offset from universal time, so that a
 * trip across the date line neither loses nor gains a day.
 */
export function dateAtPlace(epochMs: number, offsetMinutes: Minutes): number {
  return Math.floor((epochMs / 60_000 + offsetMinutes) / 1440);
}

import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import type { DaySituation } from './day-situation.ts';

/** A closed stretch of minutes in which a meal may start. */
export interface MealWindow {
  readonly from: ClockMinutes;
  readonly to: ClockMinutes;
}

/**
 * When the next meals may start: not before now or waking, not sooner than the gap after the last one eaten, not from shortly
 * before training until it ends, not nearer to a pinned meal than the gap, not too near sleep. Rules DAY-02 to DAY-05.
 */
export function mealWindows(day: DaySituation): readonly MealWindow[] {
  const { minGapMinutes, mealToTrainingMinutes, lastMealToSleepMinutes } = day.rules;
  const lastEaten = day.eatenAt.at(-1);
  let from = Math.max(day.wake, day.now ?? day.wake);
  if (lastEaten !== undefined) from = Math.max(from, lastEaten + minGapMinutes);
  let windows: readonly MealWindow[] = [{ from, to: day.sleep - lastMealToSleepMinutes }];
  if (day.training) {
    windows = without(windows, day.training.start - mealToTrainingMinutes, day.training.end);
  }
  for (const pin of day.pinned) windows = without(windows, pin.at - minGapMinutes, pin.at + minGapMinutes);
  return windows.filter((window) => window.from <= window.to);
}

/** Takes out the minutes strictly between `after` and `before`; both ends stay. */
function without(
  windows: readonly MealWindow[],
  after: ClockMinutes,
  before: ClockMinutes,
): readonly MealWindow[] {
  if (after >= before) return windows;
  return windows.flatMap((window) => {
    if (before <= window.from || after >= window.to) return [window];
    return [
      { from: window.from, to: Math.min(window.to, after) },
      { from: Math.max(window.from, before), to: window.to },
    ].filter((part) => part.from <= part.to);
  });
}

/** The earliest times at which meals can follow each other through the windows; as many as the clock fits, at most `most`. */
export function earliestMeals(
  windows: readonly MealWindow[],
  minGapMinutes: Minutes,
  most: number,
): readonly ClockMinutes[] {
  const times: ClockMinutes[] = [];
  for (const window of windows) {
    let at = Math.max(window.from, (times.at(-1) ?? Number.NEGATIVE_INFINITY) + minGapMinutes);
    while (at <= window.to && times.length < most) {
      times.push(at);
      at += minGapMinutes;
    }
  }
  return times;
}

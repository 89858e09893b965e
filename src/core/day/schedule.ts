import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import type { DaySituation } from './day-situation.ts';
import { earliestMeals, mealWindows } from './meal-windows.ts';
import { mealRole, type MealRole } from './meal-role.ts';

export interface ScheduledMeal {
  readonly at: ClockMinutes;
  readonly role: MealRole;
  /** Place in the request's `pinned`; absent for a meal the plan is free to fill. */
  readonly pinned?: number;
}

export interface Schedule {
  /** In time order. */
  readonly meals: readonly ScheduledMeal[];
  /** Free meals the clock alone would have room for, at most as many as the rules allow. */
  readonly fits: number;
  /** Free meals the rules leave after those eaten and pinned. */
  readonly allowed: number;
}

/** Meal times are on the clock's five-minute marks where that costs no meal. */
const GRID_MINUTES = 5;

/**
 * Times of the meals still to come: as many as the rules allow and the clock fits, one an hour or two before training, one soon
 * after it, the rest evenly spread. Rules DAY-06 to DAY-09. Moving every clock time of the request by a quarter of an hour
 * moves the schedule by as much.
 */
export function scheduleMeals(day: DaySituation): Schedule {
  const gap = Math.max(1, day.rules.minGapMinutes);
  const windows = mealWindows(day);
  const allowed = Math.max(0, day.rules.meals.max - day.eatenAt.length - day.pinned.length);
  const earliest = earliestMeals(windows, gap, allowed);
  const slots = new Map<ClockMinutes, Slot>();
  for (const window of windows) {
    for (let at = Math.ceil(window.from / GRID_MINUTES) * GRID_MINUTES; at <= window.to; at += GRID_MINUTES) {
      slots.set(at, { at });
    }
  }
  // Those off the marks keep the count attainable where the clock is tight.
  for (const at of earliest) slots.set(at, { at });
  for (const pin of day.pinned) slots.set(pin.at, { at: pin.at, pinned: pin.index });
  const ordered = [...slots.values()].sort((a, b) => a.at - b.at);
  const count = earliest.length + new Set(day.pinned.map((pin) => pin.at)).size;
  const wishes = new MealWishes(day, count);
  const free = bestTimes(ordered, count, gap, wishes).filter((slot) => slot.pinned === undefined);
  const meals = [...free, ...day.pinned.map((pin) => ({ at: pin.at, pinned: pin.index }))]
    .sort((a, b) => a.at - b.at)
    .map((slot) => ({ ...slot, role: mealRole(slot.at, day) }));
  return { meals, fits: earliest.length, allowed };
}

interface Slot {
  readonly at: ClockMinutes;
  readonly pinned?: number;
}

/**
 * Least displeasure over all ways of picking `count` slots at least `gap` apart with every pinned slot among them: dynamic
 * programming over (meals placed, last slot). The first of equals wins, so the answer is one and the same every time.
 */
function bestTimes(slots: readonly Slot[], count: number, gap: Minutes, wishes: MealWishes): readonly Slot[] {
  if (count === 0) return [];
  const pinsUpTo = pinnedBefore(slots);
  const pins = pinsUpTo[slots.length] ?? 0;
  let worth = slots.map((slot, i) =>
    (pinsUpTo[i] ?? 0) > 0 ? Number.POSITIVE_INFINITY : wishes.first(slot.at),
  );
  const cameFrom: number[][] = [];
  for (let placed = 1; placed < count; placed++) {
    const next = slots.map(() => Number.POSITIVE_INFINITY);
    const from = slots.map(() => -1);
    for (const [j, later] of slots.entries()) {
      for (let i = 0; i < j; i++) {
        const earlier = slots[i];
        const before = worth[i] ?? Number.POSITIVE_INFINITY;
        if (earlier === undefined || before === Number.POSITIVE_INFINITY) continue;
        const bothPinned = earlier.pinned !== undefined && later.pinned !== undefined;
        if (later.at - earlier.at < gap && !bothPinned) continue;
        if ((pinsUpTo[j] ?? 0) > (pinsUpTo[i + 1] ?? 0)) continue;
        const total = before + wishes.between(earlier.at, later.at);
        if (total < (next[j] ?? 0)) {
          next[j] = total;
          from[j] = i;
        }
      }
    }
    worth = next;
    cameFrom.push(from);
  }
  const ends = slots.map((slot, i) =>
    (pinsUpTo[i + 1] ?? 0) < pins
      ? Number.POSITIVE_INFINITY
      : (worth[i] ?? Number.POSITIVE_INFINITY) + wishes.last(slot.at),
  );
  return traceBack(slots, ends.indexOf(Math.min(...ends)), cameFrom);
}

function pinnedBefore(slots: readonly Slot[]): readonly number[] {
  const counts = [0];
  for (const slot of slots) counts.push((counts.at(-1) ?? 0) + (slot.pinned === undefined ? 0 : 1));
  return counts;
}

function traceBack(
  slots: readonly Slot[],
  end: number,
  cameFrom: readonly (readonly number[])[],
): readonly Slot[] {
  const chosen: Slot[] = [];
  let i = end;
  for (let placed = cameFrom.length; placed >= 0; placed--) {
    const slot = slots[i];
    if (slot === undefined) throw new RangeError('the schedule lost its way');
    chosen.unshift(slot);
    i = cameFrom[placed - 1]?.[i] ?? -1;
  }
  return chosen;
}

/** Half an hour off a wish counts 1, an hour 4. */
function squared(minutes: Minutes): number {
  return (minutes / 30) ** 2;
}

/** What the athlete would rather have (common practice, no source): even gaps, a meal either side of training. */
class MealWishes {
  readonly #day: DaySituation;
  readonly #firstAt: ClockMinutes;
  readonly #lastAt: ClockMinutes;
  readonly #lastEaten: ClockMinutes | undefined;
  readonly #evenGap: Minutes;

  constructor(day: DaySituation, count: number) {
    this.#day = day;
    this.#lastEaten = day.eatenAt.at(-1);
    this.#firstAt = day.now === undefined || day.now < day.wake ? day.wake + 30 : day.now + 5;
    this.#lastAt = day.sleep - Math.max(90, day.rules.lastMealToSleepMinutes);
    const anchor = this.#lastEaten ?? this.#firstAt;
    const gaps = this.#lastEaten === undefined ? count - 1 : count;
    this.#evenGap = Math.max(day.rules.minGapMinutes, (this.#lastAt - anchor) / Math.max(1, gaps));
  }

  first(at: ClockMinutes): number {
    const onMark = this.#mark(at);
    const training = this.#day.training;
    const trainingAhead = training !== undefined && at >= training.end && !this.#ateAfter(training.end);
    const soonAfter = trainingAhead ? this.#afterTraining(at, training.end) : 0;
    if (this.#lastEaten === undefined) return onMark + soonAfter + squared(at - this.#firstAt);
    return onMark + soonAfter + squared(at - this.#lastEaten - this.#evenGap);
  }

  between(earlier: ClockMinutes, later: ClockMinutes): number {
    const training = this.#day.training;
    const uneven = squared(later - earlier - this.#evenGap) + this.#mark(later);
    if (training === undefined || earlier >= training.start || later < training.end) return uneven;
    return (
      uneven / 4 + this.#beforeTraining(earlier, training.start) + this.#afterTraining(later, training.end)
    );
  }

  last(at: ClockMinutes): number {
    const training = this.#day.training;
    const unfed = training !== undefined && at < training.end ? 50 : 0;
    return unfed + squared(at - this.#lastAt) / 2;
  }

  #ateAfter(end: ClockMinutes): boolean {
    return this.#lastEaten !== undefined && this.#lastEaten >= end;
  }

  /** One to two hours before training is the wish. */
  #beforeTraining(at: ClockMinutes, start: ClockMinutes): number {
    return 2 * squared(Math.max(0, start - 120 - at, at - (start - 60)));
  }

  /** Within three quarters of an hour after it. */
  #afterTraining(at: ClockMinutes, end: ClockMinutes): number {
    return 2 * squared(Math.max(0, at - (end + 45)));
  }

  #mark(at: ClockMinutes): number {
    return at % GRID_MINUTES === 0 ? 0 : 1.5;
  }
}

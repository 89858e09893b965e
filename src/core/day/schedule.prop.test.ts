import { describe, expect, it } from 'vitest';
import { oddDayRequestOf } from '../../../test/simulation/odd-day-requests.ts';
import { dayRequestOf } from '../../../test/simulation/day-requests.ts';
import { type DaySituation, readDay } from './day-situation.ts';
import { mealTargets } from './meal-targets.ts';
import { scheduleMeals } from './schedule.ts';

const SEEDS = Array.from({ length: 300 }, (_, seed) => seed);

function situations(): { readonly seed: number; readonly day: DaySituation }[] {
  return SEEDS.flatMap((seed) => {
    const day = readDay(oddDayRequestOf(seed));
    return day.ok ? [{ seed, day: day.value }] : [];
  });
}

/** May a meal start in this minute? Written out from the contract, minute by minute. */
function mayStart(day: DaySituation, minute: number): boolean {
  const { rules, training, pinned, eatenAt } = day;
  const lastEaten = eatenAt.at(-1) ?? Number.NEGATIVE_INFINITY;
  if (minute < day.wake || minute < (day.now ?? 0) || minute < lastEaten + rules.minGapMinutes) return false;
  if (minute > day.sleep - rules.lastMealToSleepMinutes) return false;
  if (training && minute > training.start - rules.mealToTrainingMinutes && minute < training.end)
    return false;
  return pinned.every((pin) => Math.abs(minute - pin.at) >= rules.minGapMinutes);
}

/** Meals that fit when each is eaten as soon as it may be. */
function mostThatFit(day: DaySituation): number {
  let count = 0;
  let next = 0;
  for (let minute = 0; minute <= day.sleep; minute += 1) {
    if (minute < next || !mayStart(day, minute)) continue;
    count += 1;
    next = minute + Math.max(1, day.rules.minGapMinutes);
  }
  return count;
}

describe('the meals of a day', () => {
  it('[DAY-02] [DAY-03] [DAY-04] [DAY-05] [DAY-06] as many as the rules allow and the clock fits, each where it may be', () => {
    let scheduled = 0;
    for (const { seed, day } of situations()) {
      const free = scheduleMeals(day).meals.filter((meal) => meal.pinned === undefined);
      const allowed = Math.max(0, day.rules.meals.max - day.eatenAt.length - day.pinned.length);
      expect(free.length, `seed ${seed}`).toBe(Math.min(allowed, mostThatFit(day)));
      free.forEach(({ at }, m) => {
        expect(mayStart(day, at), `seed ${seed} at ${at}`).toBe(true);
        const before = free[m - 1]?.at ?? Number.NEGATIVE_INFINITY;
        expect(at - before, `seed ${seed}`).toBeGreaterThanOrEqual(Math.max(1, day.rules.minGapMinutes));
      });
      scheduled += free.length;
    }
    expect(scheduled).toBeGreaterThan(300);
  });

  it('[DAY-07] a plain day has a meal one to two hours before training and one within the hour after it', () => {
    const request = dayRequestOf(1);
    const day = readDay({
      ...request,
      now: '07:00',
      events: { wake: '06:30', sleep: '23:00', training: { start: '16:00', minutes: 90 } },
    });
    if (!day.ok) throw new Error(day.problem.message);
    const times = scheduleMeals(day.value).meals.map((meal) => meal.at);
    expect(times.some((at) => at >= 14 * 60 && at <= 15 * 60)).toBe(true);
    expect(times.some((at) => at >= 17.5 * 60 && at <= 18.5 * 60)).toBe(true);
  });

  it('[DAY-09] a quarter of an hour later in everything is a quarter of an hour later in every meal', () => {
    const later = (day: DaySituation, by: number): DaySituation => ({
      ...day,
      ...(day.now !== undefined && { now: day.now + by }),
      wake: day.wake + by,
      sleep: day.sleep + by,
      ...(day.training && { training: { start: day.training.start + by, end: day.training.end + by } }),
      eatenAt: day.eatenAt.map((at) => at + by),
      pinned: day.pinned.map((pin) => ({ ...pin, at: pin.at + by })),
    });
    for (const { seed, day } of situations()) {
      const now = scheduleMeals(day).meals;
      const then = scheduleMeals(later(day, 15)).meals;
      expect(then, `seed ${seed}`).toEqual(now.map((meal) => ({ ...meal, at: meal.at + 15 })));
    }
  });
});

describe('the targets of meals', () => {
  const before = 'before-training' as const;
  const after = 'after-training' as const;
  const away = 'away' as const;

  it('[DAY-11] [DAY-12] [DAY-13] [DAY-14] they add up, protein even, carbohydrate near training, fat away from it and under the cap', () => {
    for (const roles of [
      [away, before, after, away],
      [before, after],
      [away, away, after],
      [before],
      [away, before],
    ]) {
      const targets = mealTargets(roles, [160, 240, 66], 15);
      for (const [k, left] of [160, 240, 66].entries()) {
        expect(targets.reduce((sum, target) => sum + (target[k] ?? 0), 0)).toBeCloseTo(left, 4);
      }
      expect(new Set(targets.map(([protein]) => protein)).size).toBe(1);
      const near = targets.filter((_, m) => roles[m] !== away);
      const carbohydrate = near.reduce((sum, target) => sum + target[1], 0);
      if (near.length < targets.length && near.length > 0)
        expect(carbohydrate).toBeGreaterThanOrEqual(0.6 * 240);
      const capped = roles.length > 1 ? targets.filter((_, m) => roles[m] === before) : [];
      for (const target of capped) expect(target[2]).toBeLessThanOrEqual(15);
    }
  });
});

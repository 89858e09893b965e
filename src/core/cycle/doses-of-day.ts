import { readShape } from '../problems/from-issues.ts';
import { scheduleRequest, type ScheduleAnswer } from '../health/supplements/schedule-request.ts';
import { scheduleSupplements } from '../health/supplements/schedule-supplements.ts';
import { productsIn, scheduleRequestOf } from '../health/supplements/regimens.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { knownNutrients, type NutrientTotal } from '../kitchen/nutrients.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { formatClock, LAST_CLOCK_MINUTE, parseClock } from '../units/clock.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';
import type { DaySheet } from './day-sheet.ts';
import { drawAhead } from './draw-now.ts';

export type DoseItem = ScheduleAnswer['items'][number];

/** Doses that are swallowed together: one tap takes them all. */
export interface DoseGroup {
  /** The meal's slot where they go with a meal, else the time: it stays while the meal is re-planned in place. */
  readonly key: string;
  readonly at: ClockMinutes;
  readonly slot?: string;
  readonly items: readonly DoseItem[];
}

/** What was taken or skipped today, as it stands in the journal. */
export interface DoseDone {
  readonly fact: Fact<'supplement-taken'> | Fact<'supplement-skipped'>;
  readonly name: string;
  readonly unit: string;
}

export interface DosesOfDay {
  readonly answer: ScheduleAnswer;
  readonly groups: readonly DoseGroup[];
  readonly done: readonly DoseDone[];
}

/** So long after a meal a dose still goes with it (common practice, no source). */
const STILL_WITH_MEAL: Minutes = 45;

/**
 * The doses of a prep day beside the meals they belong to (HLT-37): asked anew of the sheet each time, so that a day planned again
 * moves them too. A meal that is late waits, and its doses with it; a meal just eaten may still be followed by its doses. On
 * the morning of a draw everything waits until the needle is out.
 */
export function dosesOfDay(ledger: Ledger, sheet: DaySheet, now: ClockMinutes): Outcome<DosesOfDay> {
  const { shape, day } = sheet;
  if (!shape)
    return refused(
      'day/no-shape',
      'shape',
      'When this day begins and ends is not entered yet.',
      'Enter waking and sleep; doses find their time between them.',
    );
  const from = Math.max(now, waitsUntil(ledger, day));
  const request = scheduleRequestOf(ledger, {
    date: day,
    now: formatClock(Math.min(from, LAST_CLOCK_MINUTE)),
    events: {
      wake: formatClock(shape.wake),
      sleep: formatClock(shape.sleep),
      ...(shape.training && {
        training: { start: formatClock(shape.training.start), minutes: shape.training.minutes },
      }),
    },
    meals: mealsOf(sheet, from),
  });
  const shaped = readShape(scheduleRequest, request, 'health');
  if (!shaped.ok) return shaped;
  const outcome = scheduleSupplements(shaped.value);
  if (!outcome.ok) return outcome;
  return answered({
    answer: outcome.value,
    groups: grouped(outcome.value.items),
    done: doneOn(ledger, day),
  });
}

function waitsUntil(ledger: Ledger, day: string): ClockMinutes {
  const draw = drawAhead(ledger, day);
  return draw?.data.date === day ? draw.at : 0;
}

function mealsOf(sheet: DaySheet, from: ClockMinutes): ReturnType<typeof mealOf>[] {
  const eaten = sheet.eaten.map((meal) => {
    const justNow = from >= meal.at && from - meal.at <= STILL_WITH_MEAL;
    return mealOf(meal.fact.data.slot ?? meal.fact.entry.id, justNow ? from : meal.at, meal.total);
  });
  const open = sheet.meals
    .filter((meal) => !meal.eaten && !meal.skipped)
    .map((meal) => mealOf(meal.slot, Math.max(meal.at, from), meal.total));
  return [...eaten, ...open];
}

function mealOf(slot: string, at: ClockMinutes, total: NutrientTotal) {
  const { carbohydrateG, fatG } = knownNutrients(total);
  return {
    slot,
    at: formatClock(Math.min(at, LAST_CLOCK_MINUTE)),
    carbohydrateG: Math.min(2000, Math.max(0, carbohydrateG)),
    fatG: Math.min(1000, Math.max(0, fatG)),
  };
}

function grouped(items: readonly DoseItem[]): DoseGroup[] {
  const groups = new Map<string, DoseItem[]>();
  for (const item of items) {
    const key = item.slot ?? item.at;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups].flatMap(([key, together]) => {
    const [first] = together;
    if (!first) return [];
    return [
      {
        key,
        at: parseClock(first.at) ?? 0,
        ...(first.slot === undefined ? {} : { slot: first.slot }),
        items: together,
      },
    ];
  });
}

function doneOn(ledger: Ledger, day: string): DoseDone[] {
  const products = productsIn(ledger);
  return ledger.onDay(day).flatMap((fact): DoseDone[] => {
    if (fact.kind !== 'supplement-taken' && fact.kind !== 'supplement-skipped') return [];
    const done = fact as DoseDone['fact'];
    const product = products.get(done.data.supplement);
    return [
      { fact: done, name: product?.name ?? 'a product no longer known', unit: product?.unit ?? 'unit' },
    ];
  });
}

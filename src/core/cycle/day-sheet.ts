import { shapeOfDay, type DayShape } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { PlateItem } from '../journal/kinds/plate-item.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { sumNutrients, type NutrientAmount, type NutrientTotal } from '../kitchen/nutrients.ts';
import { parseClock } from '../units/clock.ts';
import type { ClockMinutes, Grams, Minutes } from '../units/quantities.ts';

/** What a plate item is called and holds, as it was known at a moment. Undefined: the journal no longer knows the food. */
export type ReadItem = (
  item: PlateItem,
  atMs?: number,
) => { readonly name: string; readonly amount: NutrientAmount } | undefined;

export interface SheetItem {
  readonly item: PlateItem;
  readonly name: string;
  /** Absent for a guess without a weight. */
  readonly grams?: Grams;
  readonly amount?: NutrientAmount;
}

export interface EatenMeal {
  readonly fact: Fact<'meal-eaten'>;
  readonly at: ClockMinutes;
  readonly items: readonly SheetItem[];
  readonly total: NutrientTotal;
}

export type MealState = 'eaten' | 'skipped' | 'late' | 'due' | 'ahead';

type PlannedMeal = DataOf<'plan-adopted'>['meals'][number];

export interface SheetMeal {
  readonly slot: string;
  readonly at: ClockMinutes;
  readonly planned: PlannedMeal;
  readonly items: readonly SheetItem[];
  readonly total: NutrientTotal;
  readonly state: MealState;
  /** How long ago it should have been eaten; 0 where it is not late. */
  readonly lateBy: Minutes;
  readonly eaten?: EatenMeal;
  readonly skipped?: Fact<'meal-skipped'>;
}

export interface MacrosLeft {
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
}

/** One prep day as it stands: what was meant, what was eaten, what is left. Derived from the journal alone. */
export interface DaySheet {
  readonly day: string;
  readonly shape?: DayShape;
  readonly targets?: Fact<'target-set'>;
  readonly plan?: Fact<'plan-adopted'>;
  readonly wishes?: Fact<'plan-wished'>;
  /** Every meal eaten today, planned or not, in time order. */
  readonly eaten: readonly EatenMeal[];
  /** The adopted plan's meals in time order. */
  readonly meals: readonly SheetMeal[];
  readonly total: NutrientTotal;
  /** Targets minus eaten; below zero is over. Absent without targets. */
  readonly left?: MacrosLeft;
  /** The first planned meal that is neither eaten nor skipped. */
  readonly next?: SheetMeal;
}

/** A planned meal is due from so long before its time until it counts as late (common practice, no source). */
const DUE_BEFORE: Minutes = 15;
const LATE_AFTER: Minutes = 20;

/** Reads the sheet of a prep day. `now` is minutes of that prep day; for a day that is over pass its end (RUN-03). */
export function daySheet(ledger: Ledger, day: string, now: ClockMinutes, read: ReadItem): DaySheet {
  const shape = shapeOfDay(ledger, day);
  const targets = shape && targetsOfDay(ledger, day, shape.dayKind);
  const facts = ledger.onDay(day);
  const plan = facts.findLast((fact): fact is Fact<'plan-adopted'> => fact.kind === 'plan-adopted');
  const wishes = facts.findLast((fact): fact is Fact<'plan-wished'> => fact.kind === 'plan-wished');
  const eaten = facts
    .filter((fact): fact is Fact<'meal-eaten'> => fact.kind === 'meal-eaten')
    .map((fact) => eatenMeal(fact, read));
  const skipped = facts.filter((fact): fact is Fact<'meal-skipped'> => fact.kind === 'meal-skipped');
  const meals = (plan?.data.meals ?? [])
    .map((planned) => sheetMeal(planned, now, eaten, skipped, read))
    .sort((a, b) => a.at - b.at);
  const total = sumNutrients(eaten.flatMap((meal) => amounts(meal.items)));
  const next = meals.find((meal) => meal.eaten === undefined && meal.skipped === undefined);
  return {
    day,
    ...(shape && { shape }),
    ...(targets && { targets, left: leftOf(targets, total) }),
    ...(plan && { plan }),
    ...(wishes && { wishes }),
    eaten,
    meals,
    total,
    ...(next && { next }),
  };
}

function eatenMeal(fact: Fact<'meal-eaten'>, read: ReadItem): EatenMeal {
  const items = fact.data.items.map((item) => sheetItem(item, read, fact.epochMs));
  return { fact, at: fact.minutes, items, total: sumNutrients(amounts(items)) };
}

function sheetMeal(
  planned: PlannedMeal,
  now: ClockMinutes,
  eaten: readonly EatenMeal[],
  skips: readonly Fact<'meal-skipped'>[],
  read: ReadItem,
): SheetMeal {
  const at = parseClock(planned.at) ?? 0;
  const items = planned.items.map((item) => sheetItem(item, read));
  const eatenAs = eaten.find((meal) => meal.fact.data.slot === planned.slot);
  const skipped = skips.find((fact) => fact.data.slot === planned.slot);
  const lateBy = eatenAs || skipped ? 0 : Math.max(0, now - at);
  return {
    slot: planned.slot,
    at,
    planned,
    items,
    total: sumNutrients(amounts(items)),
    state: eatenAs ? 'eaten' : skipped ? 'skipped' : stateAt(at, now),
    lateBy: lateBy > LATE_AFTER ? lateBy : 0,
    ...(eatenAs && { eaten: eatenAs }),
    ...(skipped && { skipped }),
  };
}

function stateAt(at: ClockMinutes, now: ClockMinutes): MealState {
  if (now > at + LATE_AFTER) return 'late';
  return now >= at - DUE_BEFORE ? 'due' : 'ahead';
}

function sheetItem(item: PlateItem, read: ReadItem, atMs?: number): SheetItem {
  const known = read(item, atMs);
  const name = known?.name ?? (item.source === 'guess' ? item.name : 'a food this journal no longer knows');
  return {
    item,
    name,
    ...(item.grams !== undefined && { grams: item.grams }),
    ...(known && { amount: known.amount }),
  };
}

function amounts(items: readonly SheetItem[]): NutrientAmount[] {
  return items.map((item) => item.amount).filter((amount) => amount !== undefined);
}

function leftOf(targets: Fact<'target-set'>, total: NutrientTotal): MacrosLeft {
  const { data } = targets;
  return {
    proteinG: data.proteinG - total.nutrients.proteinG,
    carbohydrateG: data.carbohydrateG - total.nutrients.carbohydrateG,
    fatG: data.fatG - total.nutrients.fatG,
  };
}

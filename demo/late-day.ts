import { addDays } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { adoptPlan } from '#core/cycle/adopt-plan.ts';
import { daySheet } from '#core/cycle/day-sheet.ts';
import { kitchenNow } from '#core/cycle/kitchen-now.ts';
import { planRequest } from '#core/cycle/plan-request.ts';
import { planDay } from '#core/day/plan-day.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import { writeCardio } from './cardio.ts';
import { foods, writeCount } from './pantry.ts';
import { storyMs, type Scribe } from './scribe.ts';
import { story, type StoryClock } from './story.ts';

/** The evening before: a pot of rice for today, under the strict rule good for a day. */
export function writeRicePot(scribe: Scribe): void {
  const day = addDays(story.today, -1);
  scribe.write(day, '20:10', 'stock-bought', { food: foods.dryRice, grams: 1000, place: 'cupboard' });
  scribe.write(day, '20:30', 'batch-cooked', {
    batch: 'rice-pot-1',
    name: 'Rice, plain',
    ingredients: [{ food: foods.dryRice, rawG: 250 }],
    container: 'rice-pot',
    containerG: 872,
    cookedGrossG: 872 + 704,
    fromStock: true,
  });
}

/** The morning before it went wrong: scale, count, walk. The plan is written after this, by the planner itself. */
export function writeMorning(scribe: Scribe, scaleKg: number): void {
  const day = story.today;
  scribe.write(day, '05:52', 'body-weighed', { massKg: roundTo(scaleKg, 1), scale: 'bathroom' });
  writeCount(scribe, day, '05:54');
}

/** The day as it was meant: planned by the planner itself from what is in the kitchen. */
export function writePlan(scribe: Scribe, massKg: number, at: StoryClock): void {
  const day = story.today;
  const ledger = createLedger(scribe.entries);
  const kitchen = kitchenNow(ledger, storyMs(day, '05:58', at));
  const sheet = daySheet(ledger, day, 5 * 60 + 58, kitchen.read);
  const request = planRequest({
    sheet,
    plannable: kitchen.plannable,
    now: 5 * 60 + 58,
    massKg,
    budgetMs: STORY_BUDGET_MS,
  });
  if (!request.ok) throw new RangeError(request.problem.message);
  // A clock that stands still never pulls the brake: the same plan on every machine.
  const plan = planDay(request.value, { solver: solvePlates, clockMs: () => 0 });
  if (!plan.ok) throw new RangeError(plan.problem.message);
  scribe.write(
    day,
    '05:58',
    'plan-adopted',
    adoptPlan({ sheet, plan: plan.value, cause: 'morning', now: 5 * 60 + 58, available: kitchen.available }),
  );
}

const STORY_BUDGET_MS = 250;

export function writeUntilNoon(scribe: Scribe): void {
  const day = story.today;
  writeCardio(scribe, day);
  scribe.write(day, '07:05', 'water-drunk', { drink: 'Water', millilitres: 500 });
  scribe.write(day, '07:20', 'note-written', {
    text: 'The slip gate jammed and the early shift could not leave: called in to the boathouse before breakfast. Nothing eaten yet.',
  });
  scribe.write(day, '10:30', 'water-drunk', { drink: 'Coffee, black', millilitres: 250, caffeineMg: 95 });
}

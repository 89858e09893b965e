import { computed, signal } from '@preact/signals';
import { type ShowDayNow, showDayNow } from '#core/cycle/show-day-now.ts';
import { adoptPlan } from '#core/cycle/adopt-plan.ts';
import { biteAdded, mealsOf, movedMeals, type ShowMeal, showMealRequest } from '#core/cycle/show-meals.ts';
import { type ShowTask, stageMoved } from '#core/course/show-day.ts';
import type { AnsweredMeal } from '#core/day/day-answer.ts';
import { plateItemOf } from '#core/kitchen/item-nutrients.ts';
import { answered, type Outcome, type Problem, refused } from '#core/problems/problem.ts';
import { formatClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { today } from '../state/clock.ts';
import { ledger, recordAll } from '../state/open-journal.ts';
import { answerInWorker } from '../worker/plan-client.ts';
import { massKg } from './athlete-view.ts';
import { kitchen } from './kitchen-view.ts';
import { momentThere, nextShow } from './show-view.ts';

/** The day of the next show as it stands; undefined while no show is set. */
export const showDay = computed(() => {
  const show = nextShow.value;
  return show && showDayNow(ledger.value, show, today.value, momentThere(show), kitchen.value.read);
});

/** Whether plates are being worked out, and what stood in the way the last time. */
export const showPlanning = signal<{ readonly busy: boolean; readonly problem?: Problem }>({ busy: false });

/** Plans every small meal to the gram from what the stock holds, and writes them as the plan of that day. */
export async function planShowMeals(day: ShowDayNow): Promise<void> {
  if (showPlanning.peek().busy || !day.tasks.ok) return;
  showPlanning.value = { busy: true };
  // On the day itself what is past is past.
  const ahead = mealsOf(day.tasks.value).filter(({ at }) => at >= day.clock);
  const meals = await platesOf(ahead, day.show.date);
  if (!meals.ok) {
    showPlanning.value = { busy: false, problem: meals.problem };
    return;
  }
  const plan = adoptPlan({
    sheet: day.sheet,
    plan: { cost: meals.value.cost, gap: meals.value.gap, meals: meals.value.meals },
    cause: 'show day',
    available: kitchen.peek().available,
  });
  // Pinned: the times hang on the stage, so a plan of the rest of the day leaves them alone.
  const data = { ...plan, meals: plan.meals.map((meal) => ({ ...meal, pinned: true })) };
  const saved = await recordAll([{ kind: 'plan-adopted', data, day: day.show.date }], {
    says: 'Small meals planned',
  });
  showPlanning.value = { busy: false, ...(saved.status === 'refused' && { problem: saved.problem }) };
}

/** The class is called at another time: what hangs on the stage moves, plates with it, in one writing. */
export async function moveStage(day: ShowDayNow, stage: ClockMinutes): Promise<void> {
  if (!day.tasks.ok) return;
  const before = day.tasks.value;
  const after = stageMoved(before, day.clock, stage);
  if (!after.ok) {
    showPlanning.value = { busy: false, problem: after.problem };
    return;
  }
  const plan = day.sheet.plan?.data;
  const said = { stage: formatClock(stage), now: formatClock(day.clock) };
  const moved = plan && {
    ...plan,
    now: said.now,
    cause: 'stage moved' as const,
    meals: movedMeals(plan.meals, before, after.value, await biteFor(before, after.value, day.show.date)),
  };
  const saved = await recordAll(
    [
      { kind: 'stage-moved', data: { show: day.show.show, ...said } },
      ...(moved ? [{ kind: 'plan-adopted' as const, data: moved, day: day.show.date }] : []),
    ],
    { says: `Stage now at ${said.stage}` },
  );
  showPlanning.value = { busy: false, ...(saved.status === 'refused' && { problem: saved.problem }) };
}

interface Plates {
  readonly meals: readonly AnsweredMeal[];
  readonly cost: number;
  readonly gap: number;
}

/** One meal after the other, each from what those before it left. */
async function platesOf(meals: readonly ShowMeal[], date: string): Promise<Outcome<Plates>> {
  const weighed = massKg.peek();
  if (weighed === undefined)
    return refused('day/never-weighed', 'massKg', 'No weigh-in is in the journal yet.', 'Weigh in once.');
  const { plannable } = kitchen.peek();
  const plates: AnsweredMeal[] = [];
  let [cost, gap] = [0, 0];
  for (const meal of meals) {
    const taken = plates.flatMap(({ items }) => items);
    const answer = await answerInWorker(
      showMealRequest(meal, { date, massKg: weighed, plannable, taken }),
      () => undefined,
    );
    if (!answer.ok) return answer;
    const [plate] = answer.value.meals;
    if (!plate)
      return refused(
        'course/no-plate',
        'stock',
        `Nothing in stock makes the small meal at ${formatClock(meal.at)}.`,
        'Buy or cook what your gut knows (rice, oats, potatoes), count it in the Kitchen, and plan again.',
      );
    plates.push({ ...plate, at: formatClock(meal.at) });
    cost += answer.value.cost;
    gap = Math.max(gap, answer.value.gap);
  }
  return answered({ meals: plates, cost, gap });
}

/** The bite for a long wait; a stock that holds nothing for it leaves the wait without one. */
async function biteFor(before: readonly ShowTask[], after: readonly ShowTask[], date: string) {
  const bite = biteAdded(before, after);
  if (!bite) return undefined;
  const plates = await platesOf([bite], date);
  const plate = plates.ok ? plates.value.meals[0] : undefined;
  if (!plate) return undefined;
  const { at, role, target } = plate;
  const items = plate.items.map(({ food, grams }) => plateItemOf(food, grams));
  return { slot: `bite ${at}`, at, role, target, items, pinned: true };
}

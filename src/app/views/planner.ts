import { computed, signal } from '@preact/signals';
import { adoptPlan } from '#core/cycle/adopt-plan.ts';
import { planChanges, planMisses } from '#core/cycle/plan-changes.ts';
import { planRequest } from '#core/cycle/plan-request.ts';
import { weekFoodsOn } from '#core/cycle/week-ahead.ts';
import type { AnsweredMeal } from '#core/day/day-answer.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { nowClock } from '../state/clock.ts';
import { ledger, record } from '../state/open-journal.ts';
import { answerInWorker } from '../worker/plan-client.ts';
import { massKg } from './athlete-view.ts';
import { sheet } from './day-view.ts';
import { kitchen } from './kitchen-view.ts';

export type Cause = DataOf<'plan-adopted'>['cause'];

export type Planning =
  | { readonly status: 'idle' }
  /** `best` is the best plan found so far, for the screen to show while it improves. */
  | { readonly status: 'planning'; readonly best?: readonly AnsweredMeal[] }
  | { readonly status: 'refused'; readonly problem: Problem };

/** What the last new plan changed and why, until it is put away. */
export interface PlanChange {
  readonly cause: Cause;
  readonly sentences: readonly string[];
  readonly why: readonly string[];
}

export const planning = signal<Planning>({ status: 'idle' });
export const planChange = signal<PlanChange | undefined>(undefined);

/** Whether what is in the kitchen allows a plan at all. */
export const nothingToPlanFrom = computed(() => kitchen.value.plannable.length === 0);

/**
 * Plans the rest of the day from now in the worker and adopts the answer: one tap. What changed is said; undo takes it back.
 * Nothing eaten is altered.
 */
export async function planNow(cause: Cause): Promise<void> {
  if (planning.peek().status === 'planning') return;
  const day = sheet.peek();
  const now = nowClock.peek();
  const beforeWaking = day.shape !== undefined && now < day.shape.wake;
  const weighed = massKg.peek();
  if (weighed === undefined) {
    planning.value = { status: 'refused', problem: neverWeighed };
    return;
  }
  const request = planRequest({
    sheet: day,
    plannable: kitchen.peek().plannable,
    ...(!beforeWaking && { now }),
    massKg: weighed,
    weekFoods: weekFoodsOn(ledger.peek(), kitchen.peek().catalogue, day.day),
  });
  if (!request.ok) {
    planning.value = { status: 'refused', problem: request.problem };
    return;
  }
  planning.value = { status: 'planning' };
  const answer = await answerInWorker(request.value, (best) => {
    planning.value = { status: 'planning', best };
  });
  if (!answer.ok) {
    planning.value = { status: 'refused', problem: answer.problem };
    return;
  }
  planning.value = { status: 'idle' };
  const data = adoptPlan({
    sheet: day,
    plan: answer.value,
    cause,
    ...(!beforeWaking && { now }),
    available: kitchen.peek().available,
  });
  const saved = await record('plan-adopted', data, {
    says: day.plan ? 'Planned again' : 'The day is planned',
  });
  if (saved.status === 'refused') {
    planning.value = { status: 'refused', problem: saved.problem };
    return;
  }
  planChange.value = {
    cause,
    sentences: [
      ...(data.meals.length === 0 ? [] : planMisses(answer.value.deviation)),
      ...planChanges(
        day,
        data,
        kitchen.peek().read,
        beforeWaking ? undefined : now,
        !nothingToPlanFrom.peek(),
      ),
    ],
    why: answer.value.why,
  };
}

const neverWeighed: Problem = {
  code: 'day/never-weighed',
  path: 'athlete.massKg',
  message: 'No weigh-in is in the journal yet.',
  remedy: 'Weigh in once, then plan.',
};

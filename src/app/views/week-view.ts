import { computed, signal } from '@preact/signals';
import { weekAhead } from '#core/cycle/week-ahead.ts';
import { weekAsk } from '#core/cycle/week-ask.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { WeekPlan } from '#core/week/week-plan.ts';
import { today } from '../state/clock.ts';
import { ledger, record } from '../state/open-journal.ts';
import { weekInWorker } from '../worker/week-client.ts';
import { kitchen } from './kitchen-view.ts';

/** The adopted week as it stands; undefined while none is. */
export const week = computed(() => weekAhead(ledger.value, kitchen.value, today.value));

export type WeekPlanning =
  | { readonly status: 'idle' }
  | { readonly status: 'planning' }
  | { readonly status: 'refused'; readonly problem: Problem };

export const weekPlanning = signal<WeekPlanning>({ status: 'idle' });

/** Plans the days after today in the worker and adopts the answer; undo takes it back. */
export async function planWeek(): Promise<void> {
  if (weekPlanning.peek().status === 'planning') return;
  const ask = weekAsk(ledger.peek(), kitchen.peek(), today.peek());
  if (!ask.ok) {
    weekPlanning.value = { status: 'refused', problem: ask.problem };
    return;
  }
  weekPlanning.value = { status: 'planning' };
  const again = week.peek() !== undefined;
  const plan = await weekInWorker(ask.value);
  if (!plan.ok) {
    weekPlanning.value = { status: 'refused', problem: plan.problem };
    return;
  }
  const saved = await record('week-adopted', adopted(plan.value), {
    says: again ? 'The week is planned again' : 'The week is planned',
  });
  weekPlanning.value =
    saved.status === 'refused' ? { status: 'refused', problem: saved.problem } : { status: 'idle' };
}

function adopted({ days, pans, cost, gap, why }: WeekPlan) {
  return {
    week: `week-${days[0]?.date ?? ''}`,
    days: days.map(({ date, target, dishes, foods }) => ({
      date,
      target: { ...target },
      dishes: dishes.map((dish) => ({ ...dish })),
      foods: foods.map((food) => ({ ...food })),
    })),
    pans: pans.map((pan) => ({ ...pan })),
    cost,
    gap,
    why: [...why],
  };
}

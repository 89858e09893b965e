import { computed, signal } from '@preact/signals';
import { weekAhead } from '#core/cycle/week-ahead.ts';
import { weekBase, type WeekBase } from '#core/cycle/week-facts.ts';
import { weekAsk } from '#core/cycle/week-ask.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { WeekPlan } from '#core/week/week-plan.ts';
import { today } from '../state/clock.ts';
import { ledger, record } from '../state/open-journal.ts';
import { weekInWorker } from '../worker/week-client.ts';
import { kitchen } from './kitchen-view.ts';

let lastBase: WeekBase | undefined;
/** The journal as it was is read again only when another plan stands: a tap elsewhere costs nothing. */
const base = computed(() => (lastBase = weekBase(ledger.value, lastBase)));

/** The adopted week as it stands; undefined while none is. */
export const week = computed(() => weekAhead(ledger.value, kitchen.value, today.value, base.value));

/** What the standing week no longer fits, as one text: the same text is the same question. Undefined while it fits. */
export const weekQuestion = computed(() => {
  const changes = week.value?.outOfLine ?? [];
  return changes.length === 0 ? undefined : [base.value?.key, today.value, ...changes].join('\n');
});

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
  const saved = await record('week-adopted', adoptedWeek(plan.value), {
    says: again ? 'The week is planned again' : 'The week is planned',
  });
  weekPlanning.value =
    saved.status === 'refused' ? { status: 'refused', problem: saved.problem } : { status: 'idle' };
}

/** A solved week as the journal keeps it. */
export function adoptedWeek({ days, pans, cost, gap, why }: WeekPlan) {
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

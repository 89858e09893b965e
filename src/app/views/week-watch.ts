import { effect, signal } from '@preact/signals';
import { weekAsk } from '#core/cycle/week-ask.ts';
import { weekDifferences, type WeekDifference } from '#core/cycle/week-differences.ts';
import type { WeekPlan } from '#core/week/week-plan.ts';
import { today } from '../state/clock.ts';
import { phase, which } from '../state/journals.ts';
import { ledger, record, type Saved } from '../state/open-journal.ts';
import { weekInWorker } from '../worker/week-client.ts';
import { kitchen } from './kitchen-view.ts';
import { adoptedWeek, week, weekPlanning, weekQuestion } from './week-view.ts';

/** A week solved again beside the one that stands, until it is taken or left (WEK-10). */
export interface WeekProposal {
  /** The question it answers. */
  readonly question: string;
  readonly because: readonly string[];
  /** Empty: what stands is still the best. */
  readonly changes: readonly WeekDifference[];
  readonly plan: WeekPlan;
}

export type WeekWatch =
  | { readonly status: 'still' }
  | { readonly status: 'solving' }
  | { readonly status: 'proposed'; readonly proposal: WeekProposal };

export const weekWatch = signal<WeekWatch>({ status: 'still' });

/** So long after the last change the week is solved again: a pan weighed in five steps is one question. */
const SETTLE_MS = 1200;

/** Questions answered or refused since the start: none is put to the solver twice. */
const settled = new Set<string>();

/** Solves the week again by itself whenever it no longer fits; what it finds is shown, never adopted by itself. */
export function followWeek(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    // A lent copy is only read: what would be proposed could not be taken.
    const follows = phase.value === 'open' && which.value !== 'lent';
    const question = follows ? weekQuestion.value : undefined;
    const busy = weekPlanning.value.status === 'planning' || weekWatch.value.status === 'solving';
    clearTimeout(timer);
    if (busy) return;
    const { value } = weekWatch;
    if (value.status === 'proposed' && value.proposal.question !== question) {
      weekWatch.value = { status: 'still' };
      // A thing taken back may be done again: the same question is then a new one.
      settled.delete(value.proposal.question);
    }
    if (question === undefined || settled.has(question)) return;
    timer = setTimeout(() => void solveAgain(question), SETTLE_MS);
  });
}

async function solveAgain(question: string): Promise<void> {
  settled.add(question);
  const ask = weekAsk(ledger.peek(), kitchen.peek(), today.peek());
  if (!ask.ok) return;
  weekWatch.value = { status: 'solving' };
  const plan = await weekInWorker(ask.value);
  const standing = week.peek();
  if (!plan.ok || !standing || weekQuestion.peek() !== question) {
    // Something else happened meanwhile, or there is no plan: the screen says what no longer fits, and one may plan by hand.
    if (weekQuestion.peek() !== question) settled.delete(question);
    weekWatch.value = { status: 'still' };
    return;
  }
  const { catalogue, nameOfFood } = kitchen.peek();
  const nameOf = (id: string) => catalogue.recipe(id)?.name ?? nameOfFood(id) ?? id;
  const proposal: WeekProposal = {
    question,
    because: standing.outOfLine,
    changes: weekDifferences(standing.adopted.data, plan.value, today.peek(), nameOf),
    plan: plan.value,
  };
  weekWatch.value = { status: 'proposed', proposal };
}

/** The plan solved again becomes the one that stands; undo takes it back. */
export async function takeProposal({ plan }: WeekProposal): Promise<Saved> {
  return record('week-adopted', adoptedWeek(plan), { says: 'The new week stands' });
}

/** The plan that stands goes on as it is; the same changes are not held against it again. */
export async function leaveProposal({ because }: WeekProposal): Promise<Saved | undefined> {
  const standing = week.peek();
  if (!standing) return undefined;
  return record(
    'week-kept',
    { week: standing.adopted.data.week, because: because.map((sentence) => sentence.slice(0, 400)) },
    { says: 'The week stays as it stands' },
  );
}

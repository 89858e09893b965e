import { computed, signal } from '@preact/signals';
import { type AfterwardsNow, afterwardsNow, type WayBackPace } from '#core/cycle/afterwards-now.ts';
import type { Outcome } from '#core/problems/problem.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { body, bodyQuestion } from '../../views/body-view.ts';

/** How energy is to rise, until a way back is adopted; then as adopted, unless chosen anew. */
export const chosenPace = signal<WayBackPace | undefined>(undefined);

export const pace = computed(
  () => chosenPace.value ?? ledger.value.latest('way-back-adopted')?.data.pace ?? 'at once',
);

/** The way back as it stands, or that the body it starts from is still being estimated. */
export const afterwards = computed((): 'working' | Outcome<AfterwardsNow> => {
  const question = bodyQuestion.value;
  if (!question.ok) return question;
  const state = body.value;
  if (state.status === 'working') return 'working';
  if (!state.outcome.ok) return state.outcome;
  return afterwardsNow(ledger.value, {
    today: today.value,
    pace: pace.value,
    sex: question.value.athlete.sex,
    log: question.value.days,
    body: state.outcome.value.answer.days,
  });
});

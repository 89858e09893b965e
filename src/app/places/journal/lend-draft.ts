import * as v from 'valibot';
import { LENT_PARTS, type LentPart } from '#core/journal/kinds/lending.ts';
import type { Loan } from '#core/journal/lent-entries.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';

/** What each part holds, in the words of the places. */
export const PART_WORDS: Readonly<Record<LentPart, { readonly label: string; readonly detail: string }>> = {
  body: { label: 'Body', detail: 'weight, folds, tape, body fat' },
  food: { label: 'Day and Kitchen', detail: 'meals, targets, recipes, stock' },
  training: { label: 'Gym', detail: 'sessions, sets, machines, cardio, pain' },
  course: { label: 'Course', detail: 'show, forecast with the weight and food it reads, check-ins, dates' },
  health: { label: 'Health', detail: 'blood values, supplements, medicines, how you feel, cycle' },
};

export const lendDraft = v.strictObject({
  to: v.string(),
  parts: v.array(v.picklist(LENT_PARTS)),
  since: v.string(),
  until: v.string(),
});
export type LendDraft = v.InferOutput<typeof lendDraft>;

const USUAL_DAYS = 28;
/** Whoever needs it longer is lent it anew, so that nothing stays open that was forgotten. */
const MOST_DAYS = 366;

/** Blood and medicines are lent only where they are asked for. */
export function emptyLoan(today: string): LendDraft {
  return {
    to: '',
    parts: ['body', 'food', 'training', 'course'],
    since: '',
    until: addDays(today, USUAL_DAYS),
  };
}

/** The loan as typed, or what is still in the way. */
export function loanFrom(typed: LendDraft, loan: string, today: string): Outcome<Loan> {
  const { to, parts, since, until } = typed;
  if (to.trim() === '')
    return refused('lend/nobody', 'to', 'Nobody is named.', 'Write whom it is for: a coach, a physician.');
  if (parts.length === 0)
    return refused('lend/nothing', 'parts', 'No part is chosen.', 'Choose at least one.');
  if (since !== '' && (parseDate(since) === undefined || since > today))
    return refused(
      'lend/since',
      'since',
      'That is no day up to today.',
      'Choose a day, or leave it empty for everything.',
    );
  if (parseDate(until) === undefined || until < today || until > addDays(today, MOST_DAYS))
    return refused(
      'lend/until',
      'until',
      'The last day is missing, is over, or is more than a year away.',
      'Choose a day from today to a year from now.',
    );
  return answered({
    loan,
    to: to.trim().slice(0, 80),
    parts: [...parts],
    ...(since !== '' && { since }),
    until,
  });
}

/** The parts with one put in or taken out, in the order of the places. */
export function withPart(parts: readonly LentPart[], part: LentPart, chosen: boolean): LendDraft['parts'] {
  return LENT_PARTS.filter((one) => (one === part ? chosen : parts.includes(one)));
}

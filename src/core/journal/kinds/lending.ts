import * as v from 'valibot';
import { date, text } from '../../problems/shapes.ts';

/** Parts of a journal that can be lent (lent-entries.ts says which kinds each holds). */
export const LENT_PARTS = ['body', 'food', 'training', 'course', 'health'] as const;
export type LentPart = (typeof LENT_PARTS)[number];

export const lendingKinds = {
  /** A copy to read, of chosen parts, for a chosen time. Its keys are drawn from the journal's secret and never written. */
  'copy-lent': v.strictObject({
    loan: text(80),
    to: text(80),
    parts: v.pipe(v.array(v.picklist(LENT_PARTS)), v.minLength(1, 'at least one part')),
    /** What was measured or done before this prep day stays at home; absent: nothing does. */
    since: v.optional(date),
    /** The last day on which it can be read. */
    until: date,
    takenBack: v.optional(v.boolean()),
  }),
};

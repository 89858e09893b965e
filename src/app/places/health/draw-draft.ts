import * as v from 'valibot';
import type { PlannedDraw } from '#core/health/draw/draw-plan.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';

/** A draw as it is being planned. */
export const drawDraft = v.strictObject({
  date: v.string(),
  atMinutes: v.optional(v.number()),
  laboratory: v.string(),
  analytes: v.array(v.string()),
  fasting: v.boolean(),
});
export type DrawDraft = v.InferOutput<typeof drawDraft>;

export function draftOfDraw(draw: PlannedDraw): DrawDraft {
  const at = parseClock(draw.at);
  return {
    date: draw.date,
    ...(at === undefined ? {} : { atMinutes: at }),
    laboratory: draw.laboratory ?? '',
    analytes: [...draw.analytes],
    fasting: draw.fasting,
  };
}

export function readDrawDraft(typed: DrawDraft, draw: string, today: string): Outcome<PlannedDraw> {
  if (typed.date < today)
    return refused(
      'health/draw-past',
      'date',
      `The draw of ${typed.date} has been.`,
      'Choose a day to come; results that are there are entered as a panel.',
    );
  if (typed.atMinutes === undefined)
    return refused(
      'health/no-clock',
      'atMinutes',
      'The hour of the draw is missing.',
      'Enter it, such as 7:30; the fast is counted back from it.',
    );
  const laboratory = typed.laboratory.trim();
  return answered({
    draw,
    date: typed.date,
    at: formatClock(typed.atMinutes),
    ...(laboratory !== '' && { laboratory }),
    analytes: [...typed.analytes],
    fasting: typed.fasting,
  });
}

import * as v from 'valibot';
import type { NewFact } from '../../state/open-journal.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';

export const intakeDraft = v.strictObject({
  day: v.string(),
  was: v.optional(v.picklist(['all meals logged', 'a total', 'a fast', 'not logged'])),
  energyKcal: v.optional(v.number()),
  proteinG: v.optional(v.number()),
  carbohydrateG: v.optional(v.number()),
  fatG: v.optional(v.number()),
});
export type IntakeDraft = v.InferOutput<typeof intakeDraft>;

/** Less than this in a day is asked about: a fast, half a log, or a slip? Common practice, no source. */
const LITTLE_KCAL = 500;

/** The entry a settled day becomes, or what is still lacking; nothing is guessed. */
export function settledDay(typed: IntakeDraft, today: string): Outcome<NewFact> {
  const { day, was } = typed;
  if (day === '' || day > today)
    return refused(
      'body/day-ahead',
      'day',
      'This day has not been yet.',
      `Choose ${today} or an earlier day.`,
    );
  if (was === undefined)
    return refused(
      'body/not-said',
      'was',
      'It is not said yet how the day was.',
      'Choose one: the estimate treats a fast and a day that was not logged quite differently.',
    );
  if (was === 'all meals logged') return answered({ kind: 'day-closed', data: { complete: true }, day });
  if (was === 'not logged') return answered({ kind: 'day-closed', data: { complete: false }, day });
  if (was === 'a fast')
    return answered({ kind: 'intake-totalled', data: { of: day, energyKcal: 0, fasted: true }, day });
  return total(typed);
}

function total({ day, energyKcal, proteinG, carbohydrateG, fatG }: IntakeDraft): Outcome<NewFact> {
  const whole = proteinG !== undefined && carbohydrateG !== undefined && fatG !== undefined;
  const kcal = energyKcal ?? (whole ? 4 * proteinG + 4 * carbohydrateG + 9 * fatG : undefined);
  if (kcal === undefined)
    return refused(
      'body/no-energy',
      'energyKcal',
      'The total has no energy.',
      'Enter the kilocalories, or all of protein, carbohydrate and fat.',
    );
  if (kcal < LITTLE_KCAL)
    return refused(
      'body/little-energy',
      'energyKcal',
      `${roundTo(kcal, 0)} kcal is hardly a day of food.`,
      'If nothing was eaten choose "A fast"; if the log is not whole choose "Not logged"; else enter the whole day.',
    );
  return answered({
    kind: 'intake-totalled',
    data: {
      of: day,
      energyKcal: roundTo(kcal, 0),
      ...(proteinG !== undefined && { proteinG }),
      ...(carbohydrateG !== undefined && { carbohydrateG }),
      ...(fatG !== undefined && { fatG }),
    },
    day,
  });
}

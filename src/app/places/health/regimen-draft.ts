import * as v from 'valibot';
import type { Cadence, Tie } from '#core/journal/kinds/health.ts';
import type { Regimen } from '#core/health/supplements/regimens.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';

export const TIES = [
  { value: 'first meal', label: 'first meal' },
  { value: 'last meal', label: 'last meal' },
  { value: 'high-carbohydrate meal', label: 'a meal high in carbohydrate' },
  { value: 'fat-holding meal', label: 'a meal that holds fat' },
  { value: 'before training', label: 'before training' },
  { value: 'after training', label: 'after training' },
  { value: 'before sleep', label: 'before sleep' },
  { value: 'waking, empty stomach', label: 'waking, empty stomach' },
  { value: 'clock', label: 'a clock time' },
] as const;

export const CADENCES = [
  { value: 'every day', label: 'every day' },
  { value: 'every n-th day', label: 'every second, third … day' },
  { value: 'weekdays', label: 'on weekdays' },
  { value: 'training days', label: 'training days' },
  { value: 'rest days', label: 'rest days' },
] as const;

/** A regimen as it is being entered. */
export const regimenDraft = v.strictObject({
  units: v.optional(v.number()),
  tie: v.picklist(TIES.map(({ value }) => value)),
  minutes: v.optional(v.number()),
  atMinutes: v.optional(v.number()),
  cadence: v.picklist(CADENCES.map(({ value }) => value)),
  days: v.optional(v.number()),
  weekdays: v.array(v.number()),
  from: v.string(),
  until: v.string(),
});
export type RegimenDraft = v.InferOutput<typeof regimenDraft>;

export function emptyRegimen(today: string): RegimenDraft {
  return {
    units: 1,
    tie: 'first meal',
    minutes: 30,
    cadence: 'every day',
    days: 2,
    weekdays: [],
    from: today,
    until: '',
  };
}

export function draftOfRegimen({ units, tie, cadence, from, until }: Regimen): RegimenDraft {
  const at = tie.to === 'clock' ? parseClock(tie.at) : undefined;
  return {
    ...emptyRegimen(from),
    units,
    tie: tie.to,
    ...(tie.to === 'before training' || tie.to === 'before sleep' ? { minutes: tie.minutes } : {}),
    ...(at === undefined ? {} : { atMinutes: at }),
    cadence: cadence.of,
    ...(cadence.of === 'every n-th day' ? { days: cadence.days } : {}),
    ...(cadence.of === 'weekdays' ? { weekdays: [...cadence.weekdays] } : {}),
    until: until ?? '',
  };
}

/** The regimen as the journal keeps it; pauses of the one it changes stay. */
export function readRegimenDraft(
  typed: RegimenDraft,
  of: Pick<Regimen, 'regimen' | 'supplement'> & { readonly pauses?: Regimen['pauses'] | undefined },
): Outcome<Regimen> {
  const { units, from, until } = typed;
  if (units === undefined || units <= 0)
    return refused(
      'health/no-units',
      'units',
      'The dose has no amount.',
      'Enter how many at a time, more than 0.',
    );
  const tie = tieOf(typed);
  if (!tie.ok) return tie;
  const cadence = cadenceOf(typed);
  if (!cadence.ok) return cadence;
  if (until !== '' && until < from)
    return refused(
      'health/ends-before',
      'until',
      `It would end on ${until}, before it begins on ${from}.`,
      'Choose a later last day, or leave it empty.',
    );
  return answered({
    regimen: of.regimen,
    supplement: of.supplement,
    units,
    tie: tie.value,
    cadence: cadence.value,
    from,
    ...(until !== '' && { until }),
    ...(of.pauses && of.pauses.length > 0 && { pauses: of.pauses }),
  });
}

function tieOf({ tie, minutes, atMinutes }: RegimenDraft): Outcome<Tie> {
  switch (tie) {
    case 'before training':
    case 'before sleep':
      if (minutes === undefined || minutes < 0 || minutes > 600)
        return refused(
          'health/no-minutes',
          'minutes',
          'How long before is not said.',
          'Enter the minutes, 0 to 600.',
        );
      return answered({ to: tie, minutes: Math.round(minutes) });
    case 'clock':
      if (atMinutes === undefined)
        return refused(
          'health/no-clock',
          'atMinutes',
          'The clock time is missing.',
          'Enter it, such as 21:30.',
        );
      return answered({ to: 'clock', at: formatClock(atMinutes) });
    default:
      return answered({ to: tie });
  }
}

function cadenceOf({ cadence, days, weekdays }: RegimenDraft): Outcome<Cadence> {
  switch (cadence) {
    case 'every n-th day':
      if (days === undefined || days < 2 || days > 60)
        return refused('health/no-cadence', 'days', 'Every how many days is not said.', 'Enter 2 to 60.');
      return answered({ of: cadence, days: Math.round(days) });
    case 'weekdays':
      if (weekdays.length === 0)
        return refused('health/no-weekdays', 'weekdays', 'No weekday is chosen.', 'Choose at least one.');
      return answered({ of: cadence, weekdays: [...weekdays] });
    default:
      return answered({ of: cadence });
  }
}

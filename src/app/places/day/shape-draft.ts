import * as v from 'valibot';
import type { DayShape } from '#core/day/shape-of-day.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Problem } from '#core/problems/problem.ts';
import { isoWeekday } from '#core/units/civil-date.ts';
import { formatClock } from '#core/units/clock.ts';

type Shaped = DataOf<'day-shaped'>;

/** The day's frame as typed. */
export const shapeDraft = v.strictObject({
  scope: v.picklist(['day', 'usual']),
  weekdays: v.array(v.number()),
  wake: v.optional(v.number()),
  sleep: v.optional(v.number()),
  trains: v.boolean(),
  trainingStart: v.optional(v.number()),
  trainingMinutes: v.optional(v.number()),
  trainingTitle: v.string(),
  walks: v.boolean(),
  cardioStart: v.optional(v.number()),
  cardioMinutes: v.optional(v.number()),
  cardioActivity: v.string(),
  cardioBeforeFood: v.boolean(),
  mealsMin: v.number(),
  mealsMax: v.number(),
});
export type ShapeDraft = v.InferOutput<typeof shapeDraft>;

/** The form as the day stands now; where nothing was ever said it asks for the usual day. */
export function draftOf(shape: DayShape | undefined, day: string): ShapeDraft {
  const training = shape?.training;
  const cardio = shape?.cardio[0];
  return {
    scope: shape ? 'day' : 'usual',
    weekdays: shape ? [isoWeekday(day)] : [1, 2, 3, 4, 5, 6, 7],
    wake: shape?.wake,
    sleep: shape?.sleep,
    trains: training !== undefined,
    trainingStart: training?.start,
    trainingMinutes: training?.minutes,
    trainingTitle: training?.title ?? '',
    walks: cardio !== undefined,
    cardioStart: cardio?.start,
    cardioMinutes: cardio?.minutes,
    cardioActivity: cardio?.activity ?? 'Walk',
    cardioBeforeFood: cardio?.beforeFood ?? true,
    mealsMin: shape?.rules.meals?.min ?? 3,
    mealsMax: shape?.rules.meals?.max ?? 5,
  };
}

export type ShapeReading =
  | { readonly ok: true; readonly data: Shaped }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads the form; what it does not show (gaps, caps, the template) is carried over from the shape in force. */
export function readShapeDraft(typed: ShapeDraft, inForce: Shaped | undefined): ShapeReading {
  const problems = frameProblems(typed);
  const { wake, sleep } = typed;
  if (problems.length > 0 || wake === undefined || sleep === undefined) return { ok: false, problems };
  const data: Shaped = {
    ...inForce,
    scope:
      typed.scope === 'day'
        ? { of: 'day' }
        : { of: 'usual', weekdays: [...typed.weekdays].sort((a, b) => a - b) },
    wake: formatClock(wake),
    sleep: formatClock(sleep),
    meals: { min: typed.mealsMin, max: typed.mealsMax },
  };
  delete data.training;
  delete data.cardio;
  const training = trainingOf(typed, inForce);
  const cardio = cardioOf(typed, inForce);
  if (training) data.training = training;
  if (cardio.length > 0) data.cardio = cardio;
  if (data.dayKind !== 'higher-carbohydrate') delete data.dayKind;
  return { ok: true, data };
}

function trainingOf(typed: ShapeDraft, inForce: Shaped | undefined): Shaped['training'] {
  if (!typed.trains || typed.trainingStart === undefined || typed.trainingMinutes === undefined)
    return undefined;
  const title = typed.trainingTitle.trim();
  const template = inForce?.training?.template;
  return {
    start: formatClock(typed.trainingStart),
    minutes: typed.trainingMinutes,
    ...(title !== '' && { title }),
    ...(template !== undefined && { template }),
  };
}

/** The form shows the first session; others of the day stand as they are. */
function cardioOf(typed: ShapeDraft, inForce: Shaped | undefined): NonNullable<Shaped['cardio']> {
  const others = (inForce?.cardio ?? []).slice(1);
  if (!typed.walks || typed.cardioStart === undefined || typed.cardioMinutes === undefined) return others;
  return [
    {
      start: formatClock(typed.cardioStart),
      minutes: typed.cardioMinutes,
      activity: typed.cardioActivity.trim() || 'Cardio',
      beforeFood: typed.cardioBeforeFood,
    },
    ...others,
  ];
}

function frameProblems(typed: ShapeDraft): Problem[] {
  const { wake, sleep, trains, trainingStart, trainingMinutes, walks, cardioStart, cardioMinutes } = typed;
  const faults: Problem[] = [];
  if (wake === undefined) faults.push(fault('wake', 'Waking has no time.', 'Enter it as "06:30".'));
  if (sleep === undefined)
    faults.push(fault('sleep', 'Sleep has no time.', 'Enter it as "22:30", past midnight as "24:30".'));
  if (wake !== undefined && sleep !== undefined && sleep <= wake) {
    faults.push(fault('sleep', 'Sleep does not come after waking.', 'Write times past midnight as "24:30".'));
  }
  if (trains && (trainingStart === undefined || trainingMinutes === undefined)) {
    faults.push(
      fault('trainingStart', 'Training has no time or no length.', 'Enter when it starts and its minutes.'),
    );
  }
  if (walks && (cardioStart === undefined || cardioMinutes === undefined)) {
    faults.push(
      fault('cardioStart', 'Cardio has no time or no length.', 'Enter when it starts and its minutes.'),
    );
  }
  if (typed.mealsMin > typed.mealsMax) {
    faults.push(
      fault('mealsMin', 'The least number of meals is above the most.', 'Lower the one or raise the other.'),
    );
  }
  if (typed.scope === 'usual' && typed.weekdays.length === 0) {
    faults.push(fault('weekdays', 'No weekday is chosen.', 'Choose the weekdays this is usual on.'));
  }
  return faults;
}

function fault(path: string, message: string, remedy: string): Problem {
  return { code: `day/${path}`, path, message, remedy };
}

import { readShape } from '#core/problems/from-issues.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { checkDays } from './check-days.ts';
import { estimateBody, type BodyEstimate } from './estimate-body.ts';
import { estimateRequest, type EstimateAnswer, type EstimateRequest } from './estimate-request.ts';
import { believedOf, foretoldOf } from './mixture.ts';
import type { DayParts } from './run-filter.ts';
import { smoothRun } from './smooth-run.ts';
import { suspectUnits, type DoubtfulWeight } from './suspect-units.ts';

const KG_DECIMALS = 4;
const KCAL_DECIMALS = 2;
/** Days below which the intervals say more than the middle. Common practice, no source. */
const FEW_DAYS = 14;
const MOST_NAMED = 4;

/**
 * What the body did and where the plan leads: the door of `stagewright estimate`. Filtered, so that each day knows only what was known
 * on it; smoothed on request, in the light of everything up to the last day (EST-01 to EST-12).
 */
export function answerEstimate(input: unknown, smoothed: boolean): Outcome<EstimateAnswer> {
  const shape = readShape(estimateRequest, input, 'body');
  if (!shape.ok) return shape;
  const checked = checkDays(shape.value);
  if (!checked.ok) return checked;
  const request = checked.value;
  const doubtful = suspectUnits(request.days, request.athlete.heightCm);
  const estimate = estimateBody(withoutSlips(request, doubtful), smoothed);
  if (!estimate.ok) return estimate;
  const { past, future, run, lived } = estimate.value;
  const days = smoothed ? smoothRun(run, lived.slice(0, past.length)) : past;
  return answered({
    ...(request.id !== undefined && { id: request.id }),
    days: days.map(dayOf),
    forecast: future.map((day) => ({
      date: day.date,
      massKg: foretoldOf(day.massKg, KG_DECIMALS),
      fatKg: foretoldOf(day.fatKg, KG_DECIMALS),
    })),
    why: whyEstimate(estimate.value, doubtful),
  });
}

function dayOf(day: DayParts): EstimateAnswer['days'][number] {
  return {
    date: day.date,
    massKg: believedOf(day.massKg, KG_DECIMALS),
    fatKg: believedOf(day.fatKg, KG_DECIMALS),
    leanKg: believedOf(day.leanKg, KG_DECIMALS),
    maintenanceKcal: believedOf(day.maintenanceKcal, KCAL_DECIMALS),
  };
}

/** A reading that its neighbours contradict is left out and said, never changed. */
function withoutSlips(request: EstimateRequest, doubtful: readonly DoubtfulWeight[]): EstimateRequest {
  const out = new Set(doubtful.filter((one) => one.contradicted).map((one) => one.index));
  if (out.size === 0) return request;
  const days = request.days.map((day, index) => {
    if (!out.has(index)) return day;
    const { weightKg: _left, ...rest } = day;
    return rest;
  });
  return { ...request, days };
}

function whyEstimate({ past, lived }: BodyEstimate, doubtful: readonly DoubtfulWeight[]): string[] {
  const known = lived.slice(0, past.length);
  const weighed = known.filter((day) => day.weightKg !== undefined).length;
  const logged = known.filter((day) => day.basis === 'logged').length;
  const zero = known.filter((day) => day.basis === 'zero').map((day) => day.date);
  const last = past.at(-1);
  const sentences = [
    `${known.length} days with ${weighed} weigh-ins and ${logged} days of logged food decide it; a day without food logged is not taken for a fast.`,
  ];
  if (last) sentences.push(...lastSentences(last));
  if (known.length < FEW_DAYS || weighed < FEW_DAYS / 2)
    sentences.push('That is little evidence: read the intervals, not the middle.');
  if (zero.length > 0)
    sentences.push(
      `Energy 0 stands on ${named(zero)}: fasted or not logged? It is taken as unclear until it is said.`,
    );
  return [...sentences, ...doubtSentences(doubtful), ...strayed(past)];
}

function lastSentences(last: DayParts): string[] {
  const [mass, fat, maintenance] = [
    believedOf(last.massKg, 2),
    believedOf(last.fatKg, 2),
    believedOf(last.maintenanceKcal, 0),
  ];
  return [
    `On ${last.date} the body weighs ${roundTo(mass.mean, 1)} kg (sd ${roundTo(mass.sd, 1)}), ${roundTo(fat.mean, 1)} kg of it fat (sd ${roundTo(fat.sd, 1)}).`,
    `Stored energy would have stood still at ${maintenance.mean} kcal a day as logged (sd ${maintenance.sd}); a constant share that the log is off by is inside that figure.`,
  ];
}

function doubtSentences(doubtful: readonly DoubtfulWeight[]): string[] {
  return doubtful.slice(0, MOST_NAMED).map((one) => {
    const what =
      one.reason === 'pounds' ? `reads like pounds (${one.asPoundsKg} kg)` : 'is far from its neighbours';
    return `${one.weightKg} kg on ${one.date} ${what}; it is ${one.contradicted ? 'left out' : 'kept as it stands'}: correct it if it is a slip.`;
  });
}

/** Readings the filter believes less than half: another scale, shoes, a day of much water. */
function strayed(past: readonly DayParts[]): string[] {
  const stray = past.filter((day) => day.ordinary !== undefined && day.ordinary < 0.5).map((day) => day.date);
  return stray.length === 0
    ? []
    : [`Weigh-ins that fit no ordinary morning count for little: ${named(stray)}.`];
}

function named(dates: readonly string[]): string {
  const shown = dates.slice(-MOST_NAMED).join(', ');
  return dates.length > MOST_NAMED ? `${shown} and ${dates.length - MOST_NAMED} more` : shown;
}

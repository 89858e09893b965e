import { addDays, daysBetween, parseDate } from '#core/units/civil-date.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { runSeries } from './run-series.ts';
import { STRENGTH_BELIEFS } from './strength-beliefs.ts';
import { changeSince, type Normal, passTo } from './strength-filter.ts';
import type { StrengthLog, StrengthSeries } from './strength-log.ts';

/** Strength of one lift against the start, as a share: 1 is all of it. */
export interface LiftKept {
  readonly exercise: string;
  readonly name: string;
  readonly kept: number;
  readonly sd: number;
  readonly lastDay: string;
}

export interface StrengthKept {
  /** Share of strength kept over the main lifts, with its standard deviation. */
  readonly kept: number;
  readonly sd: number;
  readonly lifts: readonly LiftKept[];
  /** Body mass lost since the start, where both ends were weighed. */
  readonly lostKg: Kilograms | undefined;
  /** Percent of strength lost for each kilogram lost; only where at least one kilogram was. */
  readonly lostPercentPerKg: number | undefined;
  readonly why: readonly string[];
}

/** A lift not trained for longer says nothing of today. */
const STALE_DAYS = 28;
/** Sets older than this before the start say nothing of it. */
const LOOK_BACK_DAYS = 84;
/** Sets on each side of the start, and since, before a lift counts. */
const LEAST_SETS = 4;
/** How far single lifts of one body part from each other beyond their own errors, a share. Common practice, no source. */
const BETWEEN_LIFTS = 0.03;
const LEAST_LOST_KG = 1;

/**
 * Strength kept since the start of the preparation (GYM-40): for each main lift the change of its running estimate, body
 * mass counted in, then all of them together, each by its certainty. Undefined where no main lift was trained enough on
 * both sides of the time between.
 */
export function strengthKept(log: StrengthLog, from: string, until: string): StrengthKept | undefined {
  const lifts = log.series.flatMap((series) => liftKept(log, series, from, until) ?? []);
  if (lifts.length === 0) return undefined;
  const whole = overLifts(lifts);
  const kept = Math.exp(whole.mean);
  const sd = kept * whole.sd;
  const [before, now] = [log.massOn(from), log.massOn(until)];
  const lostKg = before === undefined || now === undefined ? undefined : before - now;
  const lostPercentPerKg =
    lostKg !== undefined && lostKg >= LEAST_LOST_KG ? (100 * (1 - kept)) / lostKg : undefined;
  const answer = { kept, sd, lifts, lostKg, lostPercentPerKg };
  return { ...answer, why: keptWords(answer, from) };
}

/** Sides and ways of loading of one exercise are one lift; lifts part from each other beyond their own errors. */
function overLifts(lifts: readonly LiftKept[]): Normal {
  const byExercise = new Map<string, Normal[]>();
  for (const { exercise, kept, sd } of lifts) {
    const parts = byExercise.get(exercise) ?? [];
    byExercise.set(exercise, parts);
    parts.push({ mean: Math.log(kept), sd: sd / kept });
  }
  return weighed(
    [...byExercise.values()].map((parts) => weighed(parts, 0)),
    BETWEEN_LIFTS,
  );
}

/** Average by certainty, each part with a deviation of its own besides its error. */
function weighed(parts: readonly Normal[], own: number): Normal {
  const weights = parts.map(({ sd }) => 1 / (sd ** 2 + own ** 2));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return {
    mean: parts.reduce((total, { mean }, i) => total + (weights[i] ?? 0) * mean, 0) / sum,
    sd: Math.sqrt(1 / sum),
  };
}

function liftKept(
  log: StrengthLog,
  series: StrengthSeries,
  from: string,
  until: string,
): LiftKept | undefined {
  const exercise = log.book.exercise(series.exercise);
  const earliest = addDays(from, -LOOK_BACK_DAYS);
  const sets = series.sets.filter(({ day }) => day >= earliest && day <= until);
  const last = sets.at(-1);
  if (!exercise.main || !last || sets.length < 2 * LEAST_SETS) return undefined;
  if (daysBetween(last.day, until) > STALE_DAYS || last.day <= from) return undefined;
  const start = parseDate(from) ?? 0;
  const { belief } = runSeries(sets, [start]);
  const change = belief && changeSince(passTo(belief, parseDate(until) ?? 0, belief.session), 0);
  if (!change) return undefined;
  const whole = withBodyMass(change, log.massOn(until), log.massOn(from) ?? sets[0]?.massKg);
  const kept = Math.exp(whole.mean);
  const side = series.side === undefined ? '' : `, ${series.side}`;
  return {
    exercise: series.exercise,
    name: `${exercise.name}${side}`,
    kept,
    sd: kept * whole.sd,
    lastDay: last.day,
  };
}

/** The running estimate tells strength at one body mass; what was lost with the mass is lost from the bar as well. */
function withBodyMass(change: Normal, now: Kilograms | undefined, before: Kilograms | undefined): Normal {
  if (now === undefined || before === undefined) return change;
  return { mean: change.mean + STRENGTH_BELIEFS.perMassShare * Math.log(now / before), sd: change.sd };
}

function keptWords(
  { kept, sd, lifts, lostKg, lostPercentPerKg }: Omit<StrengthKept, 'why'>,
  from: string,
): string[] {
  const percent = (share: number) => `${roundTo(100 * share, 1)} %`;
  const perKg =
    lostKg === undefined
      ? 'Body mass is not known at both ends.'
      : lostPercentPerKg === undefined
        ? `Body mass has moved by ${roundTo(-lostKg, 1)} kg: too little to hold strength against.`
        : lostPercentPerKg <= 0
          ? `Body mass has fallen by ${roundTo(lostKg, 1)} kg, and strength has not fallen with it.`
          : `Body mass has fallen by ${roundTo(lostKg, 1)} kg: ${roundTo(lostPercentPerKg, 1)} % of strength for each 1 kg.`;
  const count = new Set(lifts.map(({ exercise }) => exercise)).size;
  return [
    `Strength over ${count === 1 ? 'one main lift' : `${count} main lifts`} stands at ${percent(kept)} of where it stood on ${from}, nine times of ten between ${percent(kept - 1.645 * sd)} and ${percent(kept + 1.645 * sd)}.`,
    ...lifts.map((lift) => `${lift.name}: ${percent(lift.kept)}, give or take ${percent(lift.sd)}.`),
    perKg,
  ];
}

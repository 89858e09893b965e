import type { Ledger } from '#core/journal/ledger.ts';
import { addDays } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { feltDays, lastDayOf, meanOf, measures, type Measure } from './recovery-notes.ts';

/** One measure of a week beside the weeks before it and the start. */
export interface WeekMeasure {
  readonly measure: Measure;
  readonly mean: number;
  /** Days of the week that have it. */
  readonly days: number;
  /** Mean of the four weeks before; absent where nothing was noted. */
  readonly before?: number;
  /** Mean of the first two weeks of the preparation. */
  readonly atStart?: number;
  readonly words: string;
  /** Fewer than three days: too little to compare. */
  readonly thin: boolean;
}

export interface WeeklyRecovery {
  readonly week: string;
  readonly measures: readonly WeekMeasure[];
  /** Scores 1 to 5 for the check-in, all with 5 the best; absent where nothing was noted. */
  readonly scores: {
    readonly sleep?: number;
    readonly mood?: number;
    readonly hunger?: number;
    readonly joints?: number;
  };
  readonly why: readonly string[];
}

const BEFORE_DAYS = 28;
const START_DAYS = 14;
const ENOUGH_DAYS = 3;

/** Where 5 is the worst it is said: the check-in beside it has 5 as the best. */
const names: Readonly<Record<Measure, readonly [name: string, unit: string, decimals: number]>> = {
  restingHeartRateBpm: ['Resting heart rate', ' a minute', 0],
  sleepHours: ['Sleep', ' h', 1],
  sleepQuality: ['Sleep quality', ' of 5', 1],
  libido: ['Libido', ' of 5', 1],
  mood: ['Mood', ' of 5', 1],
  cold: ['Feeling cold', ' of 5 (5 is all day)', 1],
  hunger: ['Hunger', ' of 5 (5 is gnawing)', 1],
  jointPain: ['Joint pain', ' of 5 (5 is strong)', 1],
};

/**
 * How a week felt (HLT-60): the mean of each measure, beside the four weeks before and the start of the preparation.
 * `week` is its first day. Nothing noted is nothing said.
 */
export function weeklyRecovery(ledger: Ledger, week: string, preparationFrom?: string): WeeklyRecovery {
  const days = feltDays(ledger, week, lastDayOf(week));
  const before = feltDays(ledger, addDays(week, -BEFORE_DAYS), addDays(week, -1));
  const start =
    preparationFrom === undefined
      ? []
      : feltDays(ledger, preparationFrom, addDays(preparationFrom, START_DAYS - 1));
  const found = measures.flatMap((measure): WeekMeasure[] => {
    const now = meanOf(days, measure);
    if (!now) return [];
    const [name, unit, decimals] = names[measure];
    const [earlier, first] = [meanOf(before, measure)?.mean, meanOf(start, measure)?.mean];
    const shown = (mean: number) => roundTo(mean, decimals);
    const than = earlier === undefined ? '' : `, ${shown(earlier)} in the four weeks before`;
    const since = first === undefined ? '' : `, ${shown(first)} at the start`;
    return [
      {
        measure,
        mean: roundTo(now.mean, 2),
        days: now.days,
        ...(earlier === undefined ? {} : { before: roundTo(earlier, 2) }),
        ...(first === undefined ? {} : { atStart: roundTo(first, 2) }),
        thin: now.days < ENOUGH_DAYS,
        words: `${name} ${shown(now.mean)}${unit} over ${now.days} ${now.days === 1 ? 'day' : 'days'}${than}${since}.`,
      },
    ];
  });
  return {
    week,
    measures: found,
    scores: scoresOf(found),
    why: found.length === 0 ? ['Nothing was noted this week.'] : found.map(({ words }) => words),
  };
}

/** The check-in's scores have 5 as the best: hunger and joint pain are turned round, sleep without a score goes by hours. */
function scoresOf(found: readonly WeekMeasure[]): WeeklyRecovery['scores'] {
  const mean = (measure: Measure) => found.find((row) => row.measure === measure)?.mean;
  const score = (value: number | undefined) =>
    value === undefined ? undefined : Math.min(5, Math.max(1, Math.round(value)));
  const hours = mean('sleepHours');
  const sleep = score(mean('sleepQuality') ?? (hours === undefined ? undefined : hours - 3));
  const [hunger, pain] = [mean('hunger'), mean('jointPain')];
  const turned = {
    hunger: score(hunger === undefined ? undefined : 6 - hunger),
    joints: score(pain === undefined ? undefined : 6 - pain),
  };
  const mood = score(mean('mood'));
  return {
    ...(sleep === undefined ? {} : { sleep }),
    ...(mood === undefined ? {} : { mood }),
    ...(turned.hunger === undefined ? {} : { hunger: turned.hunger }),
    ...(turned.joints === undefined ? {} : { joints: turned.joints }),
  };
}

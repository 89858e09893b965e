import { cardioCeiling } from '#core/limits/cardio-ceiling.ts';
import { keeps } from '#core/limits/limit.ts';
import type { OwnLimits } from '#core/limits/own-limits.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { KilocaloriesPerDay, Kilograms, Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { DayRow } from './day-row.ts';
import type { EstimatedDay } from './held-against-plan.ts';

/** How a week felt, 1 (bad) to 5 (good), as the athlete noted it. Absent: not asked or not answered. */
export interface Feelings {
  readonly sleep?: number | undefined;
  readonly hunger?: number | undefined;
  readonly mood?: number | undefined;
  readonly joints?: number | undefined;
  readonly training?: number | undefined;
}

export interface CheckInInput {
  /** Last day of the week looked at; the week is this day and the six before. */
  readonly until: string;
  readonly rows: readonly DayRow[];
  readonly estimated: readonly EstimatedDay[];
  /** What was planned for a day; absent days had no target. */
  readonly planned: readonly {
    readonly date: string;
    readonly energyKcal: number;
    readonly cardioKcal?: number | undefined;
  }[];
  /** Strength kept against the start of the preparation, 1 is all of it; from the gym. */
  readonly strength?:
    | {
        readonly kept: number;
        readonly sd: number;
        /** Percent of strength lost for each kilogram of body mass lost, where enough was lost to say. */
        readonly lostPercentPerKg?: number | undefined;
      }
    | undefined;
  readonly feelings: Feelings;
  readonly feelingsBefore?: Feelings | undefined;
  readonly own?: OwnLimits | undefined;
}

/** One week in figures. Absent: nothing was logged to compute it from. */
export interface WeekFigures {
  readonly from: string;
  readonly until: string;
  readonly massKg?: Kilograms;
  readonly fatKg?: Kilograms;
  /** Scale: average of the week's weigh-ins, and how many. */
  readonly scaleKg?: Kilograms;
  readonly weighIns: number;
  readonly energyKcal?: KilocaloriesPerDay;
  readonly loggedDays: number;
  /** Logged over planned, on days that have both. */
  readonly adherence?: number;
  readonly cardioKcal: KilocaloriesPerDay;
  readonly cardioAdherence?: number;
}

export interface Flag {
  readonly about: 'strength' | 'feelings' | 'cardio' | 'adherence' | 'loss' | 'log';
  readonly words: string;
}

export interface WeekEvidence {
  readonly thisWeek: WeekFigures;
  readonly lastWeek: WeekFigures;
  /** Loss from the middle of last week to the middle of this, percent of body mass, and half its 90 % interval. */
  readonly lossPercent?: Percent;
  readonly lossWithin?: Percent;
  /** Growth of the week's cardio; undefined from nothing. */
  readonly cardioGrowth?: number;
  readonly flags: readonly Flag[];
  readonly words: readonly string[];
}

/** Marks of the week that speak against asking more of the athlete. Common practice, no source, unless a limit says so. */
const MARK = { strengthLost: 0.05, lowScore: 2, fall: 2, adherenceOff: 0.07, loggedDays: 5 } as const;

/** Gathers a week against the week before (CRS-17): mass, intake against plan, cardio dose and growth, strength, feelings. */
export function gatherWeek(input: CheckInInput): WeekEvidence {
  const thisWeek = figuresOf(input, input.until);
  const lastWeek = figuresOf(input, addDays(input.until, -7));
  const loss = lossBetween(input, thisWeek, lastWeek);
  const cardioGrowth = lastWeek.cardioKcal > 0 ? thisWeek.cardioKcal / lastWeek.cardioKcal - 1 : undefined;
  const flags = [
    ...logFlags(thisWeek),
    ...adherenceFlags(thisWeek),
    ...cardioFlags(thisWeek, lastWeek, input.own),
    ...strengthFlags(input),
    ...feelingFlags(input),
  ];
  return {
    thisWeek,
    lastWeek,
    ...loss,
    ...(cardioGrowth === undefined ? {} : { cardioGrowth: roundTo(cardioGrowth, 3) }),
    flags,
    words: [
      ...wordsOf(thisWeek, lastWeek, loss),
      ...strengthWords(input),
      ...flags.map((flag) => flag.words),
    ],
  };
}

function figuresOf(input: CheckInInput, until: string): WeekFigures {
  const inside = (date: string) => {
    const age = daysBetween(date, until);
    return age >= 0 && age < 7;
  };
  const rows = input.rows.filter((row) => inside(row.date));
  const planned = new Map(input.planned.map((day) => [day.date, day]));
  const weights = rows.flatMap((row) => (row.weightKg === undefined ? [] : [row.weightKg]));
  const intakes = rows.flatMap((row) =>
    row.intake ? [{ date: row.date, kcal: row.intake.energyKcal }] : [],
  );
  const both = intakes.flatMap(({ date, kcal }) => {
    const plan = planned.get(date)?.energyKcal;
    return plan === undefined || plan === 0 ? [] : [{ kcal, plan }];
  });
  const cardioPlanned = sum(rows.map((row) => planned.get(row.date)?.cardioKcal ?? 0));
  const cardioDone = sum(rows.map((row) => row.cardioKcal ?? 0));
  const estimate = input.estimated.findLast((day) => inside(day.date));
  return {
    from: addDays(until, -6),
    until,
    ...(estimate ? { massKg: roundTo(estimate.massKg.mean, 2), fatKg: roundTo(estimate.fatKg.mean, 2) } : {}),
    ...(weights.length > 0 ? { scaleKg: roundTo(sum(weights) / weights.length, 2) } : {}),
    weighIns: weights.length,
    ...(intakes.length > 0
      ? { energyKcal: roundTo(sum(intakes.map((day) => day.kcal)) / intakes.length, 0) }
      : {}),
    loggedDays: intakes.length,
    ...(both.length > 0
      ? { adherence: roundTo(sum(both.map((day) => day.kcal)) / sum(both.map((day) => day.plan)), 3) }
      : {}),
    cardioKcal: roundTo(cardioDone / 7, 0),
    ...(cardioPlanned > 0 ? { cardioAdherence: roundTo(cardioDone / cardioPlanned, 3) } : {}),
  };
}

function lossBetween(
  { estimated }: CheckInInput,
  thisWeek: WeekFigures,
  lastWeek: WeekFigures,
): { lossPercent?: number; lossWithin?: number } {
  const now = estimated.find((day) => day.date === thisWeek.until);
  const before = estimated.find((day) => day.date === lastWeek.until);
  if (!now || !before) return {};
  const lost = before.massKg.mean - now.massKg.mean;
  const within = 1.645 * Math.hypot(now.massKg.sd, before.massKg.sd);
  return {
    lossPercent: roundTo((100 * lost) / before.massKg.mean, 2),
    lossWithin: roundTo((100 * within) / before.massKg.mean, 2),
  };
}

function logFlags({ loggedDays, weighIns }: WeekFigures): Flag[] {
  if (loggedDays >= MARK.loggedDays && weighIns >= 3) return [];
  return [
    {
      about: 'log',
      words: `${loggedDays} of 7 days of intake and ${weighIns} weigh-ins are logged; with so few, holding is safer than correcting.`,
    },
  ];
}

function adherenceFlags({ adherence }: WeekFigures): Flag[] {
  if (adherence === undefined || Math.abs(adherence - 1) <= MARK.adherenceOff) return [];
  const off = `${Math.abs(roundTo(100 * (adherence - 1), 0))} % ${adherence > 1 ? 'over' : 'under'} the plan`;
  return [
    {
      about: 'adherence',
      words: `Intake was ${off}: the plan itself has not been tried, so it need not change.`,
    },
  ];
}

function cardioFlags(thisWeek: WeekFigures, lastWeek: WeekFigures, own: OwnLimits | undefined): Flag[] {
  const ceiling = cardioCeiling(lastWeek.cardioKcal, own);
  if (keeps(ceiling, thisWeek.cardioKcal)) return [];
  return [
    {
      about: 'cardio',
      words: `Cardio grew from ${lastWeek.cardioKcal} to ${thisWeek.cardioKcal} kcal a day. ${ceiling.tightest?.words ?? ''}`,
    },
  ];
}

function strengthFlags({ strength }: CheckInInput): Flag[] {
  if (!strength || 1 - strength.kept <= Math.max(MARK.strengthLost, 1.645 * strength.sd)) return [];
  return [
    {
      about: 'strength',
      words: `Strength stands at ${roundTo(100 * strength.kept, 0)} % of the start, beyond its own noise: ease the deficit before asking more.`,
    },
  ];
}

function feelingFlags({ feelings, feelingsBefore }: CheckInInput): Flag[] {
  const flags: Flag[] = [];
  for (const about of ['sleep', 'hunger', 'mood', 'joints', 'training'] as const) {
    const now = feelings[about];
    const before = feelingsBefore?.[about];
    if (now === undefined) continue;
    const fell = before !== undefined && before - now >= MARK.fall;
    if (now <= MARK.lowScore || fell) {
      const from = before === undefined ? '' : `, ${before} the week before`;
      flags.push({ about: 'feelings', words: `${sentenceCase(about)} is rated ${now} of 5${from}.` });
    }
  }
  return flags;
}

function wordsOf(
  thisWeek: WeekFigures,
  lastWeek: WeekFigures,
  loss: { lossPercent?: number; lossWithin?: number },
): string[] {
  const words: string[] = [];
  if (loss.lossPercent !== undefined && loss.lossWithin !== undefined)
    words.push(
      `Body mass changed by ${roundTo(-loss.lossPercent, 2)} % in the week, give or take ${loss.lossWithin}.`,
    );
  if (thisWeek.energyKcal !== undefined)
    words.push(
      `Intake averaged ${thisWeek.energyKcal} kcal on ${thisWeek.loggedDays} logged days${lastWeek.energyKcal === undefined ? '' : `, ${lastWeek.energyKcal} the week before`}.`,
    );
  words.push(`Cardio averaged ${thisWeek.cardioKcal} kcal a day, ${lastWeek.cardioKcal} the week before.`);
  return words;
}

function strengthWords({ strength }: CheckInInput): string[] {
  if (!strength) return [];
  const { kept, sd, lostPercentPerKg } = strength;
  const per =
    lostPercentPerKg === undefined || lostPercentPerKg <= 0
      ? ''
      : `, ${roundTo(lostPercentPerKg, 1)} % for each 1 kg of body mass lost`;
  return [
    `Strength over the main lifts stands at ${roundTo(100 * kept, 0)} % of the start, nine times of ten between ${roundTo(100 * (kept - 1.645 * sd), 0)} and ${roundTo(100 * (kept + 1.645 * sd), 0)} %${per}.`,
  ];
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function sentenceCase(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

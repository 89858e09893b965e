import type { Sex } from '#core/limits/published-limits.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { KilocaloriesPerDay, Kilograms, Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';

export interface AfterwardsInput {
  readonly show: string;
  readonly sex: Sex;
  readonly massKg: Kilograms;
  readonly fatKg: Kilograms;
  /** What is eaten in the last week, and what would keep the balance with the cardio that stays. */
  readonly dietKcal: KilocaloriesPerDay;
  readonly balanceKcal: KilocaloriesPerDay;
  readonly pace: 'at once' | 'in steps';
  /** Days since the last menses began; absent: not logged or not applicable. */
  readonly daysSinceMenses?: number | undefined;
}

export interface AfterwardsWeek {
  readonly from: string;
  readonly week: number;
  readonly energyKcal: KilocaloriesPerDay;
  /** Where body mass may stand at the week's end: water first, tissue after. */
  readonly massKg: { readonly low: Kilograms; readonly high: Kilograms };
}

export interface Afterwards {
  readonly weeks: readonly AfterwardsWeek[];
  /** Body fat to grow back into, and when it may be reached at the planned pace. */
  readonly healthyPercent: { readonly low: Percent; readonly high: Percent };
  readonly reachedBy: string | undefined;
  /** Signs of recovery to note each week. */
  readonly markers: readonly string[];
  readonly cautions: readonly string[];
  readonly why: readonly string[];
  /** Keys of the source list. */
  readonly sources: readonly string[];
}

const WEEKS = 12;
/** 65.4 to 67.4 kg in the first week, all of it body water (trexler-2017). */
const FIRST_WEEK_RISE_SHARE = 2 / 65.4;
/** A step of food that can be told from noise within a week. Common practice, no source. */
const STEP_KCAL = 150;
/** Surplus once at balance, a share of it, and regain of tissue a week. Common practice, no source. */
const SURPLUS_SHARE = 0.08;
const REGAIN_PERCENT_A_WEEK = { low: 0.25, high: 0.75 } as const;
/** Body fat at which hormones had recovered or were on their way. Common practice, no source. */
const HEALTHY = { female: { low: 18, high: 25 }, male: { low: 10, high: 15 } } as const;

/**
 * The way back (CRS-24): energy up to balance, at once or in steps, then a small surplus; the rise of the scale
 * foretold as the water it is; regain paced towards a healthy range; what to watch, and when to see a physician.
 */
export function planAfterwards(input: AfterwardsInput): Afterwards {
  const { show, sex, massKg, fatKg } = input;
  const healthy = HEALTHY[sex];
  const water = FIRST_WEEK_RISE_SHARE * massKg;
  const weeks = Array.from({ length: WEEKS }, (_, k) => ({
    from: addDays(show, 1 + 7 * k),
    week: k + 1,
    energyKcal: roundTo(energyOf(input, k), 0),
    massKg: {
      low: roundTo(massKg + 0.5 * water + (k * REGAIN_PERCENT_A_WEEK.low * massKg) / 100, 1),
      high: roundTo(massKg + 1.5 * water + ((k + 1) * REGAIN_PERCENT_A_WEEK.high * massKg) / 100, 1),
    },
  }));
  return {
    weeks,
    healthyPercent: healthy,
    reachedBy: reachedBy(show, massKg, fatKg, healthy.low),
    markers: markersFor(sex),
    cautions: cautionsFor(input),
    why: wordsOf(input, water),
    sources: ['trexler-2017', 'hulmi-2017', 'rossow-2013'],
  };
}

function energyOf({ dietKcal, balanceKcal, pace }: AfterwardsInput, week: number): KilocaloriesPerDay {
  const goal = balanceKcal * (1 + SURPLUS_SHARE);
  if (dietKcal >= goal) return dietKcal;
  if (pace === 'at once') return week === 0 ? Math.max(dietKcal, balanceKcal) : goal;
  return Math.min(goal, dietKcal + (week + 1) * STEP_KCAL);
}

/** At the middle of the pace, two thirds of it fat (common practice, no source). */
function reachedBy(show: string, massKg: Kilograms, fatKg: Kilograms, percent: Percent): string | undefined {
  const pace = (massKg * (REGAIN_PERCENT_A_WEEK.low + REGAIN_PERCENT_A_WEEK.high)) / 200;
  for (let week = 0; week <= 52; week++) {
    const fat = fatKg + (2 / 3) * pace * week;
    if ((100 * fat) / (massKg + pace * week) >= percent) return addDays(show, 7 * week);
  }
  return undefined;
}

function markersFor(sex: Sex): readonly string[] {
  const shared = ['hunger', 'mood', 'sleep', 'libido', 'resting heart rate', 'feeling cold', 'strength'];
  return sex === 'female' ? ['menses', ...shared] : ['morning erections', ...shared];
}

function cautionsFor({ daysSinceMenses }: AfterwardsInput): readonly string[] {
  return [
    'Great hunger after a show is the body asking for what it was short of; planned meals, enough of them, quieten it. Eating without control more than once a week, or shame about it, is a reason to talk to a professional, and no failure.',
    'After months of deficit a sudden large load of sugar can lower phosphate, potassium and magnesium: swelling, weakness, breathlessness or palpitations need a physician at once.',
    ...(daysSinceMenses !== undefined && daysSinceMenses >= 90
      ? ['No menses for three months: see a physician; eating more alone may not be all that is needed.']
      : []),
    'A blood panel and a physician two to three months after the show belong to the season.',
  ];
}

function wordsOf({ pace, balanceKcal, dietKcal }: AfterwardsInput, water: Kilograms): readonly string[] {
  const way =
    pace === 'at once'
      ? `Intake goes from ${roundTo(dietKcal, 0)} to ${roundTo(balanceKcal, 0)} kcal at once: what is short is energy, and no study shows that small steps spare fat.`
      : `Intake rises by ${STEP_KCAL} kcal a week from ${roundTo(dietKcal, 0)}: calmer for some, but every week below balance delays recovery.`;
  return [
    way,
    `The scale may rise by about ${roundTo(water, 1)} kg in the first week; in 15 athletes it was 2.0 kg, body water nearly all of it.`,
    'Hormones were back after three to four months in most women followed, and strength and testosterone within six months in one man.',
  ];
}

import { lastWeekSodium, lastWeekWater } from '#core/limits/last-week-limits.ts';
import { onSafeStep, openLimit, stepAtOrAbove } from '#core/limits/limit.ts';
import { loadCeiling } from '#core/limits/load-ceiling.ts';
import { fatFloor, proteinFloor } from '#core/limits/macro-floors.ts';
import { publishedLimits } from '#core/limits/published-limits.ts';
import { redFlags, refusedPractices, type RefusedPractice } from '#core/limits/refused-practices.ts';
import { settle, type LimitRange } from '#core/limits/settle.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { Grams, Kilocalories, Kilograms, Milligrams, Millilitres } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Stretch } from './stretches.ts';

export interface LastWeekInput {
  readonly show: string;
  readonly today: string;
  readonly massKg: Kilograms;
  readonly leanKg: Kilograms;
  /** What a day of the last weeks held, on average. Absent: not known. */
  readonly habit: {
    readonly proteinG: Grams;
    readonly carbohydrateG: Grams;
    readonly fatG: Grams;
    readonly fibreG?: Grams | undefined;
    readonly sodiumMg?: Milligrams | undefined;
    readonly waterMl?: Millilitres | undefined;
  };
  readonly wish?: {
    readonly loadGPerKg?: number | undefined;
    readonly loadDays?: number | undefined;
    readonly waterMl?: Millilitres | undefined;
    readonly sodiumMg?: Milligrams | undefined;
  };
  /** Whether the same load was rehearsed in this preparation. */
  readonly rehearsed: boolean;
}

export type LastWeekRole = 'taper' | 'load' | 'show';

export interface LastWeekDay {
  readonly date: string;
  readonly daysOut: number;
  readonly role: LastWeekRole;
  readonly energyKcal: Kilocalories;
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
  /** Only while loading and on the day: less gut content and less to upset it. */
  readonly fibreMaxG?: Grams;
  readonly waterMl?: Millilitres;
  readonly sodiumMg?: Milligrams;
  readonly training: string;
}

export interface LastWeek {
  readonly days: readonly LastWeekDay[];
  /** For the forecast and the estimate, so that the rise is foretold and not read as fat. */
  readonly stretches: readonly Stretch[];
  /** Rise of body mass that loading may bring, percent: the tool's logic on loss pauses meanwhile. */
  readonly risePercent: { readonly low: number; readonly high: number };
  readonly rehearsal: { readonly from: string; readonly until: string } | undefined;
  readonly refused: readonly RefusedPractice[];
  readonly redFlags: readonly string[];
  readonly why: readonly string[];
  /** Keys of the source list. */
  readonly sources: readonly string[];
}

/** Fibre a day while loading. Common practice, no source. */
const LOADING_FIBRE_G: Grams = 15;
/** Share of a loading day's carbohydrate that the day itself gets, in small meals. Common practice, no source. */
const SHOW_SHARE = 0.5;

/**
 * A cautious last week (CRS-23): training tapers, carbohydrate is loaded inside the studied dose with less fibre and
 * with fat at its floor, water and sodium stay near habit. What hurts is refused with its reason, not planned.
 */
export function planLastWeek(input: LastWeekInput): Outcome<LastWeek> {
  const { show, today, massKg, wish = {} } = input;
  const left = daysBetween(today, show);
  if (left < 0 || left > 21)
    return refused(
      'course/not-the-last-week',
      'show',
      left < 0 ? `The show on ${show} is over.` : `The show on ${show} is ${left} days away.`,
      'The last week is planned from three weeks before the show on.',
    );
  const loadDays = wish.loadDays ?? 2;
  if (!Number.isInteger(loadDays) || loadDays < 0 || loadDays > publishedLimits.load.maxDays)
    return refused(
      'course/loading-days',
      'wish.loadDays',
      `${loadDays} loading days are asked for.`,
      `Ask for 0 to ${publishedLimits.load.maxDays} whole days: more has not been studied in this sport.`,
    );
  const load = settle(
    (wish.loadGPerKg ?? publishedLimits.load.startGPerKg) * massKg,
    {
      floor: openLimit('Carbohydrate', 'g', 'floor', input.habit.carbohydrateG),
      ceiling: loadCeiling(massKg),
    },
    5,
  );
  if (!load.ok) return load;
  const water = nearHabit(input.habit.waterMl, wish.waterMl, lastWeekWater);
  const sodium = nearHabit(input.habit.sodiumMg, wish.sodiumMg, lastWeekSodium);
  if (!water.ok) return water;
  if (!sodium.ok) return sodium;
  const first = Math.max(0, 7 - left);
  const drinks = {
    ...(water.value === undefined ? {} : { waterMl: water.value.value }),
    ...(sodium.value === undefined ? {} : { sodiumMg: sodium.value.value }),
  };
  const days = Array.from({ length: 8 - first }, (_, k) =>
    dayOf(input, 7 - first - k, loadDays, load.value.value, drinks),
  );
  const moved = [load.value, water.value, sodium.value].flatMap((one) =>
    one?.movedBy ? [one.movedBy.words] : [],
  );
  return answered({
    days,
    stretches: days
      .filter((day) => day.role !== 'taper')
      .map((day) => ({
        type: 'higher-carbohydrate days',
        from: day.date,
        until: day.date,
        energyKcal: day.energyKcal,
        carbohydrateG: day.carbohydrateG,
      })),
    risePercent: { low: loadDays === 0 ? 0 : 0.5, high: loadDays === 0 ? 0 : 3 },
    rehearsal: rehearsalFor(input),
    refused: refusedPractices,
    redFlags,
    sources: [publishedLimits.load.source, publishedLimits.load.alsoSource, 'escalante-2021'],
    why: [...moved, ...wordsOf(input, loadDays, load.value.value)],
  });
}

function nearHabit(
  habit: number | undefined,
  wish: number | undefined,
  range: (habit: number) => LimitRange,
): Outcome<{ value: number; movedBy: { words: string } | undefined } | undefined> {
  if (habit === undefined) return answered(undefined);
  return settle(wish ?? habit, range(habit), 50);
}

function dayOf(
  input: LastWeekInput,
  daysOut: number,
  loadDays: number,
  loadG: Grams,
  drinks: Pick<LastWeekDay, 'waterMl' | 'sodiumMg'>,
): LastWeekDay {
  const { habit, massKg, leanKg, show } = input;
  const role: LastWeekRole = daysOut === 0 ? 'show' : daysOut <= loadDays ? 'load' : 'taper';
  const loads = role !== 'taper' && loadDays > 0;
  const leastFatG = onSafeStep(fatFloor(massKg), 1);
  const proteinG = stepAtOrAbove(proteinFloor(leanKg).present, 1);
  const macros = {
    proteinG: loads ? proteinG : Math.max(proteinG, Math.round(habit.proteinG)),
    carbohydrateG: loads
      ? Math.max(Math.round(habit.carbohydrateG), Math.round(role === 'show' ? SHOW_SHARE * loadG : loadG))
      : Math.round(habit.carbohydrateG),
    fatG: loads ? leastFatG : Math.max(leastFatG, Math.round(habit.fatG)),
  };
  return {
    date: addDays(show, -daysOut),
    daysOut,
    role,
    energyKcal: 4 * macros.proteinG + 4 * macros.carbohydrateG + 9 * macros.fatG,
    ...macros,
    ...(loads ? { fibreMaxG: Math.min(LOADING_FIBRE_G, habit.fibreG ?? LOADING_FIBRE_G) } : {}),
    ...drinks,
    training: trainingOf(daysOut),
  };
}

function trainingOf(daysOut: number): string {
  if (daysOut === 0) return 'Pump-up before the stage only.';
  if (daysOut <= 2) return 'Rest and posing; no hard sets.';
  if (daysOut <= 4) return 'Half the usual sets, well short of failure; legs for the last time.';
  return 'About two thirds of the usual sets, nothing new.';
}

/** The dress rehearsal: three to five weeks before, while it can still teach something. */
function rehearsalFor({ show, today, rehearsed }: LastWeekInput): LastWeek['rehearsal'] {
  const until = addDays(show, -21);
  if (rehearsed || until < today) return undefined;
  const from = addDays(show, -35);
  return { from: from > today ? from : today, until };
}

function wordsOf({ massKg, habit, rehearsed }: LastWeekInput, loadDays: number, loadG: Grams): string[] {
  const perKg = roundTo(loadG / massKg, 1);
  const load =
    loadDays === 0
      ? 'No loading is planned; eating as usual is a sound last week.'
      : `${loadDays} loading day${loadDays === 1 ? '' : 's'} of ${loadG} g carbohydrate (${perKg} g per kg): the trials gave 8 to 12, with 9 the most used; take sources your gut knows, little fibre, little fat.`;
  const drinks =
    habit.waterMl === undefined || habit.sodiumMg === undefined
      ? 'Water and salt stay as they always were; how much that is has not been logged.'
      : 'Water and salt stay near habit: stored carbohydrate needs both.';
  return [
    load,
    drinks,
    ...(rehearsed || loadDays === 0
      ? []
      : ['This load has not been rehearsed: an untried load on the day is a gamble, a smaller one less so.']),
    'The scale may rise by up to 3 % while loading; that is glycogen and water, not fat.',
    'This is no medical advice; with any heart, kidney or blood-pressure condition ask a physician first.',
  ];
}

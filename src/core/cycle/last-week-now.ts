import { averageOver } from '../course/past-habits.ts';
import { type LastWeek, planLastWeek } from '../course/last-week.ts';
import { stretchesOf } from '../course/read-course.ts';
import { stretchIds } from '../course/stretch-ids.ts';
import { covers, type Stretch } from '../course/stretches.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { sumNutrients } from '../kitchen/nutrients.ts';
import { answered, type Outcome } from '../problems/problem.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import type { Grams, Milligrams, Millilitres } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import type { CourseAsk } from './course-ask.ts';
import type { CourseNow } from './course-now.ts';
import type { ReadItem } from './day-sheet.ts';
import { REHEARSE_DAYS, type Rehearsal, rehearsalsOf } from './rehearsals.ts';

/** What is asked of the load; absent is the cautious default, or what the rehearsal taught. */
export interface LastWeekWish {
  readonly loadGPerKg?: number | undefined;
  readonly loadDays?: number | undefined;
  /** What is usually drunk and how salty it is, where the log does not tell. */
  readonly usualWaterMl?: Millilitres | undefined;
  readonly usualSodiumMg?: Milligrams | undefined;
}

/** What a day of late held on average. Absent: too few days tell. */
export interface UsualDay {
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
  readonly loggedDays: number;
  readonly fibreG?: Grams;
  readonly sodiumMg?: Milligrams;
  readonly waterMl?: Millilitres;
}

/** The mornings after a load on which it still teaches something; from `dressFrom` on the body is that of the show. */
export interface RehearsalWindow {
  readonly from: string;
  readonly dressFrom: string;
  readonly until: string;
}

/** Everything the last week's screen shows. */
export interface LastWeekNow {
  readonly show: CourseAsk['show'];
  readonly daysOut: number;
  readonly usual: UsualDay;
  /** What is planned for: the wish with its defaults in it. */
  readonly loadGPerKg: number;
  readonly loadDays: number;
  readonly plan: LastWeek;
  /** The loading days as one stretch, for what the scale will do; absent where none are planned. */
  readonly load: Stretch | undefined;
  /** False further out than the last three weeks: then it is a look ahead from today's body. */
  readonly mayAdopt: boolean;
  /** The last week as it was adopted, if it was. */
  readonly adopted: Stretch | undefined;
  readonly rehearsals: readonly Rehearsal[];
  /** Mornings a rehearsal may end on; absent where it is too late or the dress rehearsal was held. */
  readonly rehearse: RehearsalWindow | undefined;
}

const USUAL_DAYS = 14;
/** Fewer days than this say nothing of a habit (common practice, no source). */
const ENOUGH_DAYS = 3;
/** From so many days before the show on its last week may be adopted. */
const ADOPT_DAYS = 21;
/** What "with less" takes from the load after a rehearsal, g per kg (common practice, no source). */
const LESS_G_PER_KG = 1.5;
const DEFAULT = { gPerKg: 8, days: 2 } as const;

/**
 * The last week as it would be planned today (CRS-28): habits from the log, the body from the estimate, the load as wished, or
 * as the rehearsal taught. Further out than three weeks it is a look ahead.
 */
export function lastWeekNow(
  ledger: Ledger,
  ask: CourseAsk,
  body: Pick<CourseNow, 'massKg' | 'fatKg'>,
  wish: LastWeekWish,
  read: ReadItem,
): Outcome<LastWeekNow> {
  const { show, today } = ask;
  const daysOut = daysBetween(today, show.date);
  const usual = usualDay(ledger, ask, read);
  const rehearsals = rehearsalsOf(ledger, show.show, today);
  const taught = loadTaught(rehearsals);
  const loadGPerKg = wish.loadGPerKg ?? taught.gPerKg;
  const loadDays = wish.loadDays ?? taught.days;
  const asIf = daysOut > ADOPT_DAYS ? addDays(show.date, -ADOPT_DAYS) : today;
  const rehearsed = rehearsals.some(({ judged }) => judged !== undefined);
  const plan = planLastWeek({
    show: show.date,
    today: asIf,
    massKg: roundTo(body.massKg, 1),
    leanKg: roundTo(body.massKg - body.fatKg, 1),
    habit: {
      ...usual,
      waterMl: wish.usualWaterMl ?? usual.waterMl,
      sodiumMg: wish.usualSodiumMg ?? usual.sodiumMg,
    },
    wish: { loadGPerKg, loadDays },
    rehearsed,
  });
  if (!plan.ok) return plan;
  return answered({
    show,
    daysOut,
    usual,
    loadGPerKg,
    loadDays,
    plan: plan.value,
    load: loadOf(plan.value),
    mayAdopt: daysOut <= ADOPT_DAYS,
    adopted: adoptedLoad(ledger, show.show),
    rehearsals,
    rehearse: whenToRehearse(show.date, today, rehearsals),
  });
}

/** An early one leaves the dress rehearsal to be held; once that was judged, the body is left in peace. */
function whenToRehearse(
  show: string,
  today: string,
  rehearsals: readonly Rehearsal[],
): RehearsalWindow | undefined {
  const [dress, until] = [addDays(show, -REHEARSE_DAYS.dress), addDays(show, -ADOPT_DAYS)];
  const held = rehearsals.some((one) => one.judged !== undefined && one.until >= addDays(dress, -1));
  if (held || until <= today) return undefined;
  const soonest = addDays(today, 1);
  const orSoonest = (day: string): string => (day > soonest ? day : soonest);
  return { from: orSoonest(addDays(show, -REHEARSE_DAYS.early)), dressFrom: orSoonest(dress), until };
}

function loadTaught(rehearsals: readonly Rehearsal[]): { readonly gPerKg: number; readonly days: number } {
  const judged = rehearsals.findLast((one) => one.judged !== undefined)?.judged;
  if (!judged) return DEFAULT;
  if (judged.again === 'not at all') return { gPerKg: judged.loadGPerKg, days: 0 };
  const less = judged.again === 'with less' ? LESS_G_PER_KG : 0;
  return { gPerKg: Math.max(1, judged.loadGPerKg - less), days: judged.loadDays };
}

/** The loading days are alike, so one stretch says them all. */
function loadOf({ days }: LastWeek): Stretch | undefined {
  const loading = days.filter(({ role }) => role === 'load');
  const [first, last] = [loading[0], loading.at(-1)];
  if (!first || !last) return undefined;
  const { energyKcal, carbohydrateG } = first;
  return { type: 'higher-carbohydrate days', from: first.date, until: last.date, energyKcal, carbohydrateG };
}

function adoptedLoad(ledger: Ledger, show: string): Stretch | undefined {
  const { load, day } = stretchIds(show);
  const newest = (id: string) =>
    ledger.of('stretch-planned').findLast((fact) => fact.data.stretch === id)?.data;
  const inForce = [newest(load), newest(day)].find((one) => one !== undefined && one.cancelled !== true);
  return inForce;
}

function usualDay(ledger: Ledger, ask: CourseAsk, read: ReadItem): UsualDay {
  const { today } = ask;
  // Days of a load or a diet break, past ones too, are not how one usually eats.
  const otherwise = stretchesOf(ledger);
  const isUsual = (date: string): boolean => !otherwise.some((one) => covers(one, date));
  const rows = ask.log.days.filter(({ date }) => isUsual(date));
  const eaten = averageOver(rows, today, USUAL_DAYS) ?? averageOver(rows, today, Number.POSITIVE_INFINITY);
  const fibre = fibreOf(ledger, today, isUsual, read);
  const water = waterOf(ledger, today);
  return {
    proteinG: Math.round(eaten?.proteinG ?? 0),
    carbohydrateG: Math.round(eaten?.carbohydrateG ?? 0),
    fatG: Math.round(eaten?.fatG ?? 0),
    loggedDays: eaten?.loggedDays ?? 0,
    ...(fibre !== undefined && { fibreG: fibre }),
    ...(water !== undefined && { waterMl: water }),
    ...(eaten && Number.isFinite(eaten.sodiumMg) && { sodiumMg: roundTo(eaten.sodiumMg, -1) }),
  };
}

/** Over the days whose log is whole; a food without a known fibre makes its day say nothing. */
function fibreOf(
  ledger: Ledger,
  today: string,
  isUsual: (day: string) => boolean,
  read: ReadItem,
): Grams | undefined {
  const whole = ledger
    .of('day-closed')
    .filter(({ day, data }) => data.complete && isRecent(day, today) && isUsual(day))
    .flatMap(({ day }) => {
      const meals = ledger
        .onDay(day)
        .filter((fact): fact is Fact<'meal-eaten'> => fact.kind === 'meal-eaten');
      const amounts = meals.flatMap(({ data, epochMs }) =>
        data.items.flatMap((item) => read(item, epochMs)?.amount ?? []),
      );
      const { nutrients, atLeast } = sumNutrients(amounts);
      return atLeast.includes('fibreG') || nutrients.fibreG === undefined ? [] : [nutrients.fibreG];
    });
  return meanOf(whole, 0);
}

function waterOf(ledger: Ledger, today: string): Millilitres | undefined {
  const days = new Map<string, number>();
  for (const { day, data } of ledger.of('water-drunk'))
    if (isRecent(day, today)) days.set(day, (days.get(day) ?? 0) + data.millilitres);
  return meanOf([...days.values()], -2);
}

function isRecent(day: string, today: string): boolean {
  const age = daysBetween(day, today);
  return age > 0 && age <= USUAL_DAYS;
}

function meanOf(values: readonly number[], decimals: number): number | undefined {
  if (values.length < ENOUGH_DAYS) return undefined;
  return roundTo(values.reduce((sum, value) => sum + value, 0) / values.length, decimals);
}

import { type Afterwards, planAfterwards } from '../course/afterwards.ts';
import { averageOver } from '../course/past-habits.ts';
import { preparationStart, showsFrom, stretchesOf } from '../course/read-course.ts';
import { covers } from '../course/stretches.ts';
import type { EstimateAnswer, EstimateDay } from '../body/estimate-request.ts';
import type { DataOf } from '../journal/kinds/registry.ts';
import type { Ledger } from '../journal/ledger.ts';
import { type WeeklyRecovery, weeklyRecovery } from '../health/recovery/weekly-recovery.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import { roundTo } from '../units/rounding.ts';
import { type DayWeight, weighInsOf } from './body-log.ts';

type Adopted = DataOf<'way-back-adopted'>;
export type WayBackPace = Adopted['pace'];

/** Everything the screen of the way back shows. */
export interface AfterwardsNow {
  readonly show: DataOf<'show-set'>;
  /** Days since the show; below zero before it. */
  readonly daysSince: number;
  readonly plan: Afterwards;
  /** From what it was worked out. */
  readonly from: {
    readonly massKg: number;
    readonly fatPercent: number;
    readonly dietKcal: number;
    readonly balanceKcal: number;
  };
  readonly adopted: Adopted | undefined;
  /** Week of the way back it is now, from 1; absent before the show. */
  readonly week: number | undefined;
  /** Weigh-ins since the show. */
  readonly weighed: readonly DayWeight[];
  /** What the last of them says beside the adopted band. */
  readonly standing: string | undefined;
  /** How the last seven days felt, beside the weeks before and the start. */
  readonly recovery: WeeklyRecovery;
  readonly nextSeason: { readonly soonest: string; readonly why: readonly string[] };
}

/** A show longer ago than this is no way back any more. */
const LATEST_DAYS = 400;
const DIET_DAYS = 14;

/** The show that is behind, or while none is, the one ahead. */
export function showOfWayBack(ledger: Ledger, today: string): DataOf<'show-set'> | undefined {
  const shows = showsFrom(ledger, addDays(today, -LATEST_DAYS)).map(({ data }) => data);
  return shows.findLast(({ date }) => date <= today) ?? shows[0];
}

export interface AfterwardsAsk {
  readonly today: string;
  readonly pace: WayBackPace;
  readonly sex: 'female' | 'male';
  /** What was logged, and what the body did by it. */
  readonly log: readonly EstimateDay[];
  readonly body: EstimateAnswer['days'];
}

/**
 * The way back (CRS-32): worked out from the body of the show day, or of today while the show is ahead, from what was eaten in the
 * two weeks up to it, and from what would have kept the balance.
 */
export function afterwardsNow(ledger: Ledger, ask: AfterwardsAsk): Outcome<AfterwardsNow> {
  const { today, pace, sex, log, body } = ask;
  const show = showOfWayBack(ledger, today);
  if (!show)
    return refused('course/no-show', 'show', 'No show is set.', 'Set its date; the way back begins there.');
  const asOf = show.date < today ? show.date : today;
  const stood = body.findLast(({ date }) => date <= asOf) ?? body[0];
  // A load before the show is not the diet.
  const loads = stretchesOf(ledger).filter(({ type }) => type === 'higher-carbohydrate days');
  const diet = log.filter(({ date }) => !loads.some((one) => covers(one, date)));
  const eaten = averageOver(diet, asOf, DIET_DAYS) ?? averageOver(log, asOf, Number.POSITIVE_INFINITY);
  if (!stood || !eaten)
    return refused(
      'course/way-back-unknown',
      'intake',
      'What was eaten before the show is not logged.',
      'Log the food of a few days, or enter their totals in Body; the way back starts from there.',
    );
  const from = {
    massKg: roundTo(stood.massKg.mean, 1),
    fatPercent: roundTo((100 * stood.fatKg.mean) / stood.massKg.mean, 1),
    dietKcal: roundTo(eaten.energyKcal, 0),
    balanceKcal: roundTo(stood.maintenanceKcal.mean, 0),
  };
  const plan = planAfterwards({
    show: show.date,
    sex,
    pace,
    massKg: from.massKg,
    fatKg: stood.fatKg.mean,
    dietKcal: from.dietKcal,
    balanceKcal: from.balanceKcal,
    daysSinceMenses: sex === 'female' ? daysSinceMenses(ledger, today) : undefined,
  });
  const daysSince = daysBetween(show.date, today);
  const adopted = ledger.of('way-back-adopted').findLast(({ data }) => data.show === show.show)?.data;
  const weighed = weighInsOf(ledger, today).filter(({ day }) => day >= show.date);
  return answered({
    show,
    daysSince,
    plan,
    from,
    adopted,
    week: daysSince < 1 ? undefined : Math.floor((daysSince - 1) / 7) + 1,
    weighed,
    standing: adopted && standingWords(adopted, weighed.at(-1)),
    recovery: weeklyRecovery(ledger, addDays(today, -6), preparationStart(ledger, show.show)),
    nextSeason: nextSeason(ledger, show, plan),
  });
}

function daysSinceMenses(ledger: Ledger, today: string): number | undefined {
  const noted = ledger.of('cycle-noted').findLast(({ day }) => day <= today);
  if (noted?.data.event === 'no menses for three months') return 90 + daysBetween(noted.day, today);
  const began = ledger
    .of('cycle-noted')
    .findLast(({ day, data }) => day <= today && data.event === 'menses began');
  return began && daysBetween(began.day, today);
}

/** A weigh-in outside the band is information, not a verdict. */
function standingWords({ weeks }: Adopted, last: DayWeight | undefined): string | undefined {
  const week = last && weeks.findLast(({ from }) => from <= last.day);
  if (!last || !week) return undefined;
  const band = `${week.lowKg} to ${week.highKg} kg`;
  if (last.massKg > week.highKg)
    return `The last weigh-in, ${last.massKg} kg, is above the ${band} this plan allows by the end of its week. Water after a salty or a large day shows for days; if it stays there for two weeks, eat at balance and keep the meals regular. Going back to the diet is not the answer.`;
  if (last.massKg < week.lowKg)
    return `The last weigh-in, ${last.massKg} kg, is below the ${band} this plan expects by the end of its week: there is room to eat more, and the body needs it.`;
  return `The last weigh-in, ${last.massKg} kg, lies inside the ${band} this plan expects by the end of its week.`;
}

/** At least as long back as the way down took, and not before the healthy range is reached. Common practice, no source. */
function nextSeason(ledger: Ledger, show: DataOf<'show-set'>, plan: Afterwards): AfterwardsNow['nextSeason'] {
  const began = preparationStart(ledger, show.show);
  const last = plan.weeks.at(-1)?.from ?? show.date;
  const asLong = began === undefined ? last : addDays(show.date, daysBetween(began, show.date));
  const dates = [last, asLong, ...(plan.reachedBy === undefined ? [] : [plan.reachedBy])];
  const soonest = dates.reduce((latest, date) => (date > latest ? date : latest));
  return {
    soonest,
    why: [
      ...(began === undefined
        ? []
        : [
            `The preparation took ${Math.round(daysBetween(began, show.date) / 7)} weeks; the way back takes at least as long.`,
          ]),
      plan.reachedBy === undefined
        ? `${plan.healthyPercent.low} % body fat is not reached within a year at this pace.`
        : plan.reachedBy <= show.date
          ? `Body fat stands at or above ${plan.healthyPercent.low} %, the low end of the healthy range, already.`
          : `${plan.healthyPercent.low} % body fat, the low end of the healthy range, may be reached by ${plan.reachedBy}.`,
      'The next preparation begins from a body that has recovered: cycle or libido, mood and strength back, and weight steady for a month.',
    ],
  };
}

import type { WaterShares } from '#core/body/moving-water.ts';
import { addDays, daysBetween, isoWeekday } from '#core/units/civil-date.ts';
import type { KilocaloriesPerDay } from '#core/units/quantities.ts';
import type { DayRow } from './day-row.ts';
import type { FutureDay } from './future-day.ts';
import { type Habit, recentHabit } from './past-habits.ts';
import { type WeekRhythm, weekRhythm } from './week-rhythm.ts';

/** The days from the day after `asOf` to the show, and where their intake comes from. */
export interface FutureDays {
  readonly days: readonly FutureDay[];
  /** What goes on beyond the last row of the plan. */
  readonly goesOn: Habit;
  /** Days whose intake the plan states. */
  readonly planned: number;
}

/** A body whose water neither the cycle nor creatine moves. */
export const NO_MOVING_WATER: WaterShares = { cycle: () => 0, creatine: () => 0 };

/**
 * What is eaten and done until the show (CRS-04): rows of the plan as they stand; days without a row, or rows without
 * intake, go on at the recent average and its rhythm of the week: that of the plan where there is one, else of the log, else what has kept the
 * balance (`balanceKcal`). `planIs` says whether rows after `asOf` will be eaten as they stand or are meant to be.
 */
export function futureDays(
  rows: readonly DayRow[],
  asOf: string,
  show: string,
  balanceKcal: KilocaloriesPerDay,
  water: WaterShares,
  planIs: 'known' | 'planned' = 'known',
): FutureDays {
  const byDate = new Map(rows.map((row) => [row.date, row]));
  const plan = rows.filter((row) => row.date > asOf && row.date <= show);
  const past = rows.filter((row) => row.date <= asOf);
  const lastPlanned = plan.findLast((row) => row.intake !== undefined);
  const fromPlan = lastPlanned && recentHabit(plan, lastPlanned.date);
  const goesOn = fromPlan ?? recentHabit(past, asOf) ?? inBalance(balanceKcal);
  const rhythm = lastPlanned ? weekRhythm(plan, lastPlanned.date) : weekRhythm(past, asOf);
  const days: FutureDay[] = [];
  for (let d = 1; d <= daysBetween(asOf, show); d++) {
    const date = addDays(asOf, d);
    const row = byDate.get(date);
    days.push({
      date,
      ...intakeOf(row, goesOn, rhythm, isoWeekday(date)),
      basis: row?.intake ? planIs : lastPlanned && planIs === 'planned' ? 'planned' : 'habit',
      cycleShare: water.cycle(date),
      creatineShare: water.creatine(date),
    });
  }
  return { days, goesOn, planned: plan.filter((row) => row.intake !== undefined).length };
}

function intakeOf(
  row: DayRow | undefined,
  goesOn: Habit,
  rhythm: WeekRhythm,
  weekday: number,
): Pick<FutureDay, 'energyKcal' | 'carbohydrateKcal' | 'sodiumMg' | 'cardioKcal'> {
  const intake = row?.intake;
  return {
    energyKcal: intake?.energyKcal ?? Math.max(0, goesOn.energyKcal + rhythm.energyKcal(weekday)),
    carbohydrateKcal: intake
      ? 4 * intake.carbohydrateG
      : Math.max(0, 4 * goesOn.carbohydrateG + rhythm.carbohydrateKcal(weekday)),
    sodiumMg: intake ? (intake.sodiumMg ?? Number.NaN) : goesOn.sodiumMg,
    cardioKcal: row?.cardioKcal ?? (intake ? 0 : goesOn.cardioKcal),
  };
}

/** Nothing was ever logged: the body is taken to eat what it spends, on a mixed diet. */
function inBalance(energyKcal: KilocaloriesPerDay): Habit {
  return {
    loggedDays: 0,
    energyKcal,
    proteinG: (0.25 * energyKcal) / 4,
    carbohydrateG: (0.45 * energyKcal) / 4,
    fatG: (0.3 * energyKcal) / 9,
    sodiumMg: Number.NaN,
    cardioKcal: 0,
  };
}

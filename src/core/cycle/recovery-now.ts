import type { EstimateAnswer, EstimateRequest } from '../body/estimate-request.ts';
import { athleteAt } from '../health/panel/panel-from-journal.ts';
import type { PanelReading } from '../health/panel/read-panel.ts';
import { energyScreen, type EnergyScreen, type ScreenRequest } from '../health/recovery/energy-screen.ts';
import { cyclesIn, feltDays, type FeltDay } from '../health/recovery/recovery-notes.ts';
import { weeklyRecovery, type WeeklyRecovery } from '../health/recovery/weekly-recovery.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';
import { roundTo } from '../units/rounding.ts';

export interface RecoveryNow {
  /** The seven days that end on the day asked for. */
  readonly week: WeeklyRecovery;
  /** What the journal has noted on the day itself. */
  readonly noted: FeltDay['felt'];
  /** Weeks with a note before it, newest first. */
  readonly before: readonly WeeklyRecovery[];
}

const WEEKS_BACK = 11;

/** How the week that ends on a day felt, beside the weeks before it (HLT-60). */
export function recoveryNow(ledger: Ledger, until: string): RecoveryNow {
  const from = ledger.latest('preparation-begun')?.data.from;
  const first = addDays(until, -6);
  const weeks = Array.from({ length: WEEKS_BACK }, (_, back) =>
    weeklyRecovery(ledger, addDays(first, -7 * (back + 1)), from),
  );
  return {
    week: weeklyRecovery(ledger, first, from),
    noted: feltDays(ledger, until, until)[0]?.felt ?? {},
    before: weeks.filter(({ measures }) => measures.length > 0),
  };
}

export type Availability = NonNullable<ScreenRequest['availability']>;

const LOOK_BACK_DAYS = 14;
const ENOUGH_DAYS = 7;

/**
 * Energy availability of the last two weeks (HLT-64): food less the energy of logged cardio, for each kilogram of lean tissue.
 * Lifting is not subtracted, for its energy is not logged: the true figure is lower. Undefined below a week of logged days.
 */
export function availabilityOf(
  log: EstimateRequest,
  answer: EstimateAnswer,
  today: string,
): Availability | undefined {
  const from = addDays(today, -LOOK_BACK_DAYS);
  const lean = new Map(answer.days.map((day) => [day.date, day.leanKg.mean]));
  const days = log.days.flatMap((day) => {
    const leanKg = lean.get(day.date);
    if (!day.intake || leanKg === undefined || day.date < from || day.date >= today) return [];
    return [(day.intake.energyKcal - (day.cardioKcal ?? 0)) / leanKg];
  });
  if (days.length < ENOUGH_DAYS) return undefined;
  const kcalPerKgFfm = days.reduce((sum, value) => sum + value, 0) / days.length;
  return { kcalPerKgFfm: roundTo(kcalPerKgFfm, 1), days: days.length };
}

/** The screen for too little energy as the journal stands (HLT-61, HLT-62); undefined before anyone is described. */
export function energyScreenNow(
  ledger: Ledger,
  today: string,
  known: { readonly availability?: Availability | undefined; readonly panel?: PanelReading | undefined },
): EnergyScreen | undefined {
  const athlete = athleteAt(ledger, today);
  if (!athlete) return undefined;
  return energyScreen({
    sex: athlete.sex,
    today,
    felt: feltDays(ledger, addDays(today, -LOOK_BACK_DAYS), today),
    cycles: cyclesIn(ledger, today),
    ...(known.availability && { availability: known.availability }),
    ...(known.panel && { panel: known.panel }),
  });
}

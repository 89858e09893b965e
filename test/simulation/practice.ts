import type { SimulatedRow } from './athlete-simulator.ts';

/** What is done without a model: moving windows and straight lines over the log, 7700 kcal to a kilogram. */

const KCAL_PER_KG = 7700;
const FILL_DAYS = 7;

/** Logged energy by day; a day that was not logged takes the average of the seven days before it. */
export function filledIntake(days: readonly SimulatedRow[]): number[] {
  const all = days.flatMap(({ intake }) => (intake ? [intake.energyKcal] : []));
  const filled: number[] = [];
  for (const { intake } of days) {
    const recent = filled.slice(-FILL_DAYS);
    filled.push(intake?.energyKcal ?? mean(recent.length > 0 ? recent : all));
  }
  return filled;
}

/** Maintenance of a moving window: mean intake less the slope of weight in energy. Undefined below two weigh-ins. */
export function windowMaintenance(
  days: readonly SimulatedRow[],
  intake: readonly number[],
  upTo: number,
  width: number,
): number | undefined {
  const from = Math.max(0, upTo - width + 1);
  const slope = slopeOf(days, from, upTo);
  return slope === undefined ? undefined : mean(intake.slice(from, upTo + 1)) - KCAL_PER_KG * slope;
}

/** The same with one straight line through every weigh-in so far. */
export function lineMaintenance(
  days: readonly SimulatedRow[],
  intake: readonly number[],
  upTo: number,
): number | undefined {
  return windowMaintenance(days, intake, upTo, upTo + 1);
}

/** Mean of the weigh-ins of the last seven days, or the last weigh-in before them. */
export function recentMass(days: readonly SimulatedRow[], upTo: number): number {
  const week = weightsOf(days, Math.max(0, upTo - 6), upTo).map(({ weightKg }) => weightKg);
  return week.length > 0 ? mean(week) : (weightsOf(days, 0, upTo).at(-1)?.weightKg ?? Number.NaN);
}

/** Mass foretold day by day from a maintenance that stays as it is. */
export function practiceForecast(startKg: number, maintenance: number, intake: readonly number[]): number[] {
  let mass = startKg;
  return intake.map((eaten) => {
    mass += (eaten - maintenance) / KCAL_PER_KG;
    return mass;
  });
}

function slopeOf(days: readonly SimulatedRow[], from: number, to: number): number | undefined {
  const points = weightsOf(days, from, to);
  if (points.length < 2) return undefined;
  const middleDay = mean(points.map(({ day }) => day));
  const middleKg = mean(points.map(({ weightKg }) => weightKg));
  let along = 0;
  let square = 0;
  for (const { day, weightKg } of points) {
    along += (day - middleDay) * (weightKg - middleKg);
    square += (day - middleDay) ** 2;
  }
  return along / square;
}

function weightsOf(
  days: readonly SimulatedRow[],
  from: number,
  to: number,
): { day: number; weightKg: number }[] {
  return days
    .slice(from, to + 1)
    .flatMap(({ weightKg }, i) => (weightKg === undefined ? [] : [{ day: from + i, weightKg }]));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

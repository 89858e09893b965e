import { daysBetween } from '#core/units/civil-date.ts';
import type { Kilograms, Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { LinePoint } from './lay-course.ts';

/** What is believed of one day, as the estimate gives it. */
export interface EstimatedDay {
  readonly date: string;
  readonly massKg: { readonly mean: Kilograms; readonly sd: Kilograms };
  readonly fatKg: { readonly mean: Kilograms; readonly sd: Kilograms };
}

/** Planned and actual on one date. `beyondNoise` says whether the difference is more than the estimate's own spread. */
export interface AgainstPlan {
  readonly date: string;
  readonly plannedMassKg: Kilograms;
  readonly massKg: Kilograms;
  readonly massAheadKg: Kilograms;
  readonly plannedFatKg: Kilograms;
  readonly fatKg: Kilograms;
  readonly fatAheadKg: Kilograms;
  readonly bodyFatPercent: Percent;
  readonly beyondNoise: boolean;
}

/** Half width of a 90 % interval in standard deviations. */
const NINETY = 1.645;

/** Holds each estimated day against the line that was planned, where the line covers it (CRS-14). */
export function heldAgainstPlan(
  line: readonly LinePoint[],
  days: readonly EstimatedDay[],
): readonly AgainstPlan[] {
  return days.flatMap((day) => {
    const planned = pointOn(line, day.date);
    if (planned === undefined) return [];
    const massAheadKg = planned.massKg - day.massKg.mean;
    return [
      {
        date: day.date,
        plannedMassKg: roundTo(planned.massKg, 2),
        massKg: roundTo(day.massKg.mean, 2),
        massAheadKg: roundTo(massAheadKg, 2),
        plannedFatKg: roundTo(planned.fatKg, 2),
        fatKg: roundTo(day.fatKg.mean, 2),
        fatAheadKg: roundTo(planned.fatKg - day.fatKg.mean, 2),
        bodyFatPercent: roundTo((100 * day.fatKg.mean) / day.massKg.mean, 2),
        beyondNoise: Math.abs(massAheadKg) > NINETY * day.massKg.sd,
      },
    ];
  });
}

/** The planned line between its weekly points. */
export function pointOn(line: readonly LinePoint[], date: string): LinePoint | undefined {
  const after = line.findIndex((point) => point.date >= date);
  const high = line[after];
  if (high === undefined) return undefined;
  if (high.date === date) return high;
  const low = line[after - 1];
  if (low === undefined) return undefined;
  const share = daysBetween(low.date, date) / daysBetween(low.date, high.date);
  const between = (a: number, b: number) => a + share * (b - a);
  const massKg = between(low.massKg, high.massKg);
  const fatKg = between(low.fatKg, high.fatKg);
  return { date, massKg, fatKg, bodyFatPercent: (100 * fatKg) / massKg };
}

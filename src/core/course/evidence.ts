import { daysBetween } from '#core/units/civil-date.ts';
import type { DayRow } from './day-row.ts';

/** What the log holds to judge by, and what it lacks (CRS-05). */
export interface Evidence {
  readonly weighIns: number;
  /** Days from the first row to the last day known. */
  readonly spanDays: number;
  readonly loggedIntakes: number;
  readonly bodyFatReadings: number;
  /** Sentences, one for each thing lacking; empty where there is enough. */
  readonly lacking: readonly string[];
}

const WINDOW_DAYS = 28;
const LEAST = { spanDays: 14, weighIns: 8, loggedIntakes: 10, weighInAgeDays: 10 } as const;

/** Enough is: two weeks of log, and in the last four weeks 8 weigh-ins, 10 days of intake, the last weigh-in fresh. */
export function evidenceOf(rows: readonly DayRow[], asOf: string): Evidence {
  const past = rows.filter((row) => row.date <= asOf);
  const recent = past.filter((row) => daysBetween(row.date, asOf) < WINDOW_DAYS);
  const weighed = recent.filter((row) => row.weightKg !== undefined);
  const loggedIntakes = recent.filter((row) => row.intake !== undefined).length;
  const first = past[0];
  const spanDays = first === undefined ? 0 : daysBetween(first.date, asOf) + 1;
  const lastWeighed = weighed.at(-1);
  const age = lastWeighed === undefined ? undefined : daysBetween(lastWeighed.date, asOf);
  const lacking: string[] = [];
  if (spanDays < LEAST.spanDays)
    lacking.push(`The log covers ${days(spanDays)}; a course is judged from ${LEAST.spanDays} on.`);
  if (weighed.length < LEAST.weighIns)
    lacking.push(
      `${count(weighed.length, 'weigh-in')} in the last four weeks; ${LEAST.weighIns} are needed.`,
    );
  if (loggedIntakes < LEAST.loggedIntakes)
    lacking.push(
      `Intake is logged on ${days(loggedIntakes)} of the last four weeks; ${LEAST.loggedIntakes} are needed.`,
    );
  if (age !== undefined && age > LEAST.weighInAgeDays && weighed.length >= LEAST.weighIns)
    lacking.push(`The last weigh-in is ${days(age)} old.`);
  return {
    weighIns: weighed.length,
    spanDays,
    loggedIntakes,
    bodyFatReadings: past.filter((row) => row.bodyFat !== undefined).length,
    lacking,
  };
}

function days(n: number): string {
  return count(n, 'day');
}

function count(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`;
}

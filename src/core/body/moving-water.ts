import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { EstimateDay } from './estimate-request.ts';

/** How much of the water of the cycle and of creatine stands in the body on a date, 0 to 1. */
export interface WaterShares {
  readonly cycle: (date: string) => number;
  readonly creatine: (date: string) => number;
}

/** Days from one onset to the next where the log does not tell. Common practice, no source. */
const CYCLE_DAYS = 28;
/** A cycle that has run this long without a new onset is no longer counted on. */
const LONGEST_CYCLE = 45;
/** Width of the rise about the onset of menses, days (1 sd); from memory. */
const ONSET_WIDTH_DAYS = 4;
/** Time over which a creatine dose fills muscle, days; from memory. */
const CREATINE_DAYS = 9;

/** Shares from the cycle days noted on or before each date, and from the start of creatine. */
export function waterShares(days: readonly EstimateDay[], creatineFrom: string | undefined): WaterShares {
  const onsets = days
    .filter((day) => day.cycleDay !== undefined)
    .map((day) => ({ noted: day.date, onset: addDays(day.date, 1 - (day.cycleDay ?? 1)) }));
  return {
    cycle: (date) => {
      const last = onsets.findLast(({ noted }) => noted <= date);
      return last === undefined ? 0 : cycleShare(daysBetween(last.onset, date));
    },
    creatine: (date) => (creatineFrom === undefined ? 0 : creatineShare(daysBetween(creatineFrom, date))),
  };
}

function cycleShare(sinceOnset: number): number {
  if (sinceOnset > LONGEST_CYCLE) return 0;
  const away = Math.min(sinceOnset, Math.abs(CYCLE_DAYS - sinceOnset));
  return Math.exp(-0.5 * (away / ONSET_WIDTH_DAYS) ** 2);
}

function creatineShare(sinceStart: number): number {
  return sinceStart < 0 ? 0 : 1 - Math.exp(-(sinceStart + 1) / CREATINE_DAYS);
}

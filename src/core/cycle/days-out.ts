import { dateAtPlace } from '../course/show-day.ts';
import { addDays, daysBetween, parseDate } from '../units/civil-date.ts';
import type { ClockMinutes, Minutes } from '../units/quantities.ts';

/** A moment, and what the clocks stand ahead of universal time here and at the place of a show. */
export interface MomentThere {
  readonly nowMs: number;
  readonly hereMinutes: Minutes;
  readonly thereMinutes: Minutes;
}

/**
 * The prep day it is at the place of the show (CRS-26): today here, a day on or back where the date line lies between, so that
 * days out are counted as the show's own calendar has them.
 */
export function todayThere(today: string, { nowMs, hereMinutes, thereMinutes }: MomentThere): string {
  return addDays(today, dateAtPlace(nowMs, thereMinutes) - dateAtPlace(nowMs, hereMinutes));
}

/** Whole days to a date at the place of the show. */
export function daysOutThere(today: string, date: string, moment: MomentThere): number {
  return daysBetween(todayThere(today, moment), date);
}

/** Minutes since midnight of a date at the place of the show; below zero before it, past 1440 after midnight. */
export function clockThere(date: string, { nowMs, thereMinutes }: MomentThere): ClockMinutes {
  return Math.floor(nowMs / 60_000) + thereMinutes - (parseDate(date) ?? 0) * 1440;
}

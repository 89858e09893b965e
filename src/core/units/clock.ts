import type { ClockMinutes } from './quantities.ts';

/** "HH:MM" of a prep day, which runs from waking to sleep: "24:30" is half past midnight of the same prep day. */
const CLOCK = /^(\d{2}):([0-5]\d)$/;

/** Latest time a prep day may reach: noon of the next civil day. */
export const LAST_CLOCK_MINUTE = 36 * 60;

/** Minutes since midnight, or undefined where the text is no clock time of a prep day. */
export function parseClock(text: string): ClockMinutes | undefined {
  const match = CLOCK.exec(text);
  if (!match) return undefined;
  const minutes = Number(match[1]) * 60 + Number(match[2]);
  return minutes <= LAST_CLOCK_MINUTE ? minutes : undefined;
}

export function formatClock(minutes: ClockMinutes): string {
  const hours = Math.floor(minutes / 60);
  return `${String(hours).padStart(2, '0')}:${String(Math.round(minutes - hours * 60)).padStart(2, '0')}`;
}

import { formatClock, LAST_CLOCK_MINUTE, parseClock } from '#core/units/clock.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';

export interface ClockReading {
  readonly text: string;
  readonly minutes?: ClockMinutes;
  readonly problem?: string;
}

/** Reads a clock time as thumbs type it: "7:30", "07.30", "730", "7"; "24:30" is half past midnight of the same prep day. */
export function readClock(typed: string, label: string): ClockReading {
  const text = typed.trim();
  if (text === '') return { text: typed };
  const match = /^(\d{1,2})(?:[:.,h ]?(\d{2}))?$/.exec(text);
  const minutes = match ? parseClock(`${(match[1] ?? '').padStart(2, '0')}:${match[2] ?? '00'}`) : undefined;
  if (minutes !== undefined) return { text: typed, minutes };
  const last = formatClock(LAST_CLOCK_MINUTE);
  const problem = `${label}: "${text}" is not a clock time. Type hours and minutes, such as 7:30, or up to ${last} for past midnight.`;
  return { text: typed, problem };
}

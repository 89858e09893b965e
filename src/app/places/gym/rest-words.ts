import type { Seconds } from '#core/units/quantities.ts';

/** Rest since the last set, worked out from its moment, so that a dark screen or a reload changes nothing (GYM-97). */
export function restSince(lastMs: number, nowMs: number): Seconds {
  return Math.max(0, Math.floor((nowMs - lastMs) / 1000));
}

/** "2:05"; from an hour on "1:02:05". */
export function restWords(seconds: Seconds): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds % 60)}` : `${minutes}:${two(seconds % 60)}`;
}

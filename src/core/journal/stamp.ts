import { formatUtc } from '../units/format-instant.ts';
import { parseInstant } from '../units/instant.ts';

/**
 * A hybrid logical clock (Kulkarni et al. 2014, "Logical physical clocks") written as text that sorts:
 * "2027-03-01T11:14:00.123Z-0003-k3f9a2". Wall time, then a counter for the same millisecond or a clock set back,
 * then the writer, which makes it unique.
 */
const STAMP = /^(\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z)-([0-9a-f]{4})-([a-z0-9]{4,16})$/;
const LAST_COUNTER = 0xffff;

export interface StampParts {
  readonly epochMs: number;
  readonly counter: number;
  readonly writer: string;
}

export function readStamp(text: string): StampParts | undefined {
  const match = STAMP.exec(text);
  const instant = match?.[1] === undefined ? undefined : parseInstant(match[1]);
  if (!match || !instant) return undefined;
  return { epochMs: instant.epochMs, counter: Number.parseInt(match[2] ?? '', 16), writer: match[3] ?? '' };
}

export function writeStamp(parts: StampParts): string {
  return `${formatUtc(parts.epochMs)}-${parts.counter.toString(16).padStart(4, '0')}-${parts.writer}`;
}

/** A clock that was wrong once must not carry every later stamp with it: further ahead than this is not followed. */
const MAX_AHEAD_MS = 24 * 60 * 60 * 1000;

/**
 * The next stamp of a writer: later than every stamp seen, even when the clock stands still or was set back.
 * `latest` is the greatest stamp in the journal, `nowMs` what the clock says. A latest stamp more than a day ahead of
 * the clock is passed over: corrections count by what they replace, so order by stamp alone loses nothing.
 */
export function nextStamp(latest: string | undefined, nowMs: number, writer: string): string {
  const last = latest === undefined ? undefined : readStamp(latest);
  if (!last || nowMs > last.epochMs || last.epochMs - nowMs > MAX_AHEAD_MS) {
    return writeStamp({ epochMs: nowMs, counter: 0, writer });
  }
  if (last.counter < LAST_COUNTER) {
    return writeStamp({ epochMs: last.epochMs, counter: last.counter + 1, writer });
  }
  return writeStamp({ epochMs: last.epochMs + 1, counter: 0, writer });
}

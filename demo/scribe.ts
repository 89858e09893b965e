import { composeEntry } from '#core/journal/compose-entry.ts';
import type { Entry } from '#core/journal/entry.ts';
import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import { randomStream } from '#core/random/random-stream.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { parseClock } from '#core/units/clock.ts';
import { story, type StoryClock } from './story.ts';

/** Writes the story's entries, each when it happened, stamped a few seconds later. */
export interface Scribe {
  /** Writes one entry at a local clock time of a prep day; answers its id. Call in the order of time. */
  write<Kind extends KnownKind>(day: string, clock: string, kind: Kind, data: DataOf<Kind>): string;
  readonly entries: readonly Entry[];
}

export function createScribe(seed: number, at: StoryClock): Scribe {
  const chance = randomStream(seed, 'demo ids');
  const entries: Entry[] = [];
  let latestStamp: string | undefined;
  return {
    entries,
    write(day, clock, kind, data) {
      const atMs = storyMs(day, clock, at);
      const entry = composeEntry({
        kind,
        data,
        day,
        atMs,
        nowMs: atMs + 1000 * (5 + chance.integer(40)),
        offsetMinutes: at.offsetMinutes,
        zone: at.zone,
        device: story.device,
        writer: story.device,
        random: Uint8Array.from({ length: 10 }, () => chance.integer(256)),
        latestStamp,
      });
      // A story that does not fit the journal is a fault of the story.
      if (!entry.ok)
        throw new RangeError(`${kind} on ${day}: ${entry.problem.message} (${entry.problem.path})`);
      entries.push(entry.value);
      latestStamp = entry.value.stamp;
      return entry.value.id;
    },
  };
}

/** Epoch milliseconds of a local clock time of a story day. */
export function storyMs(day: string, clock: string, at: StoryClock): number {
  const [date, minutes] = [parseDate(day), parseClock(clock)];
  if (date === undefined || minutes === undefined) throw new RangeError(`no such moment: ${day} ${clock}`);
  return (date * 1440 + minutes - at.offsetMinutes) * 60_000;
}

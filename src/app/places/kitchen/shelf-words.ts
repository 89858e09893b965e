import type { ShelfReading } from '#core/kitchen/shelf-life.ts';
import { formatInstant } from '#core/units/format-instant.ts';
import { dateWords } from '#core/words/dates.ts';
import type { Why } from '../../parts/why.ts';
import { sourceWords } from '../../views/source-words.ts';
import { offsetMinutesAt } from '../../state/clock.ts';

/** "use by Thursday 4 March 18:00", "frozen", "out: bin it". */
export function shelfWords(reading: ShelfReading): string {
  switch (reading.state) {
    case 'out':
      return 'out of time: bin it';
    case 'past its best':
      return 'past its best';
    case 'frozen':
      return 'frozen';
    case 'no clock':
      return '';
    case 'fresh':
    case 'use soon':
      return reading.useByMs === undefined ? '' : `use by ${momentWords(reading.useByMs)}`;
  }
}

/** "Thursday 4 March 18:00", local. */
export function momentWords(epochMs: number): string {
  return clockedDate(formatInstant(epochMs, offsetMinutesAt(epochMs)));
}

/** The same of an RFC 3339 text. */
export function clockedDate(local: string): string {
  return `${dateWords(local.slice(0, 10))} ${local.slice(11, 16)}`;
}

/** Whether it should be looked at today. */
export function needsEye(reading: ShelfReading): boolean {
  return reading.state === 'out' || reading.state === 'use soon';
}

export function shelfWhy(name: string, reading: ShelfReading, source: string): Why {
  const minutes =
    reading.minutesOut > 0
      ? [`It has stood out for ${Math.round(reading.minutesOut)} minutes; they add up.`]
      : [];
  return {
    title: `${name}: use by`,
    sentences: [
      'Counted from cooking, thawing or buying by the storage times of food-safety agencies; a mixed dish takes the shortest of its parts. Look and smell prove nothing.',
      ...minutes,
    ],
    source: sourceWords(source),
  };
}

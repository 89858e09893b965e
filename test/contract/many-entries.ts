import type { Entry } from '#core/journal/entry.ts';
import { writeStamp } from '#core/journal/stamp.ts';

const NOON = 1_804_075_200_000;

/** So many entries whose ids begin with a prefix; the same for the same arguments. */
export function manyEntries(count: number, prefix: string): Entry[] {
  return Array.from({ length: count }, (_, i) => ({
    id: `${prefix}${i}`,
    stamp: writeStamp({ epochMs: NOON + i * 1000, counter: 0, writer: 'contract' }),
    device: 'contract',
    kind: 'body-weighed',
    day: '2027-03-03',
    at: '2027-03-03T12:00:00+00:00',
    zone: 'Europe/Lisbon',
    data: { massKg: 70 + (i % 100) / 10 },
  }));
}

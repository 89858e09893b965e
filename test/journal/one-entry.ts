import type { Entry } from '#core/journal/entry.ts';

let count = 0;

/** An entry with everything filled in; what a test is about is given. Each call stamps a minute later. */
export function oneEntry(given: Partial<Entry> = {}): Entry {
  count += 1;
  const minute = String(count % 60).padStart(2, '0');
  const hour = String(Math.floor(count / 60) % 24).padStart(2, '0');
  return {
    id: `e${count}`,
    stamp: `2027-03-01T${hour}:${minute}:00.000Z-0000-tester`,
    device: 'device',
    kind: 'body-weighed',
    day: '2027-03-01',
    at: `2027-03-01T${hour}:${minute}:00+00:00`,
    zone: 'Europe/Lisbon',
    data: { massKg: 80 },
    ...given,
  };
}

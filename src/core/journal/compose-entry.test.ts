import { describe, expect, test } from 'vitest';
import { composeEntry, type EntryDraft } from './compose-entry.ts';
import { isEntry } from './entry-shape.ts';
import { readStamp } from './stamp.ts';

const nowMs = Date.UTC(2027, 2, 1, 11, 14, 0, 123);
const draft: EntryDraft = {
  kind: 'body-weighed',
  data: { massKg: 81.4 },
  day: '2027-03-01',
  nowMs,
  offsetMinutes: 60,
  zone: 'Europe/Lisbon',
  device: 'kitchen',
  writer: 'kitchena',
  random: new Uint8Array([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]),
  latestStamp: undefined,
};

describe('composing an entry', () => {
  test('[JRN-01] fills in everything an entry is made of', () => {
    const composed = composeEntry({ ...draft, replaces: 'older' });
    expect(composed).toEqual({
      ok: true,
      value: {
        id: '01MG0CR69V041061050R3GG28A',
        stamp: '2027-03-01T11:14:00.123Z-0000-kitchena',
        device: 'kitchen',
        kind: 'body-weighed',
        day: '2027-03-01',
        at: '2027-03-01T12:14:00+01:00',
        zone: 'Europe/Lisbon',
        data: { massKg: 81.4 },
        replaces: 'older',
      },
    });
    expect(composed.ok && isEntry(composed.value)).toBe(true);
  });

  test('[JRN-01] when it happened and when it was written are two things', () => {
    const composed = composeEntry({ ...draft, day: '2027-02-28', atMs: nowMs - 86_400_000 });
    expect(composed.ok && composed.value.at).toBe('2027-02-28T12:14:00+01:00');
    expect(composed.ok && readStamp(composed.value.stamp)?.epochMs).toBe(nowMs);
  });

  test.each([
    ['journal/unknown-kind', { kind: 'moon-seen' }],
    ['journal/unknown-field', { data: { massKg: 80, masKg: 80 } }],
    ['journal/missing-field', { data: {} }],
    ['journal/wrong-value', { data: { massKg: -1 } }],
    ['journal/wrong-value', { data: { massKg: Number.NaN } }],
    ['journal/day-not-a-date', { day: '2027-02-29' }],
  ])('[JRN-12] what does not fit is refused: %s', (code, broken) => {
    const composed = composeEntry({ ...draft, ...broken });
    expect(composed.ok ? 'written' : composed.problem.code).toBe(code);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nextStamp, readStamp, writeStamp } from './stamp.ts';

const noon = Date.UTC(2027, 2, 1, 12);

describe('stamps', () => {
  test('[JRN-13] a stamp is later than every stamp before it, whatever the clock does', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -600_000, max: 600_000 }), { minLength: 2 }), (skews) => {
        let latest: string | undefined;
        for (const skew of skews) {
          const stamp = nextStamp(latest, noon + skew, 'kitchen');
          if (latest !== undefined) expect(stamp > latest).toBe(true);
          latest = stamp;
        }
      }),
      { seed: 20270303 },
    );
  });

  test('[JRN-13] a full counter moves on by a millisecond', () => {
    const full = writeStamp({ epochMs: noon, counter: 0xffff, writer: 'kitchen' });
    expect(nextStamp(full, noon, 'kitchen')).toBe('2027-03-01T12:00:00.001Z-0000-kitchen');
  });

  test('[JRN-13] a stamp more than a day ahead of the clock is not followed', () => {
    const ahead = writeStamp({ epochMs: noon + 86_400_001, counter: 0, writer: 'broken' });
    expect(nextStamp(ahead, noon, 'kitchen')).toBe('2027-03-01T12:00:00.000Z-0000-kitchen');
    const justAhead = writeStamp({ epochMs: noon + 86_400_000, counter: 0, writer: 'ahead' });
    expect(nextStamp(justAhead, noon, 'kitchen')).toBe('2027-03-02T12:00:00.000Z-0001-kitchen');
  });

  test('[JRN-13] a stamp that cannot be read is passed over', () => {
    expect(readStamp('zzz')).toBeUndefined();
    expect(nextStamp('zzz', noon, 'kitchen')).toBe('2027-03-01T12:00:00.000Z-0000-kitchen');
  });

  test('[JRN-13] what was written is read back', () => {
    const parts = { epochMs: noon + 7, counter: 0x1a, writer: 'kitchen' };
    expect(readStamp(writeStamp(parts))).toEqual(parts);
  });
});

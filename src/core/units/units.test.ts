import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, daysBetween, formatDate, isoWeekday, parseDate } from './civil-date.ts';
import { formatClock, parseClock } from './clock.ts';
import { toKilocalories, toKilojoules } from './energy.ts';
import { formatInstant, formatUtc } from './format-instant.ts';
import { parseInstant } from './instant.ts';
import { fromGrams, toGrams } from './mass.ts';
import { roundTo } from './rounding.ts';

describe('units', () => {
  it('[GND-01] a pound is 453.59237 g (international yard and pound agreement, 1959) and sixteen ounces', () => {
    expect(toGrams(1, 'lb')).toBe(453.59237);
    expect(toGrams(16, 'oz')).toBeCloseTo(toGrams(1, 'lb'), 12);
    expect(toGrams(1.5, 'lb')).toBeCloseTo(680.388555, 9);
    expect(fromGrams(toGrams(7, 'oz'), 'oz')).toBeCloseTo(7, 12);
  });

  it('[GND-01] a thermochemical kilocalorie is 4.184 kJ (ISO 80000-5 note)', () => {
    expect(toKilojoules(100)).toBeCloseTo(418.4, 12);
    expect(toKilocalories(418.4)).toBeCloseTo(100, 12);
  });

  it('[GND-02] civil dates agree with the platform calendar over 400 years', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60_000, max: 120_000 }), (day) => {
        const text = formatDate(day);
        expect(text).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
        expect(parseDate(text)).toBe(day);
        expect(isoWeekday(text)).toBe(((new Date(day * 86_400_000).getUTCDay() + 6) % 7) + 1);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('[GND-02] refuses dates that are not in the calendar', () => {
    for (const text of ['2027-02-29', '2027-13-01', '2027-00-10', '2027-1-1', '27-01-01', '2027-04-31', '']) {
      expect(parseDate(text), text).toBeUndefined();
    }
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(daysBetween('2027-12-31', '2028-01-01')).toBe(1);
  });

  it('[GND-03] a prep day runs past midnight: "24:30" is half past', () => {
    expect(parseClock('24:30')).toBe(1470);
    expect(formatClock(1470)).toBe('24:30');
    for (const text of ['7:05', '24:60', '36:01', '99:00', '-1:00', 'noon'])
      expect(parseClock(text), text).toBeUndefined();
  });

  it('[GND-04] moments are read with their local time (RFC 3339) and agree with the platform', () => {
    const moment = parseInstant('2027-03-01T00:14:05.250+13:45');
    expect(moment).toEqual({
      epochMs: Date.parse('2027-03-01T00:14:05.250+13:45'),
      localDate: '2027-03-01',
      localMinutes: 14,
      offsetMinutes: 825,
    });
    for (const text of [
      '2027-03-01',
      '2027-03-01T25:00:00Z',
      '2027-02-30T10:00:00Z',
      '2027-03-01T10:00:00',
      '2027-03-01T10:00:00+15:00',
    ]) {
      expect(parseInstant(text), text).toBeUndefined();
    }
  });

  it('[GND-04] writing and reading a moment gives it back', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4_000_000_000 }),
        fc.integer({ min: -14 * 60, max: 14 * 60 }),
        (seconds, offset) => {
          const text = formatInstant(seconds * 1000, offset);
          expect(parseInstant(text)?.epochMs).toBe(seconds * 1000);
          expect(parseInstant(text)?.offsetMinutes).toBe(offset);
          expect(formatUtc(seconds * 1000 + 7)).toBe(new Date(seconds * 1000 + 7).toISOString());
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });

  it('[GND-05] rounding: halves away from zero, never -0', () => {
    expect(roundTo(2.345, 2)).toBe(2.35);
    expect(roundTo(-2.345, 2)).toBe(-2.35);
    expect(Object.is(roundTo(-0.001, 1), 0)).toBe(true);
    expect(roundTo(1.005, 2)).toBe(1.01);
  });
});

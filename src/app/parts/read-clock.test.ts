import { describe, expect, it } from 'vitest';
import { readClock } from './read-clock.ts';

describe('[LOOK-03] clock times as typed', () => {
  it.each([
    ['7:30', 450],
    ['07:30', 450],
    ['730', 450],
    ['0730', 450],
    ['7.30', 450],
    ['7', 420],
    ['7h30', 450],
    ['24:30', 1470],
    ['36:00', 2160],
    ['0:00', 0],
  ])('[LOOK-03] "%s" is minute %d of the prep day', (typed, minutes) => {
    expect(readClock(typed, 'Wake')).toEqual({ text: typed, minutes });
  });

  it('[LOOK-03] nothing typed is no time', () => {
    expect(readClock('', 'Wake')).toEqual({ text: '' });
  });

  it.each(['7:3', '7:75', '36:01', '99', 'noon', '7:30:15'])(
    '[LOOK-04] "%s" is kept, with a remedy',
    (typed) => {
      const reading = readClock(typed, 'Wake');
      expect(reading.minutes).toBeUndefined();
      expect(reading.text).toBe(typed);
      expect(reading.problem).toBe(
        `Wake: "${typed}" is not a clock time. Type hours and minutes, such as 7:30, or up to 36:00 for past midnight.`,
      );
    },
  );
});

import { describe, expect, it } from 'vitest';
import { dateWords, weeksAndDays, weeksOut } from './dates.ts';

describe('dates in words', () => {
  it('[RUN-08] says the weekday, day and month', () => {
    expect(dateWords('2027-03-04')).toBe('Thursday 4 March');
    expect(dateWords('2028-02-29')).toBe('Tuesday 29 February');
  });

  it('[RUN-08] counts weeks out as the trade does (common practice, no source)', () => {
    expect(weeksOut('2027-03-04', '2027-05-01')).toBe('8 weeks 2 days out');
    expect(weeksOut('2027-04-24', '2027-05-01')).toBe('1 week out');
    expect(weeksOut('2027-04-30', '2027-05-01')).toBe('1 day out');
    expect(weeksOut('2027-05-01', '2027-05-01')).toBe('show day');
    expect(weeksOut('2027-05-04', '2027-05-01')).toBe('3 days after the show');
    expect(weeksAndDays(7)).toBe('1 week');
  });
});

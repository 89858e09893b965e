import { describe, expect, it } from 'vitest';
import { spoken } from './spoken.ts';

describe('sentences as they are said', () => {
  it('[RUN-08] a date is said with weekday and month', () => {
    expect(spoken('On 2027-05-08, 9 weeks after 2027-03-06.', 'kg')).toBe(
      'On Saturday 8 May, 9 weeks after Saturday 6 March.',
    );
  });

  // NIST Handbook 44, appendix C: 1 lb is 0.453 592 37 kg.
  it('[RUN-31] masses of the body in pounds, each to its decimals, signs kept', () => {
    expect(spoken('lands at 80.0 kg (5 to 95 %: 79.1 kg to 81 kg)', 'lb')).toBe(
      'lands at 176.4 lb (5 to 95 %: 174.4 lb to 179 lb)',
    );
    expect(spoken('moved by −0.35 kg and fat by +0.2 kg', 'lb')).toBe('moved by −0.77 lb and fat by +0.4 lb');
    expect(spoken('at most 2 kg', 'lb')).toBe('at most 4.4 lb');
    expect(spoken('80.0 kg', 'kg')).toBe('80.0 kg');
  });

  it('[RUN-31] doses for each kilogram stay as their sources give them', () => {
    const dose = 'At least 150 g of protein a day: 2.3 g for each of 66 kg, 25 kcal per kg of fat-free mass.';
    expect(spoken(dose, 'lb')).toBe(dose);
  });
});

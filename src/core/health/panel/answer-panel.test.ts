import { describe, expect, it } from 'vitest';
import { afterLegs, ask, drawn, first, muscle, problem } from '../../../../test/health/ask-panel.ts';

describe('a value', () => {
  it('[HLT-01] is found by code or by any of its names', () => {
    for (const named of [
      { loinc: '1742-6' },
      { name: 'ALT' },
      { name: 'sgpt' },
      { name: 'Alanine Aminotransferase' },
    ]) {
      expect(first([{ ...named, value: 20, unit: 'U/L' }])).toMatchObject({
        loinc: '1742-6',
        name: 'ALT',
        flag: 'in',
      });
    }
  });

  it('[HLT-01] has the code of its unit: moles have another than grams', () => {
    expect(first([{ name: 'glucose', value: 90, unit: 'mg/dL' }]).loinc).toBe('2345-7');
    expect(first([{ name: 'glucose', value: 5, unit: 'mmol/L' }]).loinc).toBe('14749-6');
    expect(first([{ name: 'HbA1c', value: 38, unit: 'mmol/mol' }]).loinc).toBe('59261-8');
  });

  it('[HLT-03] urea in grams is scaled to urea nitrogen; in moles it is the same', () => {
    expect(first([{ name: 'urea', value: 30, unit: 'mg/dL' }]).si?.value).toBeCloseTo(30 / 6.006, 1);
    expect(first([{ name: 'urea', value: 5, unit: 'mmol/L' }]).si).toEqual({ value: 5, unit: 'mmol/L' });
    expect(first([{ name: 'BUN', value: 14, unit: 'mg/dL' }]).si?.value).toBeCloseTo(4.998, 9);
  });

  it("[HLT-05] the laboratory's own interval goes before the table's, which names its source", () => {
    const value = { name: 'ALT', value: 38, unit: 'U/L' };
    expect(first([value])).toMatchObject({ flag: 'in', interval: { low: 10, high: 40 } });
    expect(first([value]).interval?.source).toContain('American Board of Internal Medicine');
    const own = first([{ ...value, interval: { high: 35 } }]);
    expect(own).toMatchObject({ flag: 'high', interval: { high: 35 } });
    expect(own.interval?.source).toContain('laboratory');
  });

  it("[HLT-05] the table's interval is written in the value's unit", () => {
    const { interval } = first([{ name: 'creatinine', value: 100, unit: 'umol/L' }]);
    expect(interval).toMatchObject({ low: 61.88, high: 114.92 });
  });

  it('[HLT-06] lies in the interval on its very edge, in either unit', () => {
    expect(first([{ name: 'creatinine', value: 1.3, unit: 'mg/dL' }]).flag).toBe('in');
    expect(first([{ name: 'creatinine', value: 114.92, unit: 'umol/L' }]).flag).toBe('in');
    expect(first([{ name: 'creatinine', value: 1.31, unit: 'mg/dL' }]).flag).toBe('high');
    expect(first([{ name: 'potassium', value: 3.4, unit: 'mmol/L' }]).flag).toBe('low');
  });

  it('[HLT-06] women have their own intervals', () => {
    const value = [{ name: 'hemoglobin', value: 13, unit: 'g/dL' }];
    expect(first(value).flag).toBe('low');
    expect(first(value, { athlete: { sex: 'female', age: 35 } }).flag).toBe('in');
  });

  it('[HLT-06] a bound is kept, computed from by nothing, and judged only where it is certain', () => {
    const tsh = first([{ name: 'TSH', value: '<0.1', unit: 'm[IU]/L' }]);
    expect(tsh).toMatchObject({ value: 0.1, comparator: '<', flag: 'low', si: { comparator: '<' } });
    expect(first([{ name: 'CRP', value: '<0.6', unit: 'mg/L' }]).flag).toBe('in');
    expect(first([{ name: 'TSH', value: 0.8, comparator: '<', unit: 'm[IU]/L' }])).not.toHaveProperty('flag');
    expect(first([{ name: 'eGFR', value: '>90', unit: 'mL/min/{1.73_m2}' }]).flag).toBe('in');
    const panel = ask([
      { name: 'glucose', value: 90, unit: 'mg/dL' },
      { name: 'insulin', value: '<2', unit: 'u[IU]/mL' },
    ]);
    expect(panel.derived.map(({ name }) => name)).toEqual([]);
  });

  it('[HLT-06] what the table does not know is kept, shown, not judged, and needs no known unit', () => {
    const unknown = first([{ name: 'Zonulin', value: 5, unit: 'zu/L' }]);
    expect(unknown).toMatchObject({ name: 'Zonulin', value: 5, unit: 'zu/L' });
    for (const field of ['flag', 'si', 'interval', 'change']) expect(unknown).not.toHaveProperty(field);
    expect(unknown.notes.join()).toContain('Not judged');
    const urineGlucose = first([{ loinc: '5792-7', name: 'Glucose', value: 0, unit: 'mg/dL' }]);
    expect(urineGlucose).not.toHaveProperty('flag');
  });

  it('[HLT-06] without any interval it is not judged', () => {
    const igf = first([{ name: 'IGF-1', value: 180, unit: 'ng/mL' }]);
    expect(igf).not.toHaveProperty('flag');
    expect(igf.notes.join()).toContain('Not judged');
  });
});

describe('values that need care now', () => {
  // The stricter end of the published critical lists (Kost 1990, JAMA 263:704, and hospital lists).
  it.each([
    ['potassium', 6.0, 'mmol/L'],
    ['potassium', 2.9, 'mmol/L'],
    ['sodium', 126, 'mmol/L'],
    ['sodium', 155, 'mmol/L'],
    ['glucose', 50, 'mg/dL'],
    ['glucose', 26, 'mmol/L'],
    ['calcium', 12.9, 'mg/dL'],
    ['calcium', 3.3, 'mmol/L'],
    ['hemoglobin', 7, 'g/dL'],
    ['hematocrit', 60, '%'],
    ['platelets', 20, '10*9/L'],
    ['creatinine', 6, 'mg/dL'],
    ['bilirubin', 180, 'umol/L'],
    ['triglycerides', 1000, 'mg/dL'],
    ['CK', 5000, 'U/L'],
  ] as const)('[HLT-04] %s %d %s', (name, value, unit) => {
    const panel = ask([
      { name: 'ALT', value: 90, unit: 'U/L' },
      { name, value, unit },
    ]);
    expect(panel.results[1]?.flag).toBe('seek care now');
    expect(panel.cautions[0]).toContain('seek care now');
  });

  it('[HLT-04] stay urgent whatever interval the laboratory prints, and come before every explanation', () => {
    const potassium = { name: 'potassium', value: 6.4, unit: 'mmol/L', interval: { low: 3, high: 7 } };
    const panel = ask([...muscle, potassium], { ...afterLegs, taking: ['creatine', 'biotin'] });
    expect(panel.results.at(-1)?.flag).toBe('seek care now');
    expect(panel.cautions[0]).toContain('Potassium 6.4');
    expect(panel.why[1]).toContain('Potassium 6.4');
  });

  it('[HLT-04] a rise of troponin is an emergency though the table has no interval for it', () => {
    const value = { name: 'Troponin T, high sensitivity', value: 40, unit: 'ng/L' };
    expect(ask([value]).cautions[0]).toContain('seek care now');
    expect(first([{ ...value, interval: { high: 14 } }]).flag).toBe('seek care now');
    expect(first([{ ...value, value: 5, interval: { high: 14 } }]).flag).toBe('in');
  });
});

describe('a change', () => {
  const earlier = (value: object, date = '2027-01-04') => ({
    earlier: [{ drawn: { date }, taking: [], values: [value] }],
  });

  // Decisions with the variation of Carobene 2017 and an analytical variation of 3 % (creatinine 2 %).
  it.each([
    ['ALT', 30, 38, 'U/L', 26.7, 27.1, false],
    ['ALT', 30, 40, 'U/L', 33.3, 27.1, true],
    ['creatinine', 1.1, 1.25, 'mg/dL', 13.6, 13.4, true],
  ] as const)(
    '[HLT-07] %s %d to %d %s is %d %% against %d %%: %s',
    (name, before, now, unit, percent, rcv, real) => {
      const { change } = first([{ name, value: now, unit }], earlier({ name, value: before, unit }));
      expect(change?.percent).toBeCloseTo(percent, 1);
      expect(change?.rcvPercent).toBeCloseTo(rcv, 1);
      expect(change?.real).toBe(real);
    },
  );

  it('[HLT-07] is computed across units', () => {
    const { change } = first(
      [{ name: 'creatinine', value: 110.5, unit: 'umol/L' }],
      earlier({ name: 'creatinine', value: 1.1, unit: 'mg/dL' }),
    );
    expect(change?.percent).toBeCloseTo(13.6, 1);
  });

  it('[HLT-07] never mixes two interval lists: it says so', () => {
    const now = { name: 'ALT', value: 30, unit: 'U/L', interval: { high: 35 } };
    const notes = (before: object) => first([now], earlier(before)).notes.join();
    expect(notes({ ...now, interval: { high: 50 } })).toContain('another interval list');
    expect(notes(now)).not.toContain('another interval list');
  });

  it('[HLT-07] stands against the newest older panel that has a number for it', () => {
    const panels = [
      { drawn: { date: '2026-11-01' }, values: [{ name: 'ALT', value: 20, unit: 'U/L' }] },
      { drawn: { date: '2027-01-04' }, values: [{ name: 'ALT', value: 25, unit: 'U/L' }] },
      { drawn: { date: '2027-02-01' }, values: [{ name: 'ALT', value: '<5', unit: 'U/L' }] },
    ];
    expect(first([{ name: 'ALT', value: 30, unit: 'U/L' }], { earlier: panels }).change?.percent).toBe(20);
  });

  it('[HLT-16] a panel given twice counts once; one that is not older is refused', () => {
    const values = [{ name: 'ALT', value: 20, unit: 'U/L' }];
    const panel = { drawn: { date: '2027-01-04' }, values };
    expect(ask(values, { earlier: [panel, panel] }).cautions.join()).toContain('given twice');
    expect(ask(values, { earlier: [{ drawn, values }] }).cautions.join()).toContain('given twice');
    expect(problem(values, { earlier: [{ drawn: { date: '2027-03-02' }, values }] })?.code).toBe(
      'health/earlier-not-earlier',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { afterLegs, ask, drawn, first, muscle, problem } from '../../../../test/health/ask-panel.ts';
import type { PanelAnswer } from './panel-request.ts';

describe('the muscle pattern (Pettersson 2008)', () => {
  it('[HLT-11] CK above five times its limit, GGT, ALP and bilirubin normal, lifting within a week', () => {
    const panel = ask(muscle, afterLegs);
    const said = panel.cautions.join(' ');
    expect(said).toContain('Muscle pattern');
    expect(said).toContain('7 to 10 days without hard training');
    expect(said).not.toMatch(/liver (is )?(fine|healthy|normal|ok)/i);
  });

  it('[HLT-11] blocks FIB-4, which is computed without it', () => {
    expect(ask(muscle, afterLegs).derived.map(({ name }) => name)).toEqual([]);
    expect(ask(muscle, afterLegs).cautions.join()).toContain('FIB-4');
    const calm = muscle.filter(({ name }) => name !== 'CK');
    const index = ask(calm, { drawn: { date: '2027-03-01' } }).derived[0];
    expect(index?.value).toBeCloseTo((35 * 90) / (250 * Math.sqrt(60)), 3);
  });

  it.each([
    [
      'CK at five times its limit',
      (v: typeof muscle) => v.map((x) => (x.name === 'CK' ? { ...x, value: 850 } : x)),
      afterLegs,
    ],
    ['no CK', (v: typeof muscle) => v.filter((x) => x.name !== 'CK'), afterLegs],
    ['no GGT', (v: typeof muscle) => v.filter((x) => x.name !== 'GGT'), afterLegs],
    ['training ten days ago', (v: typeof muscle) => v, {}],
    ['training not known', (v: typeof muscle) => v, { drawn: { date: '2027-03-01' } }],
  ])('[HLT-11] cannot be told: %s', (_name, change, more) => {
    const said = ask(change(muscle), more).cautions.join(' ');
    expect(said).not.toContain('Muscle pattern');
    expect(said).toContain('cannot be told apart');
  });

  it('[HLT-11] a high GGT is not of muscle', () => {
    const values = muscle.map((x) => (x.name === 'GGT' ? { ...x, value: 120 } : x));
    const said = ask(values, afterLegs).cautions.join(' ');
    expect(said).not.toContain('Muscle pattern');
    expect(said).toContain('muscle does not raise');
  });
});

describe('what bends a value', () => {
  it('[HLT-13] biotin makes sandwich assays read low, competitive ones high, and can mimic Graves disease', () => {
    const values = [
      { name: 'TSH', value: 0.2, unit: 'm[IU]/L' },
      { name: 'free T4', value: 2.4, unit: 'ng/dL' },
      { name: 'sodium', value: 140, unit: 'mmol/L' },
    ];
    const panel = ask(values, { taking: ['Biotin'] });
    expect(panel.results[0]?.notes.join()).toContain('falsely low');
    expect(panel.results[1]?.notes.join()).toContain('falsely high');
    expect(panel.results[2]?.notes.join()).not.toContain('iotin');
    expect(panel.cautions.join()).toContain('overactive thyroid without being one');
    const harmless = ask(values, { taking: [{ substance: 'biotin', mgPerDay: 0.05 }] });
    expect(harmless.cautions.join()).not.toContain('iotin');
  });

  it('[HLT-13] creatine moves creatinine and asks for cystatin C', () => {
    const values = [{ name: 'creatinine', value: 1.4, unit: 'mg/dL' }];
    expect(ask(values, { taking: ['creatine monohydrate'] }).cautions.join()).toContain('cystatin C');
    expect(first(values, { taking: ['creatine monohydrate'] }).notes.join()).toContain(
      'Creatine raises creatinine',
    );
  });

  it('[HLT-13] food, the clock, burst cells, an energy deficit and protein are named', () => {
    const notes = (value: object, more: object = {}) => first([value], more).notes.join(' ');
    const fed = { drawn: { ...drawn, fastedHours: 3 } };
    expect(notes({ name: 'glucose', value: 120, unit: 'mg/dL' }, fed)).toContain('Fasted 3 h');
    expect(
      notes({ loinc: '1558-6', value: 90, unit: 'mg/dL' }, { drawn: { date: '2027-03-01' } }),
    ).not.toContain('not stated');
    const late = { drawn: { ...drawn, time: '16:00' } };
    expect(notes({ name: 'testosterone', value: 250, unit: 'ng/dL' }, late)).toContain('Drawn at 16:00');
    const burst = { drawn: { ...drawn, haemolysed: true } };
    expect(notes({ name: 'potassium', value: 5.6, unit: 'mmol/L' }, burst)).toContain('red cells');
    const dieting = { diet: { deficitKcalPerDay: 640, proteinGPerKg: 2.6 } };
    expect(notes({ name: 'free T3', value: 2, unit: 'pg/mL' }, dieting)).toContain('640 kcal');
    expect(notes({ name: 'BUN', value: 26, unit: 'mg/dL' }, dieting)).toContain('2.6 g per kg');
  });

  it('[HLT-14] what misleads the whole panel is said for the whole panel', () => {
    const late = { drawn: { ...drawn, time: '16:00', fastedHours: 2 } };
    const said = ask([{ name: 'testosterone', value: 400, unit: 'ng/dL' }], late).cautions.join(' ');
    expect(said).toContain('Drawn at 16:00');
    expect(said).toContain('A meal lowers it');
    const potassium = [
      { name: 'potassium', value: 5.5, unit: 'mmol/L' },
      { name: 'LDH', value: 400, unit: 'U/L' },
    ];
    expect(ask(potassium).cautions.join(' ')).toContain('Red cells that burst');
    const index = muscle.filter(({ name }) => !['CK', 'AST', 'ALT'].includes(name));
    const young = [
      ...index,
      { name: 'AST', value: 25, unit: 'U/L' },
      { name: 'ALT', value: 25, unit: 'U/L' },
    ];
    expect(ask(young, { athlete: { sex: 'male', age: 28 } }).cautions.join(' ')).toContain('poor below 35');
    expect(ask(young, { athlete: { sex: 'male', age: 35 } }).cautions.join(' ')).not.toContain(
      'poor below 35',
    );
  });

  it('[HLT-14] ends every panel with: no medical advice, symptoms before numbers', () => {
    const { cautions } = ask([{ name: 'ALT', value: 20, unit: 'U/L' }]);
    expect(cautions.at(-1)).toContain('not medical advice');
    expect(cautions.at(-1)).toContain('chest pain');
  });
});

describe('derived values', () => {
  it('[HLT-09] LDL comes in the unit of the cholesterol given', () => {
    const values = (unit: string, by: number, tg: number) => [
      { name: 'cholesterol', value: 200 * by, unit },
      { name: 'HDL', value: 50 * by, unit },
      { name: 'triglycerides', value: 150 * tg, unit },
    ];
    const ldl = (panel: PanelAnswer) => panel.derived.find(({ name }) => name.includes('Sampson'));
    expect(ldl(ask(values('mg/dL', 1, 1)))?.value).toBeCloseTo(123.4, 1);
    const si = ldl(ask(values('mmol/L', 0.02586, 0.01129)));
    expect(si?.unit).toBe('mmol/L');
    expect(si?.value).toBeCloseTo(123.4 * 0.02586, 2);
  });

  it('[HLT-10] HOMA-IR is withheld without a fast', () => {
    const values = [
      { name: 'glucose', value: 100, unit: 'mg/dL' },
      { name: 'insulin', value: 60, unit: 'pmol/L' },
    ];
    expect(ask(values).derived[0]?.value).toBeCloseTo(2.47, 2);
    expect(ask(values, { drawn: { ...drawn, fastedHours: 2 } }).derived).toEqual([]);
  });

  it('[HLT-08] shows filtration three ways and says why they differ', () => {
    const panel = ask([
      { name: 'creatinine', value: 1.3, unit: 'mg/dL' },
      { name: 'cystatin C', value: 0.8, unit: 'mg/L' },
    ]);
    expect(panel.derived.map(({ value }) => Math.round(value))).toEqual([73, 116, 96]);
    expect(panel.why.join()).toContain('muscle mass');
  });

  it('[HLT-12] takes the measured albumin, or says what it took', () => {
    const values = [
      { name: 'testosterone', value: 700, unit: 'ng/dL' },
      { name: 'SHBG', value: 50, unit: 'nmol/L' },
    ];
    const free = (panel: PanelAnswer) => panel.derived.find(({ name }) => name.includes('Free testosterone'));
    expect(free(ask([...values, { name: 'albumin', value: 45, unit: 'g/L' }]))?.value).toBeCloseTo(11.65, 2);
    expect(free(ask(values))?.formula).toContain('4.3 g/dL');
  });
});

describe('bad input', () => {
  it.each([
    [
      'an unknown field',
      [{ name: 'ALT', value: 20, units: 'U/L' }],
      'health/unknown-field',
      'values.0.units',
    ],
    ['no unit', [{ name: 'ALT', value: 20 }], 'health/missing-field', 'values.0.unit'],
    ['an unknown unit', [{ name: 'ALT', value: 20, unit: 'Mg/dL' }], 'health/unknown-unit', 'values.0.unit'],
    [
      'a unit of another kind',
      [{ name: 'ALT', value: 20, unit: 'mg/dL' }],
      'health/unit-of-another-kind',
      'values.0.unit',
    ],
    [
      'a wrong check digit',
      [{ loinc: '2160-1', value: 1, unit: 'mg/dL' }],
      'health/loinc-check-digit',
      'values.0.loinc',
    ],
    [
      'code and name apart',
      [{ loinc: '2160-0', name: 'ALT', value: 1, unit: 'mg/dL' }],
      'health/code-and-name-differ',
      'values.0',
    ],
    [
      'mg/dL typed for mmol/L',
      [{ name: 'glucose', value: 90, unit: 'mmol/L' }],
      'health/unit-suspect',
      'values.0.unit',
    ],
    [
      'mmol/L typed for mg/dL',
      [{ name: 'glucose', value: 5.2, unit: 'mg/dL' }],
      'health/unit-suspect',
      'values.0.unit',
    ],
    [
      'umol/L typed for mg/dL',
      [{ name: 'creatinine', value: 95, unit: 'mg/dL' }],
      'health/unit-suspect',
      'values.0.unit',
    ],
    [
      'g/L typed for g/dL',
      [{ name: 'hemoglobin', value: 145, unit: 'g/dL' }],
      'health/unit-suspect',
      'values.0.unit',
    ],
    [
      'a share typed for percent',
      [{ name: 'hematocrit', value: 0.45, unit: '%' }],
      'health/unit-suspect',
      'values.0.unit',
    ],
    [
      'a slip of the finger',
      [{ name: 'sodium', value: 1400, unit: 'mmol/L' }],
      'health/value-implausible',
      'values.0.unit',
    ],
    ['no value', [], 'health/wrong-value', 'values'],
    ['a text', [{ name: 'ALT', value: 'high', unit: 'U/L' }], 'health/wrong-value', 'values.0.value'],
  ])('[HLT-15] %s', (_name, values, code, path) => {
    expect(problem(values)).toMatchObject({ code, path });
  });

  it('[HLT-15] a unit that was asked about is taken once it is confirmed', () => {
    const value = { name: 'glucose', value: 90, unit: 'mmol/L', unitConfirmed: true };
    expect(first([value]).flag).toBe('seek care now');
  });

  it('[HLT-15] a value that is possible but ordinary in the other unit is let through with a word', () => {
    const panel = ask([{ name: 'testosterone', value: 18, unit: 'ng/dL' }]);
    expect(panel.results[0]?.flag).toBe('low');
    expect(panel.cautions.join()).toContain('may be a slip');
    const woman = ask([{ name: 'testosterone', value: 18, unit: 'ng/dL' }], {
      athlete: { sex: 'female', age: 30 },
    });
    expect(woman.cautions.join()).not.toContain('may be a slip');
  });

  it('[HLT-15] children are refused', () => {
    expect(
      problem([{ name: 'ALT', value: 20, unit: 'U/L' }], { athlete: { sex: 'male', age: 16 } })?.code,
    ).toBe('health/adults-only');
  });

  it('[HLT-16] an analyte given twice with two results is shown, and nothing is computed from it', () => {
    const values = (second: number) => [
      { name: 'creatinine', value: 1.0, unit: 'mg/dL' },
      { loinc: '14682-9', value: second, unit: 'umol/L' },
    ];
    expect(ask(values(88)).derived).toHaveLength(1);
    const panel = ask(values(120));
    expect(panel.results).toHaveLength(2);
    expect(panel.derived).toEqual([]);
    expect(panel.cautions.join()).toContain('which one counts');
  });
});

import { describe, expect, it } from 'vitest';
import { createLedger } from '#core/journal/ledger.ts';
import { datedEntry as entry } from '../../../../test/journal/dated-entry.ts';
import { draftOfFhir, withoutLine } from './fhir-draft.ts';
import { intervalWords, unitSign } from './lab-words.ts';
import {
  draftOfPanel,
  emptyPanel,
  lineFault,
  lineFor,
  readLine,
  readPanelDraft,
  sameAs,
  urgentIn,
  withUnit,
  type ValueDraft,
} from './panel-draft.ts';

const line = (name: string, text: string, unit: string, more: Partial<ValueDraft> = {}): ValueDraft => ({
  ...lineFor(name, undefined),
  text,
  unit,
  ...more,
});
const known: Parameters<typeof readPanelDraft>[2] = { panel: 'p', taking: [], origin: 'typed' };
const read = (...values: readonly ValueDraft[]) =>
  readPanelDraft({ ...emptyPanel('2027-03-01', 'Harbour Laboratory'), values: [...values] }, 'female', known);

describe('a panel as it is typed', () => {
  it('[HLT-19] keeps value, unit and interval as printed; a decimal comma and a bound are read', () => {
    const { panel, problems } = read(
      line('ferritin', '24,5', 'ng/mL', { low: 15, high: 150 }),
      line('TSH', '<0.1', 'm[IU]/L'),
    );
    expect(problems).toEqual([]);
    expect(panel?.values).toEqual([
      { name: 'Ferritin', value: 24.5, unit: 'ng/mL', interval: { low: 15, high: 150 } },
      { name: 'TSH', value: '<0.1', unit: 'm[IU]/L' },
    ]);
    const again = panel && readPanelDraft(draftOfPanel(panel), 'female', known);
    expect(again?.panel).toEqual(panel);
  });

  it('[HLT-19] glucose of 90 typed as mmol/L is asked, with the unit in which it is ordinary', () => {
    const slip = line('glucose', '90', 'mmol/L');
    // 90 mg/dL are 5.0 mmol/L (factor 0.0555); 90 mmol/L no one survives.
    expect(lineFault(slip, 0, 'female')).toMatchObject({ asks: true, units: ['mg/dL'] });
    expect(lineFault({ ...slip, unit: 'mg/dL' }, 0, 'female')).toBeUndefined();
    expect(lineFault({ ...slip, unitConfirmed: true }, 0, 'female')).toBeUndefined();
    expect(read(slip)).toMatchObject({ problems: [{ code: 'health/unit-suspect', path: 'values.0.unit' }] });
  });

  it('[HLT-19] a value below nothing is said to be that, not to be no number', () => {
    expect(lineFault(line('ferritin', '-40', 'ng/mL'), 0, 'female')?.message).toContain('below 0');
  });

  /** Potassium above 6.0 mmol/L: a critical value in laboratories' lists (see the table's own source). */
  it('[HLT-65] an urgent value is said while another line cannot be kept', () => {
    const values = [line('potassium', '6,9', 'mmol/L'), line('ferritin', '-40', 'ng/mL')];
    expect(read(...values).panel).toBeUndefined();
    const typed = { ...emptyPanel('2027-03-01'), values };
    const found = urgentIn(typed, { sex: 'female', age: 33 });
    expect(found.map(({ code }) => code)).toEqual(['health/seek-care-now']);
    expect(found[0]?.words).toContain('Potassium 6.9');
    const calm = { ...typed, values: [line('potassium', '4,2', 'mmol/L')] };
    expect(urgentIn(calm, { sex: 'female', age: 33 })).toEqual([]);
  });

  it('[HLT-19] a unit that cannot be the analyte’s is said, with those that can', () => {
    expect(lineFault(line('ALT', '38', 'mg/dL'), 0, 'female')).toMatchObject({
      asks: false,
      units: ['U/L', 'ukat/L'],
    });
  });

  it('[HLT-19] an analyte that is not known is kept as printed; text that is no number is said', () => {
    expect(read(line('Zonulin', '5', 'zu')).panel?.values).toEqual([
      { name: 'Zonulin', value: 5, unit: 'zu' },
    ]);
    expect(readLine(line('ALT', 'about 40', 'U/L'), 0, 'female')).toMatchObject({ ok: false });
    expect(readLine(line('ALT', '40', 'U/L', { low: 50, high: 40 }), 0, 'female')).toMatchObject({
      problem: { code: 'health/interval-turned' },
    });
  });

  it('[HLT-19] lines left empty are left out; an empty panel is said', () => {
    expect(read(line('ALT', '', 'U/L'), line('AST', '30', 'U/L')).panel?.values).toHaveLength(1);
    expect(read(line('ALT', '', 'U/L')).problems[0]?.code).toBe('health/empty-panel');
  });

  it('[HLT-19] unit and interval are offered as they were printed last', () => {
    const last = { name: 'Glucose', value: 4.9, unit: 'mmol/L', interval: { low: 3.9, high: 5.5 } };
    expect(lineFor('glucose', last)).toMatchObject({
      name: 'Glucose',
      unit: 'mmol/L',
      low: 3.9,
      high: 5.5,
      text: '',
    });
    expect(lineFor('glucose', undefined).unit).toBe('mg/dL');
  });

  it('[HLT-19] an interval goes with its unit, and comes back with the one it was printed in', () => {
    const last = { name: 'Glucose', value: 84, unit: 'mg/dL', interval: { low: 70, high: 99 } };
    const other = withUnit(lineFor('glucose', last), 'mmol/L', last);
    expect([other.unit, other.low, other.high]).toEqual(['mmol/L', undefined, undefined]);
    expect(withUnit(other, 'mg/dL', last)).toMatchObject({ unit: 'mg/dL', low: 70, high: 99 });
    const bare = line('ALT', '31', '', { high: 35 });
    expect(withUnit(bare, 'U/L', undefined)).toMatchObject({ unit: 'U/L', high: 35 });
  });

  it('[HLT-19] the same panel typed a second time is known again', () => {
    const { panel } = read(line('ALT', '38', 'U/L'));
    if (!panel) throw new Error('no panel');
    expect(sameAs({ ...panel, panel: 'q' }, [panel])).toBe(panel);
    expect(sameAs(panel, [panel])).toBeUndefined();
  });

  it('[LOOK-01] units and intervals are said as reports print them', () => {
    expect([unitSign('umol/L'), unitSign('10*3/uL'), unitSign('m[IU]/L')]).toEqual([
      'µmol/L',
      '10^3/µL',
      'mIU/L',
    ]);
    expect([intervalWords({ high: 35 }), intervalWords({ low: 60 }), intervalWords(undefined)]).toEqual([
      'up to 35',
      '60 and more',
      'none known',
    ]);
  });
});

/** A result as a portal writes it, here without a unit for ALT. */
const file = JSON.stringify({
  resourceType: 'Bundle',
  type: 'collection',
  entry: [
    observation('1742-6', 'ALT', { value: 38 }),
    observation('2160-0', 'Creatinine', {
      value: 0.9,
      unit: 'mg/dL',
      system: 'http://unitsofmeasure.org',
      code: 'mg/dL',
    }),
  ].map((resource) => ({ resource })),
});

function observation(code: string, text: string, valueQuantity: object): object {
  return {
    resourceType: 'Observation',
    status: 'final',
    category: [{ coding: [{ code: 'laboratory' }] }],
    code: { coding: [{ system: 'http://loinc.org', code }], text },
    effectiveDateTime: '2027-03-01T07:40:00Z',
    valueQuantity,
  };
}

describe('a FHIR file looked over', () => {
  const held = draftOfFhir(file, 'results.json', createLedger([]), 'female');
  if (!held.ok) throw new Error(held.problem.message);
  const [found] = held.value.panels;
  if (!found) throw new Error('no panel');

  it('[HLT-27] a value without a unit is asked, and is whole once it has one', () => {
    expect(found.asked).toEqual([0]);
    expect(withoutLine(found, 0)).toMatchObject({ asked: [], values: [{ name: 'Creatinine' }] });
    const {
      report: _,
      asked: __,
      ...typed
    } = {
      ...found,
      values: found.values.map((one, k) => (k === 0 ? { ...one, unit: 'U/L' } : one)),
    };
    expect(readPanelDraft(typed, 'female', { ...known, origin: 'fhir' }).panel?.values).toHaveLength(2);
  });

  it('[HLT-27] what the journal has already is not offered again', () => {
    const kept = entry('blood-drawn', {
      panel: 'here',
      drawn: { date: '2027-03-01', time: '07:40' },
      taking: [],
      values: [
        { name: 'ALT', value: 38, unit: 'U/L' },
        { name: 'Creatinine', value: 0.9, unit: 'mg/dL' },
      ],
      origin: 'typed',
    });
    const again = draftOfFhir(file, 'results.json', createLedger([kept]), 'female');
    expect(again).toMatchObject({ ok: true, value: { panels: [] } });
  });

  it('[HLT-24] a file that is no FHIR is refused with its remedy', () => {
    expect(draftOfFhir('{}', 'x.json', createLedger([]), 'female')).toMatchObject({
      ok: false,
      problem: { code: 'health/fhir-other-resource' },
    });
  });
});

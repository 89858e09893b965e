import { describe, expect, it } from 'vitest';
import { biologicalVariation } from '#core/tables/biological-variation.ts';
import { filtrationByBoth, filtrationByCreatinine, filtrationByCystatinC } from './filtration.ts';
import { freeTestosteronePmolPerL } from './free-testosterone.ts';
import { a1cIfccMmolPerMol, a1cNgspPercent, meanGlucoseMgPerDl } from './hemoglobin-a1c.ts';
import { homaIr } from './insulin-resistance.ts';
import { ldlFriedewald, ldlSampson, nonHdlCholesterol } from './ldl-cholesterol.ts';
import { fib4 } from './liver-index.ts';
import { referenceChange } from './reference-change.ts';
import type { Studied } from '#core/science/studied-range.ts';

const value = (studied: Studied<number>) => (studied.studied ? studied.value : Number.NaN);

describe('filtration', () => {
  // Recomputed from the printed equation; "about 76" for the woman of 55 is printed by the National Kidney Foundation.
  it.each([
    [1.0, 30, 'male', 103.84],
    [1.3, 35, 'male', 73.47],
    [1.5, 35, 'male', 61.88],
    [0.9, 50, 'male', 104.05],
    [0.8, 30, 'female', 101.59],
    [0.7, 30, 'female', 119.24],
    [0.9, 55, 'female', 75.5],
    [2.0, 60, 'male', 37.5],
  ] as const)(
    '[HLT-08] by creatinine %d mg/dL, %d y, %s: %d (CKD-EPI 2021, NEJM 385:1737)',
    (scr, age, sex, egfr) => {
      expect(value(filtrationByCreatinine({ sex, ageYears: age }, scr))).toBeCloseTo(egfr, 1);
    },
  );

  it.each([
    [0.8, 35, 'male', 115.59],
    [0.7, 35, 'male', 123.56],
    [1.0, 35, 'male', 85.95],
    [0.8, 30, 'female', 109.91],
  ] as const)(
    '[HLT-08] by cystatin C %d mg/L, %d y, %s: %d (CKD-EPI 2012, NEJM 367:20)',
    (cys, age, sex, egfr) => {
      expect(value(filtrationByCystatinC({ sex, ageYears: age }, cys))).toBeCloseTo(egfr, 1);
    },
  );

  it.each([
    [1.3, 0.8, 35, 'male', 96.4],
    [1.0, 0.8, 30, 'male', 113.38],
    [0.8, 0.8, 30, 'female', 107.52],
  ] as const)('[HLT-08] by both %d and %d, %d y, %s: %d (CKD-EPI 2021)', (scr, cys, age, sex, egfr) => {
    expect(value(filtrationByBoth({ sex, ageYears: age }, scr, cys))).toBeCloseTo(egfr, 1);
  });

  it('[HLT-08] is for adults: below 18 it answers outside the studied range', () => {
    expect(filtrationByCreatinine({ sex: 'male', ageYears: 17 }, 1).studied).toBe(false);
  });

  it('[HLT-08] falls with creatinine and with age', () => {
    const at = (scr: number, ageYears: number) =>
      value(filtrationByCreatinine({ sex: 'male', ageYears }, scr));
    for (let scr = 0.4; scr < 5; scr += 0.1) expect(at(scr + 0.1, 40)).toBeLessThan(at(scr, 40));
    expect(at(1, 60)).toBeLessThan(at(1, 30));
  });
});

describe('fats', () => {
  it.each([
    [200, 50, 150, 120, 123.4, 150],
    [180, 35, 100, 125, 126.6, 145],
    [240, 40, 300, 140, 145, 200],
    [150, 60, 60, 78, 77.7, 90],
  ])(
    '[HLT-09] TC %d, HDL %d, TG %d: Friedewald %d (Clin Chem 18:499), Sampson %d (JAMA Cardiol 5:540)',
    (cholesterol, hdl, triglycerides, friedewald, sampson, nonHdl) => {
      expect(value(ldlFriedewald({ cholesterol, hdl, triglycerides }))).toBeCloseTo(friedewald, 9);
      expect(value(ldlSampson({ cholesterol, hdl, triglycerides }))).toBeCloseTo(sampson, 1);
      expect(nonHdlCholesterol({ cholesterol, hdl })).toBe(nonHdl);
    },
  );

  it('[HLT-09] Friedewald refuses from 400 mg/dL of triglycerides, Sampson above 800', () => {
    const lipids = { cholesterol: 220, hdl: 45, triglycerides: 450 };
    expect(ldlFriedewald(lipids).studied).toBe(false);
    expect(ldlFriedewald({ ...lipids, triglycerides: 400 }).studied).toBe(false);
    expect(value(ldlSampson(lipids))).toBeCloseTo(99.5, 1);
    expect(ldlSampson({ ...lipids, triglycerides: 801 }).studied).toBe(false);
  });
});

describe('sugar, liver, hormones', () => {
  it.each([
    [90, 5, 1.11],
    [100, 10, 2.47],
    [75, 2.5, 0.46],
    [110, 15, 4.07],
  ])('[HLT-10] HOMA-IR of %d mg/dL and %d uIU/mL is %d (Diabetologia 28:412)', (glucose, insulin, homa) => {
    expect(homaIr(glucose, insulin)).toBeCloseTo(homa, 2);
  });

  it.each([
    [5, 31.1, 97],
    [5.7, 38.8, 117],
    [6.5, 47.5, 140],
  ])(
    '[HLT-10] hemoglobin A1c %d %% is %d mmol/mol and a mean glucose of %d mg/dL (ADA table)',
    (ngsp, ifcc, glucose) => {
      expect(a1cIfccMmolPerMol(ngsp)).toBeCloseTo(ifcc, 0);
      expect(Math.abs(a1cIfccMmolPerMol(ngsp) - ifcc)).toBeLessThan(0.06);
      expect(a1cNgspPercent(a1cIfccMmolPerMol(ngsp))).toBeCloseTo(ngsp, 12);
      expect(Math.round(meanGlucoseMgPerDl(ngsp))).toBe(glucose);
    },
  );

  it.each([
    [35, 25, 25, 250, 0.7],
    [35, 80, 60, 250, 1.45],
    [45, 35, 40, 220, 1.13],
    [30, 22, 18, 260, 0.6],
  ])(
    '[HLT-11] FIB-4 at %d y, AST %d, ALT %d, platelets %d is %d (Hepatology 43:1317)',
    (age, ast, alt, plt, index) => {
      expect(fib4(age, ast, alt, plt)).toBeCloseTo(index, 2);
    },
  );

  it.each([
    [500, 30, 4.3, 384, 2.22],
    [700, 50, 4.5, 404, 1.66],
    [350, 20, 4.3, 314, 2.59],
    [600, 15, 4.3, 638, 3.07],
  ])(
    '[HLT-12] free testosterone of %d ng/dL, SHBG %d, albumin %d is %d pmol/L (JCEM 84:3666)',
    (total, shbg, albumin, free, percent) => {
      const nmol = total * 0.03467;
      const found = freeTestosteronePmolPerL(nmol, shbg, albumin);
      expect(Math.abs(found - free)).toBeLessThan(0.6);
      expect(found / nmol / 10).toBeCloseTo(percent, 1);
    },
  );

  it('[HLT-12] what is free, bound to albumin and bound to SHBG adds up to the total', () => {
    for (const [total, shbg] of [
      [17, 30],
      [0.5, 80],
      [60, 5],
      [20, 20],
    ] as const) {
      const free = freeTestosteronePmolPerL(total, shbg, 4.3) * 1e-12;
      const toAlbumin = 3.6e4 * (43 / 69_000) * free;
      const toShbg = (shbg * 1e-9 * 1e9 * free) / (1 + 1e9 * free);
      expect((free + toAlbumin + toShbg) * 1e9).toBeCloseTo(total, 9);
    }
  });
});

describe('reference change value', () => {
  // Within-person variation of Carobene 2017 (Clin Chem 63:1527); analytical 3 %, creatinine 2 %.
  it.each([
    ['alt', 27.1, 31, -23.7],
    ['ast', 27.6, 31.7, -24.1],
    ['ck', 41, 50.4, -33.5],
    ['ggt', 26, 29.7, -22.9],
    ['alp', 16.9, 18.4, -15.5],
    ['ldh', 16.6, 18.1, -15.3],
    ['creatinine', 13.4, 14.3, -12.5],
  ] as const)('[HLT-07] of %s is %d %%, with skew +%d and %d', (key, rcv, up, down) => {
    const variation = biologicalVariation.get(key);
    const change = referenceChange(variation?.analyticalPercent ?? 0, variation?.withinPercent ?? 0);
    expect(change.rcvPercent).toBeCloseTo(rcv, 1);
    expect(Math.abs(change.logUpPercent - up)).toBeLessThan(0.1);
    expect(Math.abs(change.logDownPercent - down)).toBeLessThan(0.1);
  });
});

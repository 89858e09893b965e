import { describe, expect, it } from 'vitest';
import { cardioEnergy } from './cardio-energy.ts';

const session = (change: Partial<Parameters<typeof cardioEnergy>[0]>) =>
  cardioEnergy({ activity: 'walk', minutes: 60, beforeFood: true, ...change }, 70);

describe('[RUN-21] net energy of logged cardio', () => {
  it('[RUN-21] a walk by the metabolic equation, less rest (acsm-2018: 3.5 + 0.1 S + 1.8 S G)', () => {
    // 4.8 km/h on the level is 80 m/min: 8 mL/kg/min above rest, at 70 kg and 5 kcal per litre 2.8 kcal a minute.
    expect(session({ speedKmh: 4.8 })?.netKcal).toBe(168);
    // At 5 % grade 7.2 more.
    expect(session({ speedKmh: 4.8, gradePercent: 5 })?.netKcal).toBe(319);
  });

  it('[RUN-21] cycling by watts (7 + 1.8 W / M, W in kg m/min), stepping by steps and height', () => {
    // 100 W: 7 + 1.8 * 600 / 70 = 22.43; less 3.5, at 70 kg, 60 minutes.
    expect(session({ activity: 'bike', watts: 100 })?.netKcal).toBe(398);
    // 24 steps a minute of 0.2 m: 3.5 + 4.8 + 1.33 * 1.8 * 0.2 * 24 = 19.79.
    expect(session({ activity: 'bench', stepsPerMinute: 24, stepHeightM: 0.2 })?.netKcal).toBe(342);
  });

  it('[RUN-21] running where the speed is no walk, or the words say so', () => {
    // 9 km/h is 150 m/min: 0.2 * 150 = 30 above rest.
    expect(session({ activity: 'treadmill', speedKmh: 9 })?.netKcal).toBe(630);
    expect(session({ activity: 'jog', speedKmh: 5.4 })?.by).toContain('running');
  });

  it('[RUN-21] without figures the table by its words (MET - 1) kg h, uphill by its grade', () => {
    // Herrmann 2024: elliptical, moderate, 5 METs; walking uphill 6 to 10 %, 7 METs.
    expect(session({ activity: 'Elliptical' })?.netKcal).toBe(280);
    expect(session({ activity: 'Incline walk', gradePercent: 8 })?.netKcal).toBe(420);
  });

  it('[RUN-21] outside the studied range the table answers; words it does not know are not guessed', () => {
    expect(session({ speedKmh: 2, activity: 'walk' })?.by).toContain('METs');
    expect(session({ activity: 'posing' })).toBeUndefined();
  });

  it('[GYM-61] says how sure it is: a metabolic equation more so than a row of the table', () => {
    const [equation, table] = [session({ speedKmh: 4.8 }), session({})];
    expect((equation?.within ?? 0) / (equation?.netKcal ?? 1)).toBeCloseTo(0.1645, 2);
    expect((table?.within ?? 0) / (table?.netKcal ?? 1)).toBeCloseTo(0.411, 2);
  });
});

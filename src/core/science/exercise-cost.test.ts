import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activityByCode, activityMets } from '#core/tables/activity-mets.ts';
import { armCyclingCost, legCyclingCost, WORK_RATE_PER_WATT } from './cycling-cost.ts';
import { grossCostKcal, kcalPerMinuteOfOxygen, metsOfOxygen, netCostKcal } from './metabolic-equivalent.ts';
import { oxygenEnergyKcalPerLitre, weirKcalPerMinute } from './oxygen-energy.ts';
import { runningCost } from './running-cost.ts';
import { steppingCost } from './stepping-cost.ts';
import type { Studied } from './studied-range.ts';
import { walkingCost } from './walking-cost.ts';

const METRES_PER_MINUTE_OF_MPH = 26.8;

function valueOf(answer: Studied<number>): number {
  if (!answer.studied) throw new Error(`outside: ${answer.outside.quantity}`);
  return answer.value;
}
const walk = (mph: number, grade: number) =>
  valueOf(walkingCost({ metresPerMinute: mph * METRES_PER_MINUTE_OF_MPH, grade }));

describe('the metabolic equations (ACSM)', () => {
  it('[EST-24] published examples: walking 3.5 mph at 10 %, cycling 450 kg m/min at 62 kg, stepping 30 a minute', () => {
    expect(walk(3.5, 0.1)).toBeCloseTo(29.76, 1);
    expect(metsOfOxygen(walk(3.5, 0.1))).toBeCloseTo(8.5, 1);
    expect(kcalPerMinuteOfOxygen(walk(3.5, 0.1), 70)).toBeCloseTo(10.42, 1.9);
    expect(valueOf(legCyclingCost(450, 62))).toBeCloseTo(20.06, 1.9);
    expect(valueOf(steppingCost(30, 0.3048))).toBeCloseTo(31.4, 1);
  });

  it('[EST-24] worked by hand: uphill and level walking, running, cycling 150 W at 80 kg', () => {
    expect(walk(3, 0.12)).toBeCloseTo(28.906, 2);
    expect(walk(3, 0)).toBeCloseTo(11.54, 3);
    expect(kcalPerMinuteOfOxygen(walk(3, 0), 80)).toBeCloseTo(4.62, 1.9);
    expect(valueOf(runningCost({ metresPerMinute: 6 * METRES_PER_MINUTE_OF_MPH, grade: 0 }))).toBeCloseTo(
      35.66,
      2,
    );
    expect(valueOf(legCyclingCost(150 * WORK_RATE_PER_WATT, 80))).toBeCloseTo(27.25, 2);
    expect(valueOf(legCyclingCost(150 * 6.12, 80))).toBeCloseTo(27.66, 1.9);
    expect(valueOf(armCyclingCost(300, 75))).toBeCloseTo(15.5, 6);
  });

  it('[EST-25] outside their speeds and loads the equations say so', () => {
    expect(walkingCost({ metresPerMinute: 120, grade: 0 })).toMatchObject({
      studied: false,
      outside: { nearest: 100 },
    });
    expect(runningCost({ metresPerMinute: 70, grade: 0 }).studied).toBe(false);
    expect(legCyclingCost(200, 80).studied).toBe(false);
    expect(armCyclingCost(800, 80).studied).toBe(false);
    expect(steppingCost(40, 0.2).studied).toBe(false);
  });
});

describe('METs and net cost', () => {
  it('[EST-24] half an hour on a stair treadmill at 80 kg: 372 kcal gross, 332 net (Compendium 2024)', () => {
    const { mets } = activityByCode('02065') ?? { mets: 0 };
    expect(grossCostKcal(mets, 80, 30)).toBeCloseTo(372, 6);
    expect(netCostKcal(mets, 80, 30)).toBeCloseTo(332, 6);
    expect(kcalPerMinuteOfOxygen(mets * 3.5, 80) * 30).toBeCloseTo(390.6, 6);
  });

  it('[EST-24] the table holds each code once, its 2011 values beside the 2024 ones', () => {
    expect(new Set(activityMets.map(({ code }) => code)).size).toBe(activityMets.length);
    const lifting = activityMets.filter(({ code }) => /^0205[0245]$/.test(code)).map(({ mets }) => mets);
    expect(lifting).toEqual([6, 5, 3.5, 5.8]);
    expect(activityByCode('12050')).toMatchObject({ mets: 9.3, mets2011: 9.8 });
    expect(activityByCode('00000')).toBeUndefined();
  });

  it('[EST-24] net is gross less rest, and never below nothing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        fc.double({ min: 40, max: 130, noNaN: true }),
        fc.double({ min: 1, max: 240, noNaN: true }),
        (mets, massKg, minutes) => {
          const net = netCostKcal(mets, massKg, minutes);
          expect(net).toBeGreaterThanOrEqual(0);
          if (mets >= 1)
            expect(grossCostKcal(mets, massKg, minutes) - net).toBeCloseTo(
              grossCostKcal(1, massKg, minutes),
              9,
            );
        },
      ),
      { seed: 20270113 },
    );
  });
});

describe('energy of oxygen', () => {
  it('[EST-24] 4.686, 4.862, 5.047 kcal per litre at RQ 0.707, 0.85, 1.00; Weir gives 4.881 at 0.85', () => {
    expect(valueOf(oxygenEnergyKcalPerLitre(0.707))).toBeCloseTo(4.686, 6);
    expect(valueOf(oxygenEnergyKcalPerLitre(0.85))).toBeCloseTo(4.862, 3);
    expect(valueOf(oxygenEnergyKcalPerLitre(1))).toBeCloseTo(5.047, 6);
    expect(weirKcalPerMinute(1, 0.85)).toBeCloseTo(4.881, 3);
    expect(oxygenEnergyKcalPerLitre(1.1).studied).toBe(false);
  });
});

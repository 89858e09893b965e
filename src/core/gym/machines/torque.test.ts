import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leverLoad, liftingWork, resistingParts, STANDARD_GRAVITY, workBetween } from './lever-torque.ts';
import { torque } from './torque.ts';
import type { TorqueAnswer } from './torque-request.ts';

/** A lever of 8 kg with 20, 15 and 10 kg on three pegs; every figure below was worked by hand from T = g sum m r cos. */
const MACHINE = {
  lever: { massKg: 8, radiusM: 0.2, angleDeg: 0 },
  pegs: [
    { name: 'near', radiusM: 0.3, angleDeg: 0, massKg: 20 },
    { name: 'slant', radiusM: 0.25, angleDeg: 45, massKg: 15 },
    { name: 'upright', radiusM: 0.35, angleDeg: 90, massKg: 10 },
  ],
  padM: 0.36,
};

function answerTo(request: object): TorqueAnswer {
  const outcome = torque({ ...MACHINE, range: { fromDeg: -30, toDeg: 90, stepDeg: 15 }, ...request });
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

function problemOf(request: object) {
  const outcome = torque({ ...MACHINE, range: { fromDeg: -30, toDeg: 90, stepDeg: 15 }, ...request });
  return outcome.ok ? undefined : outcome.problem;
}

describe('a worked lever (mechanics; recomputed by hand with g 9.80665)', () => {
  it('[GYM-10] asks at each angle what the moments add up to', () => {
    const { curve } = answerTo({});
    const at = (deg: number) => curve.find((point) => point.deg === deg);
    const worked = [
      [-30, 117.229, 325.64],
      [0, 100.534, 279.26],
      [30, 56.902, 158.06],
      [45, 28.431, 78.97],
      [60, -1.978, -5.49],
      [90, -60.327, -167.58],
    ] as const;
    for (const [deg, torqueNm, padForceN] of worked) {
      expect(at(deg)?.torqueNm).toBeCloseTo(torqueNm, 3);
      expect(at(deg)?.padForceN).toBeCloseTo(padForceN, 2);
    }
  });

  it('[GYM-10] has one vector sum of 11.95572 kg m at 30.966 degrees', () => {
    const load = leverLoad([MACHINE.lever, ...MACHINE.pegs]);
    expect(load.amplitudeNm / STANDARD_GRAVITY).toBeCloseTo(11.95572, 5);
    expect(load.phaseDeg).toBeCloseTo(30.966, 3);
  });

  it('[GYM-11] does 56.902 J from 0 to 60 degrees, and its mean torque is that over the angle turned', () => {
    expect(workBetween(leverLoad([MACHINE.lever, ...MACHINE.pegs]), { fromDeg: 0, toDeg: 60 })).toBeCloseTo(
      56.902,
      3,
    );
    const { meanNm } = answerTo({ range: { fromDeg: 0, toDeg: 60, stepDeg: 5 } });
    expect(meanNm).toBeCloseTo(56.902 / (Math.PI / 3), 3);
  });

  it('[GYM-10] with all 45 kg on the near peg asks 148.080 N m at 0 and 74.040 at 60 degrees', () => {
    const pegs = [{ name: 'near', radiusM: 0.3, angleDeg: 0, massKg: 45 }];
    const { curve } = answerTo({ pegs, range: { fromDeg: 0, toDeg: 60, stepDeg: 60 } });
    expect(curve.map(({ torqueNm }) => Number(torqueNm.toFixed(3)))).toEqual([148.08, 74.04]);
  });

  it('[GYM-12] passes over the top where the sum stands upright, at 59.034 degrees, and says so', () => {
    const { passesOver, why } = answerTo({});
    expect(passesOver).toBeCloseTo(90 - 30.966, 3);
    expect(why.at(-1)).toBe(
      'From 59 degrees on the load has passed over the top and pulls toward the end: stop before it, or hold it back.',
    );
    expect(answerTo({ range: { fromDeg: -30, toDeg: 59, stepDeg: 1 } })).not.toHaveProperty('passesOver');
  });

  it('[GYM-12] that pulls along over the whole range is answered: nothing is lifted', () => {
    const { thirdsPercent, passesOver, why } = answerTo({ range: { fromDeg: 60, toDeg: 90, stepDeg: 5 } });
    expect([passesOver, thirdsPercent]).toEqual([60, [0, 0, 0]]);
    expect(why).toContain('The load pulls along over the whole range: nothing has to be lifted.');
  });
});

describe('where the work lies', () => {
  const one = (fromDeg: number, toDeg: number) =>
    answerTo({
      lever: { massKg: 0, radiusM: 0, angleDeg: 0 },
      pegs: [{ name: 'peg', radiusM: 0.3, angleDeg: 0, massKg: 20 }],
      range: { fromDeg, toDeg, stepDeg: 5 },
    });

  it('[GYM-11] from level up to upright the first third does half of it (sines of 30, 60, 90 degrees)', () => {
    const { thirdsPercent, emphasis, peak, passesOver } = one(0, 90);
    expect(thirdsPercent[0]).toBeCloseTo(50, 6);
    expect(thirdsPercent[1]).toBeCloseTo(36.6025, 4);
    expect(thirdsPercent[2]).toBeCloseTo(13.3975, 4);
    expect([emphasis, passesOver]).toEqual(['start', undefined]);
    expect(peak).toEqual({ deg: 0, torqueNm: 58.8399 });
  });

  it('[GYM-11] is called by the third that holds most of it', () => {
    expect(one(-90, 0).emphasis).toBe('end');
    expect(one(-60, 60).emphasis).toBe('middle');
    expect(one(-15, 15).emphasis).toBe('even');
  });

  it('[GYM-10] the curve ends at the end of the movement, also where the step does not meet it', () => {
    expect(one(0, 80).curve).toHaveLength(17);
    const { curve } = answerTo({ range: { fromDeg: 0, toDeg: 50, stepDeg: 15 } });
    expect(curve.map(({ deg }) => deg)).toEqual([0, 15, 30, 45, 50]);
    const tenths = answerTo({ range: { fromDeg: 0, toDeg: 1, stepDeg: 0.1 } }).curve;
    expect(tenths.map(({ deg }) => deg)).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]);
  });
});

const masses = fc.array(
  fc.record({
    massKg: fc.double({ min: 0.5, max: 100, noNaN: true }),
    radiusM: fc.double({ min: 0.05, max: 1, noNaN: true }),
    angleDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  }),
  { minLength: 1, maxLength: 5 },
);
const range = fc
  .tuple(fc.integer({ min: -180, max: 150 }), fc.integer({ min: 5, max: 200 }))
  .map(([fromDeg, span]) => ({ fromDeg, toDeg: fromDeg + span }));

describe('any lever', () => {
  const request = (some: { massKg: number }[], { fromDeg, toDeg }: { fromDeg: number; toDeg: number }) => ({
    lever: { massKg: 0, radiusM: 0, angleDeg: 0 },
    pegs: some.map((mass, i) => ({ name: `${i}`, ...mass })),
    range: { fromDeg, toDeg, stepDeg: 1 },
  });

  it('[GYM-10] torque is linear in the masses', () => {
    fc.assert(
      fc.property(masses, range, (some, over) => {
        const { curve } = answerTo(request(some, over));
        const twice = answerTo(
          request(
            some.map((mass) => ({ ...mass, massKg: 2 * mass.massKg })),
            over,
          ),
        ).curve;
        for (const [i, { torqueNm }] of curve.entries())
          expect(twice[i]?.torqueNm).toBeCloseTo(2 * torqueNm, 6);
      }),
      { numRuns: 40, seed: 21 },
    );
  });

  it('[GYM-11] the peak is above every point, and inside the range it lies where the sum vector is level', () => {
    fc.assert(
      fc.property(masses, range, (some, over) => {
        const { curve, peak } = answerTo(request(some, over));
        for (const { torqueNm } of curve) expect(peak.torqueNm).toBeGreaterThanOrEqual(torqueNm - 1e-6);
        if (peak.deg === over.fromDeg || peak.deg === over.toDeg) return;
        const load = leverLoad(some);
        expect(peak.torqueNm).toBeCloseTo(load.amplitudeNm, 6);
        expect(Math.cos(((peak.deg + load.phaseDeg) * Math.PI) / 180)).toBeCloseTo(1, 9);
      }),
      { numRuns: 60, seed: 22 },
    );
  });

  it('[GYM-11] work is the change of height, and the mean of the curve (rule of trapezes) agrees', () => {
    fc.assert(
      fc.property(masses, range, (some, over) => {
        const { curve, meanNm } = answerTo(request(some, over));
        const height = (deg: number) =>
          some.reduce(
            (sum, m) => sum + m.massKg * m.radiusM * Math.sin(((deg + m.angleDeg) * Math.PI) / 180),
            0,
          );
        const turned = ((over.toDeg - over.fromDeg) * Math.PI) / 180;
        const work = STANDARD_GRAVITY * (height(over.toDeg) - height(over.fromDeg));
        expect(meanNm * turned).toBeCloseTo(work, 5);
        let trapezes = 0;
        for (const [i, { torqueNm }] of curve.entries()) {
          if (i > 0) trapezes += ((torqueNm + (curve[i - 1]?.torqueNm ?? 0)) / 2) * (Math.PI / 180);
        }
        expect(Math.abs(trapezes - work)).toBeLessThan(1e-3 * leverLoad(some).amplitudeNm);
      }),
      { numRuns: 60, seed: 23 },
    );
  });

  it('[GYM-12] thirds add up to the lifting work, and where it does not resist the torque is below nought', () => {
    fc.assert(
      fc.property(masses, range, (some, over) => {
        const { thirdsPercent, curve, passesOver } = answerTo(request(some, over));
        const load = leverLoad(some);
        const sum = thirdsPercent[0] + thirdsPercent[1] + thirdsPercent[2];
        expect(sum).toBeCloseTo(liftingWork(load, over) > 0 ? 100 : 0, 6);
        const parts = resistingParts(load, over);
        for (const { deg, torqueNm } of curve) {
          const resists = parts.some(({ fromDeg, toDeg }) => deg >= fromDeg && deg <= toDeg);
          expect(resists ? torqueNm >= -1e-6 : torqueNm <= 1e-6).toBe(true);
        }
        if (passesOver !== undefined && passesOver > over.fromDeg) {
          expect(Math.abs(Math.cos(((passesOver + load.phaseDeg) * Math.PI) / 180))).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 60, seed: 24 },
    );
  });
});

describe('requests that cannot be answered', () => {
  it.each([
    [{ range: { fromDeg: 60, toDeg: 0, stepDeg: 5 } }, 'gym/range-not-forward', 'range.toDeg'],
    [{ range: { fromDeg: 0, toDeg: 400, stepDeg: 5 } }, 'gym/more-than-a-turn', 'range.toDeg'],
    [{ range: { fromDeg: 0, toDeg: 360, stepDeg: 0.01 } }, 'gym/too-many-points', 'range.stepDeg'],
    [{ range: { fromDeg: 0, toDeg: 90, stepDeg: 0 } }, 'gym/wrong-value', 'range.stepDeg'],
    [{ padM: 0 }, 'gym/wrong-value', 'padM'],
    [{ pegs: [{ name: 'a', radiusM: -0.3, angleDeg: 0, massKg: 5 }] }, 'gym/wrong-value', 'pegs.0.radiusM'],
    [{ lever: { massKg: 0, radiusM: 0, angleDeg: 0 }, pegs: [] }, 'gym/nothing-resists', 'pegs'],
    [{ pegz: [] }, 'gym/unknown-field', 'pegz'],
  ])('[GYM-13] %j names what does not fit', (request, code, path) => {
    expect(problemOf(request)).toMatchObject({ code, path });
  });
});

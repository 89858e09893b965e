import { describe, expect, it, vi } from 'vitest';
import { knownCourse } from '../../../test/simulation/known-course.ts';
import { layCourse } from './lay-course.ts';
import { layShape } from './lay-shape.ts';

vi.setConfig({ testTimeout: 30_000 });

const firmCourse = knownCourse({ target: { bodyFatPercent: { max: 11.5 } } });
const firm = layCourse(firmCourse, { stretches: [] });

describe('[CRS-12] a course laid back from the show', () => {
  it('[CRS-12] takes the highest intake that reaches the target with a good chance, inside the limits', () => {
    const laid = firm;
    expect(laid.feasible).toBe(true);
    expect(laid.energyKcal % 25).toBe(0);
    expect(laid.probability).toBeGreaterThan(0.66);
    expect(laid.probability).toBeLessThan(0.85);
    expect(laid.steepestPercentPerWeek).toBeLessThanOrEqual(1);
    expect(laid.energyAvailability).toBeGreaterThanOrEqual(25);
    expect(laid.line[0]?.date).toBe('2027-03-01');
    expect(laid.line.at(-1)?.date).toBe('2027-05-10');
    expect(laid.why[0]).toMatch(
      /^\d+ kcal and 200 kcal of cardio a day reach at most 11\.5 % body fat on 2027-05-10 with \d\d %\.$/,
    );
  });

  it('[CRS-12] a milder target eats more, and a diet break has to be paid for', () => {
    const mild = layCourse(knownCourse({ target: { bodyFatPercent: { max: 13 } } }), { stretches: [] });
    expect(mild.energyKcal).toBeGreaterThan(firm.energyKcal);
    const broken = layCourse(knownCourse({ target: { bodyFatPercent: { max: 13 } } }), {
      stretches: [{ type: 'diet break', from: '2027-04-01', until: '2027-04-10' }],
    });
    expect(broken.energyKcal).toBeLessThan(mild.energyKcal);
  });

  it('[CRS-12] where nothing inside the limits reaches, it says the limit, what stands, and the date that would do', () => {
    const laid = layCourse(knownCourse({ target: { bodyFatPercent: { max: 8 } } }), { stretches: [] });
    expect(laid.feasible).toBe(false);
    expect(laid.heldBackBy?.limit).toBe('loss-rate');
    expect(laid.cardioKcal).toBe(200);
    expect((laid.soonest ?? '') > '2027-05-10').toBe(true);
    expect(laid.why[2]).toBe(`The same course would be enough for a show on ${laid.soonest}.`);
  });

  it('[CRS-12] cardio asked for is kept to', () => {
    const laid = layCourse(knownCourse({ target: { bodyFatPercent: { max: 8 } } }), {
      stretches: [],
      cardioKcal: 150,
    });
    expect(laid.cardioKcal).toBe(150);
  });

  it('[CRS-13] its day targets come from the same body and average to its intake', () => {
    const week = layShape(firmCourse, firm, { trainingDays: 5, higherCarbohydrateDays: 0 });
    expect(week.ok && Math.abs(week.value.energyKcal - firm.energyKcal)).toBeLessThan(5);
  });
});

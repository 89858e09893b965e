import { describe, expect, it, vi } from 'vitest';
import { knownCourse, steadyLog } from '../../../test/simulation/known-course.ts';
import { sizeOf } from './change.ts';
import { AIM } from './corrections.ts';
import { decide } from './decide.ts';
import { barrierTo, judge, lastWeekCardio } from './judgement.ts';
import { FULL_PATHS, type OpenCourse } from './open-course.ts';
import type { Target } from './target.ts';

vi.setConfig({ testTimeout: 30_000 });

const decideOn = (course: OpenCourse, bodyFatWidth = 3) =>
  decide(course, judge(course, {}, FULL_PATHS), bodyFatWidth);
const fatMax = (max: number): Target => ({ bodyFatPercent: { max } });

describe('[CRS-06] the verdict', () => {
  it('[CRS-06] the milder the target, the better the verdict', () => {
    const verdicts = [7, 10.5, 11.5, 14].map((max) => decideOn(knownCourse({ target: fatMax(max) })).verdict);
    expect(verdicts).toEqual(['out of reach', 'behind', 'on course', 'ahead']);
  });

  it('[CRS-06] holds, with no correction, where the present plan is likely enough or the shortfall is noise', () => {
    const course = knownCourse();
    const now = judge(course, {}, FULL_PATHS);
    const middle = Math.round(100 * now.bodyFatPercent) / 100;
    const likely = decideOn(knownCourse({ target: fatMax(middle + 0.2) }));
    expect(likely).toEqual({
      verdict: 'on course',
      corrections: [],
      why: ['Hold: the present plan meets the target more likely than not.'],
    });
    const noise = decideOn(knownCourse({ target: fatMax(middle - 0.2) }));
    expect(noise).toEqual({
      verdict: 'on course',
      corrections: [],
      why: [
        'Hold: what is missing is smaller than what the evidence can tell; it is noise until next week says otherwise.',
      ],
    });
  });

  it('[CRS-05] says so where the log is too short, or body fat is known too loosely, and corrects nothing', () => {
    const short = decideOn(knownCourse({ rows: steadyLog(2350, 200, 2), target: fatMax(10) }));
    expect(short.verdict).toBe('too little evidence');
    expect(short.corrections).toEqual([]);
    expect(short.why[0]).toBe('The log covers 2 days; a course is judged from 14 on.');
    const loose = decideOn(knownCourse({ target: fatMax(10.5) }), 12.2);
    expect(loose.verdict).toBe('too little evidence');
    expect(loose.why[0]).toBe(
      'Body fat is known to within 12.2 points only; folds or another reading would narrow it.',
    );
    expect(decideOn(knownCourse({ target: { massKg: { max: 79 } } }), 12.2).verdict).not.toBe(
      'too little evidence',
    );
  });

  it('[CRS-07] a target below the body-fat floor is out of reach by decision, not by arithmetic', () => {
    const { verdict, corrections, why } = decideOn(knownCourse({ target: fatMax(4) }));
    expect({ verdict, corrections }).toEqual({ verdict: 'out of reach', corrections: [] });
    expect(why).toEqual([
      'The target of 4 % body fat is not planned for. Nothing below 5 % body fat is planned: it is the floor for men in the position stands on weight loss in sport.',
    ]);
    const woman = decideOn(knownCourse({ sex: 'female', target: fatMax(11) }));
    expect(woman.why[0]).toContain('Nothing below 12 % body fat is planned: it is the floor for women');
  });

  it('[CRS-07] out of reach says what it would take and which limit stands in the way', () => {
    const { verdict, why } = decideOn(knownCourse({ target: fatMax(7) }));
    expect(verdict).toBe('out of reach');
    expect(why[0]).toBe('No change inside the limits brings at most 7 % body fat into reach by 2027-05-10.');
    expect(why.some((words) => words.startsWith('It would take about '))).toBe(true);
    expect(why.some((words) => words.startsWith('No faster than 1 % of body mass a week'))).toBe(true);
  });

  it('[CRS-07] on the day itself nothing can be changed any more', () => {
    const { verdict, corrections, why } = decideOn(knownCourse({ show: '2027-03-01', target: fatMax(12) }));
    expect({ verdict, corrections }).toEqual({ verdict: 'out of reach', corrections: [] });
    expect(why).toContain('No day is left to change anything.');
  });
});

describe('[CRS-08] corrections', () => {
  const target = fatMax(11);
  const course = knownCourse({ target });
  const now = judge(course, {}, FULL_PATHS);
  const { corrections } = decideOn(course);

  it('[CRS-08] come smallest first, of food, of cardio, or of both, on a grid of 25 kcal', () => {
    expect(corrections.length).toBeGreaterThanOrEqual(2);
    const sizes = corrections.map(({ change }) => sizeOf(change));
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    for (const { change } of corrections) {
      expect((change.energyKcal ?? 0) % 25).toBeCloseTo(0, 12);
      expect((change.cardioKcal ?? 0) % 25).toBe(0);
      expect(change.energyKcal ?? -1).toBeLessThan(0);
    }
  });

  it('[CRS-08] raise the chance to the aim, or as far as a limit lets them, and are judged over all paths', () => {
    for (const correction of corrections) {
      expect(correction.probability).toBeGreaterThan(now.probability);
      expect(judge(course, correction.change, FULL_PATHS).probability).toBe(correction.probability);
    }
    expect(Math.max(...corrections.map(({ probability }) => probability))).toBeGreaterThanOrEqual(AIM);
  });

  it('[CRS-08] the smallest is the smallest: a step less does not reach the aim', () => {
    const food = corrections.find(({ change }) => change.cardioKcal === undefined);
    const less = judge(course, { energyKcal: (food?.change.energyKcal ?? 0) + 50 }, FULL_PATHS);
    expect(less.probability).toBeLessThan(AIM);
  });

  it('[CRS-08] keep every limit', () => {
    for (const correction of corrections) {
      expect(barrierTo(course, correction)).toBeUndefined();
      expect(correction.steepestPercentPerWeek).toBeLessThanOrEqual(1);
      expect(correction.cardioKcal).toBeLessThanOrEqual(
        Math.max(1.3 * lastWeekCardio(course), lastWeekCardio(course) + 100),
      );
      const lean = course.startMassKg - course.startFatKg;
      expect((correction.energyKcal - correction.cardioKcal) / lean).toBeGreaterThanOrEqual(25);
    }
  });

  it('[CRS-08] an own limit narrows them and its sentence is the reason', () => {
    const own = { lossPercentPerWeek: { max: now.steepestPercentPerWeek + 0.02 } };
    const held = decideOn(knownCourse({ target, own }));
    expect(held.corrections).toEqual([]);
    expect(held.verdict).toBe('out of reach');
    expect(held.why.some((words) => words.endsWith('your own limit.'))).toBe(true);
  });

  it('[CRS-09] ahead gives something back and keeps the target in four cases of five', () => {
    const easing = decideOn(knownCourse({ target: fatMax(14) }));
    expect(easing.verdict).toBe('ahead');
    expect(easing.corrections.length).toBeGreaterThan(0);
    for (const { change, probability } of easing.corrections) {
      expect(probability).toBeGreaterThan(0.75);
      expect(change.energyKcal ?? 1).toBeGreaterThan(0);
      expect(change.cardioKcal ?? -1).toBeLessThan(0);
    }
  });

  it('[CRS-09] landing under the least mass is ahead, and eating more mends it', () => {
    const { verdict, corrections: more, why } = decideOn(knownCourse({ target: { massKg: { min: 82.5 } } }));
    expect(verdict).toBe('ahead');
    expect(why[0]).toMatch(/^The course lands below the least mass in (over )?\d+ % of all paths\.$/);
    expect(more[0]?.change.energyKcal ?? 1).toBeGreaterThan(0);
    expect(more[0]?.probability).toBeGreaterThanOrEqual(0.4);
  });
});

import { safeParse } from 'valibot';
import { describe, expect, it, vi } from 'vitest';
import { knownCourse, steadyLog } from '../../../test/simulation/known-course.ts';
import { answerCourse } from './answer-course.ts';
import { courseAnswer } from './course-answer.ts';

vi.setConfig({ testTimeout: 30_000 });

const fatMax = (max: number) => ({ bodyFatPercent: { max } });

describe('[CRS-01] the answer', () => {
  it('[CRS-01] holds what the contract names, every number finite', () => {
    for (const max of [4, 11, 14]) {
      const answer = answerCourse(knownCourse({ target: fatMax(max) }));
      expect(safeParse(courseAnswer, answer).issues).toBeUndefined();
      expect(answer.arrival.massKg.q05).toBeLessThan(answer.arrival.massKg.q95);
      expect(JSON.stringify(answer)).not.toContain('null');
    }
  });

  it('[CRS-03] the same course gives the same bytes; another seed does not change what it means', () => {
    const once = answerCourse(knownCourse({ target: fatMax(11) }));
    expect(JSON.stringify(answerCourse(knownCourse({ target: fatMax(11) })))).toBe(JSON.stringify(once));
    const other = answerCourse(knownCourse({ target: fatMax(11), seed: 99 }));
    expect(JSON.stringify(other)).not.toBe(JSON.stringify(once));
    expect(Math.abs(other.probability - once.probability)).toBeLessThan(0.05);
    expect(other.verdict).toBe(once.verdict);
  });

  it('[CRS-01] says where it lands, the chance, the verdict, and what goes on, in plain sentences', () => {
    const { why, corrections } = answerCourse(knownCourse({ target: fatMax(11) }));
    expect(why[0]).toMatch(
      /^On 2027-05-10, 10 weeks after 2027-03-01, the course lands at [\d.]+ kg \(5 to 95 %: [\d.]+ kg to [\d.]+ kg\) with [\d.]+ % body fat \([\d.]+ to [\d.]+\)\.$/,
    );
    expect(why[1]).toMatch(
      /^The chance of at most 11 % body fat is \d+ %, counted over 2000 paths with seed 1\.$/,
    );
    expect(why).toContain('The present plan misses the target beyond noise.');
    expect(
      why.some((words) =>
        /^The 70 days that are not planned go on at 23\d\d kcal and 200 kcal of cardio a day, the average of 14 days, with weeks that stray by \d % about it\.$/.test(
          words,
        ),
      ),
    ).toBe(true);
    expect(corrections[0]?.why[0]).toMatch(
      /^\d+ kcal (less food|more cardio).* a day moves the chance from \d+ % to \d+ %\.$/,
    );
  });

  it('[CRS-07] a target below the floor is cautioned, with the limit and its source', () => {
    const { cautions, corrections, verdict } = answerCourse(knownCourse({ target: fatMax(4) }));
    expect(verdict).toBe('out of reach');
    expect(corrections).toEqual([]);
    expect(cautions[0]).toMatchObject({ limit: 'body-fat', value: 5, source: 'oppliger-1996' });
  });

  it('[LIM-30] habits and a landing past a limit are cautioned, whatever the verdict', () => {
    const woman = answerCourse(knownCourse({ sex: 'female', target: fatMax(20) }, { fatKg: 12 }));
    expect(woman.cautions.map(({ limit }) => limit)).toContain('body-fat');
    const steep = answerCourse(knownCourse({ rows: steadyLog(1500, 400), target: fatMax(12) }));
    expect(steep.cautions.map(({ limit }) => limit)).toEqual(
      expect.arrayContaining(['loss-rate', 'energy-availability']),
    );
  });

  it('[LIM-02] an own limit looser than the published one is said to change nothing', () => {
    const { why } = answerCourse(knownCourse({ own: { lossPercentPerWeek: { max: 1.5 } } }));
    expect(why.at(-1)).toBe(
      'Your own limit of 1.5 % a week is looser than the 1 % that stands here, and changes nothing.',
    );
  });

  it('[CRS-04] a log without intake goes on at balance and says so', () => {
    const rows = steadyLog(2350, 200).map(({ date, weightKg }) => ({ date, weightKg }));
    const { why, cautions } = answerCourse(knownCourse({ rows }));
    expect(
      why.some((words) => words.includes('nothing was logged, so the body is taken to eat what it spends')),
    ).toBe(true);
    expect(cautions).toEqual([]);
  });
});

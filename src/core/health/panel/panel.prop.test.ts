import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labAnalytes } from '#core/tables/lab-analytes.ts';
import { plausibleValues } from '#core/tables/plausible-values.ts';
import { answerPanel } from './answer-panel.ts';
import type { PanelAnswer } from './panel-request.ts';
import { toSi } from './convert-lab-value.ts';

/** A value well within what is plausible, so that no unit is in doubt. */
const value = fc.constantFrom(...labAnalytes).chain((analyte) => {
  const [low, high] = plausibleValues[analyte.key] ?? [1, 2];
  return fc.record({
    analyte: fc.constant(analyte),
    amount: fc
      .double({ min: Math.max(low * 1.01, 1e-3), max: high * 0.99, noNaN: true })
      .map((x) => Number(x.toPrecision(5))),
  });
});
const panel = fc.record({
  sex: fc.constantFrom('female', 'male'),
  age: fc.integer({ min: 18, max: 90 }),
  values: fc.uniqueArray(value, { minLength: 1, maxLength: 25, selector: ({ analyte }) => analyte.key }),
  taking: fc.subarray(['creatine', 'biotin', 'niacin', 'ashwagandha', 'moon dust', 'levothyroxine']),
  fastedHours: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
  hoursSinceHardTraining: fc.option(fc.integer({ min: 0, max: 400 }), { nil: undefined }),
});

function answer(given: Parameters<typeof request>[0], inSi = false): PanelAnswer {
  const outcome = answerPanel(request(given, inSi));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

function request(given: typeof panel extends fc.Arbitrary<infer T> ? T : never, inSi: boolean) {
  return {
    athlete: { sex: given.sex, age: given.age },
    drawn: {
      date: '2027-03-01',
      ...(given.fastedHours === undefined ? {} : { fastedHours: given.fastedHours }),
      ...(given.hoursSinceHardTraining === undefined
        ? {}
        : { hoursSinceHardTraining: given.hoursSinceHardTraining }),
    },
    taking: given.taking,
    values: given.values.map(({ analyte, amount }) => ({
      name: analyte.key,
      value: inSi ? (toSi(analyte, amount, analyte.unit) ?? 0) : amount,
      unit: inSi ? analyte.unitSi : analyte.unit,
      // Random values are often ordinary in another unit; here that is not asked.
      unitConfirmed: true,
    })),
  };
}

describe('any panel', () => {
  it('[HLT-06] is judged the same in conventional and SI units, and derives the same', () => {
    fc.assert(
      fc.property(panel, (given) => {
        const [a, b] = [answer(given), answer(given, true)];
        expect(a.results.map(({ flag }) => flag)).toEqual(b.results.map(({ flag }) => flag));
        expect(a.derived.map(({ name }) => name)).toEqual(b.derived.map(({ name }) => name));
      }),
      { seed: 21, numRuns: 150 },
    );
  });

  it('[HLT-04] every urgent value is named in the cautions before any that is not', () => {
    fc.assert(
      fc.property(panel, (given) => {
        const { results, cautions } = answer(given);
        const urgent = results.filter(({ flag }) => flag === 'seek care now').length;
        expect(cautions.slice(0, urgent).every((words) => words.includes('seek care now'))).toBe(true);
        expect(cautions.at(-1)).toContain('not medical advice');
      }),
      { seed: 22, numRuns: 150 },
    );
  });

  it('[HLT-11] no panel is ever told that the liver is fine, and every number is finite', () => {
    fc.assert(
      fc.property(panel, (given) => {
        const text = JSON.stringify(answer(given));
        expect(text).not.toMatch(/liver (is )?(fine|healthy|normal|ok)\b/i);
        expect(text).not.toContain('null');
        expect(text).not.toContain('undefined');
        expect(text).not.toContain('NaN');
      }),
      { seed: 23, numRuns: 150 },
    );
  });

  it('[HLT-15] whatever is asked, the answer is an answer or a problem with its place', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (input) => {
        const outcome = answerPanel(input);
        expect(outcome.ok || outcome.problem.remedy.length > 0).toBe(true);
      }),
      { seed: 24, numRuns: 300 },
    );
  });
});

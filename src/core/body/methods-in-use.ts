import { answered, type Outcome, refused } from '#core/problems/problem.ts';
import { type BodyFatMethod, bodyFatMethod, bodyFatMethods } from '#core/tables/body-fat-methods.ts';
import type { Percent } from '#core/units/quantities.ts';
import type { EstimateDay } from './estimate-request.ts';
import { METHOD_STATES, STATE } from './state-layout.ts';

/** A method of measuring body fat that this log uses, and where its bias stands in the state. */
export interface MethodInUse {
  readonly method: BodyFatMethod;
  readonly place: number;
  readonly biasPercent: Percent;
  /** The words by which the log calls it. */
  readonly words: Set<string>;
}

/** Methods in the order in which they first appear; a word that names none is a problem. */
export function methodsInUse(days: readonly EstimateDay[]): Outcome<readonly MethodInUse[]> {
  const inUse: MethodInUse[] = [];
  for (const [index, { bodyFat }] of days.entries()) {
    if (!bodyFat) continue;
    const method = bodyFatMethod(bodyFat.method);
    if (!method) return unknownMethod(bodyFat.method, index);
    const known = inUse.find((used) => used.method === method);
    if (known) {
      known.words.add(bodyFat.method);
      continue;
    }
    const place = STATE.firstMethod + Math.min(inUse.length, METHOD_STATES - 1);
    inUse.push({ method, place, biasPercent: method.biasPercent, words: new Set([bodyFat.method]) });
  }
  return answered(inUse);
}

function unknownMethod(word: string, index: number): Outcome<never> {
  return refused(
    'body/unknown-method',
    `days.${index}.bodyFat.method`,
    `"${word}" is not a method of measuring body fat that is known here.`,
    `Use one of ${bodyFatMethods.map(({ key }) => `"${key}"`).join(', ')}.`,
  );
}

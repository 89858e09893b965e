import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Years } from '../units/quantities.ts';
import { publishedLimits } from './published-limits.ts';

/** The tool plans for adults only (LIM-05). Answers the age, or refuses. */
export function adultsOnly(age: Years, path: string): Outcome<Years> {
  if (age >= publishedLimits.age.minYears) return answered(age);
  return refused(
    'limits/adults-only',
    path,
    `The age is ${age}; this tool plans energy restriction for adults of ${publishedLimits.age.minYears} years and more only.`,
    'Growing bodies belong in the hands of a physician and a dietitian; correct the age if it is a slip.',
  );
}

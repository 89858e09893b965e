import { drinkClasses, separationRules, type SeparationRule } from '#core/tables/separation-rules.ts';
import type { ClockMinutes, Minutes } from '#core/units/quantities.ts';

/** Something that is swallowed at a time: what it is made of decides what it must keep away from. */
export interface Swallowed {
  readonly name: string;
  readonly minutes: ClockMinutes;
  readonly classes: ReadonlySet<string>;
}

/** Two that stand too close. */
export interface TooClose {
  readonly rule: SeparationRule;
  readonly needed: Minutes;
  readonly found: Minutes;
}

/** The rule that two times break, the one that is furthest from being kept; undefined where none is. */
export function tooClose(a: Swallowed, b: Swallowed): TooClose | undefined {
  const [first, second] = a.minutes <= b.minutes ? [a, b] : [b, a];
  const found = second.minutes - first.minutes;
  let worst: TooClose | undefined;
  for (const rule of rulesBetween(a.classes, b.classes)) {
    const needed = neededGap(rule, first, second, found === 0);
    if (needed !== undefined && found < needed && (worst === undefined || needed > worst.needed)) {
      worst = { rule, needed, found };
    }
  }
  return worst;
}

/** Rules that bind two kinds of thing at all. */
export function rulesBetween(a: ReadonlySet<string>, b: ReadonlySet<string>): SeparationRule[] {
  return separationRules.filter(
    (rule) => (a.has(rule.a) && b.has(rule.b)) || (a.has(rule.b) && b.has(rule.a)),
  );
}

/** Rules that one product breaks by itself. */
export function rulesWithin(classes: ReadonlySet<string>): SeparationRule[] {
  return separationRules.filter((rule) => classes.has(rule.a) && classes.has(rule.b));
}

function neededGap(
  rule: SeparationRule,
  first: Swallowed,
  second: Swallowed,
  together: boolean,
): Minutes | undefined {
  const forward = first.classes.has(rule.a) && second.classes.has(rule.b);
  const backward = first.classes.has(rule.b) && second.classes.has(rule.a);
  const gaps = [
    ...(forward || (together && backward) ? [rule.aThenBMinutes] : []),
    ...(backward || (together && forward) ? [rule.bThenAMinutes] : []),
  ];
  return gaps.length > 0 ? Math.max(...gaps) : undefined;
}

/** The class of a drink: coffee and tea keep iron from being taken up. */
export function drinkClass(drink: string): Set<string> {
  const words = ` ${drink.toLowerCase().replace(/[^a-z]+/g, ' ')} `;
  const has = (names: readonly string[]) => names.some((name) => words.includes(` ${name} `));
  return new Set((['coffee', 'tea'] as const).filter((key) => has(drinkClasses[key])));
}

/** "2 h", "90 min". */
export function sayGap(minutes: Minutes): string {
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${minutes} min`;
}

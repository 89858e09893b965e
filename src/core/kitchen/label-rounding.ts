import type { NutrientName } from './nutrients.ts';

export type LabelRules = 'us' | 'eu';

/** What true values print as one figure: from `low` on, up to but not including `high`. */
export interface PrintedInterval {
  readonly low: number;
  readonly high: number;
  /** False where the rule prints no such figure: it then stands as written, to half its last digit. */
  readonly printable: boolean;
}

/** A stretch of figures printed in steps: true values from `from` to `to` go to the nearest multiple of `step`. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** Below `zeroBelow` the label may say 0; above, the stretches apply in order. */
interface RoundingRule {
  readonly zeroBelow: number;
  readonly stretches: readonly Stretch[];
}

const END = Number.MAX_VALUE;

/** 21 CFR 101.9(c); source cfr-101-9. Grams below 1 may print "less than 1 g": figures between 0 and 1 mean that. */
const us = {
  energy: {
    zeroBelow: 5,
    stretches: [
      { from: 5, to: 50, step: 5 },
      { from: 50, to: END, step: 10 },
    ],
  },
  fat: {
    zeroBelow: 0.5,
    stretches: [
      { from: 0.5, to: 5, step: 0.5 },
      { from: 5, to: END, step: 1 },
    ],
  },
  grams: { zeroBelow: 0.5, stretches: [{ from: 1, to: END, step: 1 }] },
  milligrams: {
    zeroBelow: 5,
    stretches: [
      { from: 5, to: 140, step: 5 },
      { from: 140, to: END, step: 10 },
    ],
  },
} as const satisfies Record<string, RoundingRule>;

/** Commission guidance of 2012; source eu-rounding-2012. Small amounts may be printed as 0, but need not be. */
const eu = {
  energy: { zeroBelow: 0.5, stretches: [{ from: 0, to: END, step: 1 }] },
  grams: {
    zeroBelow: 0.5,
    stretches: [
      { from: 0, to: 10, step: 0.1 },
      { from: 10, to: END, step: 1 },
    ],
  },
  saturates: {
    zeroBelow: 0.1,
    stretches: [
      { from: 0, to: 10, step: 0.1 },
      { from: 10, to: END, step: 1 },
    ],
  },
  /** Grams of salt, 2.5 times the sodium. */
  salt: {
    zeroBelow: 0.0125,
    stretches: [
      { from: 0, to: 1, step: 0.01 },
      { from: 1, to: END, step: 0.1 },
    ],
  },
  /** Three significant figures. */
  potassium: {
    zeroBelow: 0.5,
    stretches: [
      { from: 0, to: 1000, step: 1 },
      { from: 1000, to: END, step: 10 },
    ],
  },
} as const satisfies Record<string, RoundingRule>;

const MG_SODIUM_PER_G_SALT = 400;

/**
 * The true values per serving that print as `printed` (BAT-41). Sodium under the European rules is read as the salt
 * figure it came from.
 */
export function printedInterval(rules: LabelRules, name: NutrientName, printed: number): PrintedInterval {
  if (rules === 'eu' && name === 'sodiumMg') {
    const salt = inverse(eu.salt, printed / MG_SODIUM_PER_G_SALT);
    if (!salt.printable) return asWritten(printed);
    return { ...salt, low: salt.low * MG_SODIUM_PER_G_SALT, high: salt.high * MG_SODIUM_PER_G_SALT };
  }
  if (rules === 'us' && ruleOf(rules, name) === us.grams && printed > 0 && printed < 1) {
    return { low: 0.5, high: 1, printable: true };
  }
  return inverse(ruleOf(rules, name), printed);
}

function ruleOf(rules: LabelRules, name: NutrientName): RoundingRule {
  const table = {
    energyKcal: { us: us.energy, eu: eu.energy },
    proteinG: { us: us.grams, eu: eu.grams },
    fatG: { us: us.fat, eu: eu.grams },
    carbohydrateG: { us: us.grams, eu: eu.grams },
    fibreG: { us: us.grams, eu: eu.grams },
    sugarsG: { us: us.grams, eu: eu.grams },
    saturatedFatG: { us: us.fat, eu: eu.saturates },
    sodiumMg: { us: us.milligrams, eu: eu.salt },
    potassiumMg: { us: us.milligrams, eu: eu.potassium },
  } as const satisfies Record<NutrientName, Record<LabelRules, RoundingRule>>;
  return table[name][rules];
}

/** Union of what each stretch sends to the figure; a figure on a border is fed from both sides (50 kcal, 5 g fat, 140 mg). */
function inverse(rule: RoundingRule, printed: number): PrintedInterval {
  if (printed === 0) return { low: 0, high: rule.zeroBelow, printable: true };
  const fed: { low: number; high: number }[] = [];
  for (const { from, to, step } of rule.stretches) {
    const steps = printed / step;
    if (Math.abs(steps - Math.round(steps)) > 1e-6) continue;
    const low = Math.max(from, printed - step / 2);
    const high = Math.min(to, printed + step / 2);
    if (low < high) fed.push({ low, high });
  }
  if (fed.length === 0) return asWritten(printed);
  return {
    low: Math.min(...fed.map((part) => part.low)),
    high: Math.max(...fed.map((part) => part.high)),
    printable: true,
  };
}

/** Half of the last digit written, either way. */
function asWritten(printed: number): PrintedInterval {
  const half = halfLastDigit(printed);
  return { low: Math.max(0, printed - half), high: printed + half, printable: false };
}

/** Half a unit in the last decimal place of a number as it is written: 0.5 for 28, 0.05 for 3.4. */
function halfLastDigit(value: number): number {
  const decimals = /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;
  return 0.5 / 10 ** decimals;
}

/** What a serving printed as `servingG` may really weigh. European figures are per the printed amount itself. */
export function servingInterval(rules: LabelRules, servingG: number): { low: number; high: number } {
  if (rules === 'eu') return { low: servingG, high: servingG };
  const step = servingG > 5 ? 1 : servingG >= 2 ? 0.5 : 0.1;
  const onGrid = Math.abs(servingG / step - Math.round(servingG / step)) < 1e-6;
  const half = onGrid ? step / 2 : halfLastDigit(servingG);
  return { low: Math.max(servingG - half, servingG / 2), high: servingG + half };
}

/** What a person typed into a number field, and what it means. */
export interface NumberReading {
  readonly text: string;
  /** Absent where nothing was typed or the text is no number. */
  readonly value?: number;
  /** Says what is wrong with the text and how to mend it; absent where it reads. */
  readonly problem?: string;
}

export interface NumberRule {
  readonly label: string;
  readonly unit?: string | undefined;
  readonly decimals: number;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

const NUMBER = /^([+-]?)(\d*)(?:[.,](\d*))?$/;

/**
 * Reads a number as typed: point or comma is the decimal sign, spaces between thousands do no harm. "1,250" in a
 * field of whole grams could be a thousand or one and a quarter, so it is asked back, never guessed.
 */
export function readNumber(typed: string, rule: NumberRule): NumberReading {
  const text = typed.replace(/[\s\u2009\u202f\u00a0]/g, '').replace('\u2212', '-');
  if (text === '') return { text: typed };
  const match = NUMBER.exec(text);
  const [, sign = '', whole = '', fraction = ''] = match ?? [];
  if (!match || whole + fraction === '') return wrong(typed, rule, notANumber(typed, rule));
  const kept = fraction.replace(/0+$/, '');
  if (kept.length > rule.decimals) return wrong(typed, rule, tooFine(typed, fraction, rule));
  const value = Number(`${sign}${whole || '0'}.${fraction || '0'}`) + 0;
  if (rule.min !== undefined && value < rule.min)
    return wrong(typed, rule, `the least is ${withUnit(rule.min, rule)}.`);
  if (rule.max !== undefined && value > rule.max)
    return wrong(typed, rule, `the most is ${withUnit(rule.max, rule)}.`);
  return { text: typed, value };
}

/** A number as it stands in a field: no grouping, a point as decimal sign, no more decimals than it has. */
export function fieldText(value: number | undefined, decimals: number): string {
  return value === undefined ? '' : String(Number(value.toFixed(decimals)) + 0);
}

function wrong(typed: string, rule: NumberRule, what: string): NumberReading {
  return { text: typed, problem: `${rule.label}: ${what}` };
}

function notANumber(typed: string, rule: NumberRule): string {
  const example = rule.decimals === 0 ? '250' : '82.4';
  return `"${typed.trim()}" is not a number. Type digits, such as ${example}.`;
}

function tooFine(typed: string, fraction: string, rule: NumberRule): string {
  if (fraction.length === 3 && /^[^.,]+[.,]\d{3}$/.test(typed.trim())) {
    const joined = typed.trim().replace(/[.,]/, '');
    return `"${typed.trim()}" can be read two ways. For the thousands type ${joined}, without a sign between.`;
  }
  if (rule.decimals === 0) return 'whole numbers only. Leave out what stands behind the decimal sign.';
  return `at most ${rule.decimals} ${rule.decimals === 1 ? 'decimal' : 'decimals'}. Leave out the rest.`;
}

function withUnit(value: number, rule: NumberRule): string {
  return rule.unit === undefined ? String(value) : `${value} ${rule.unit}`;
}

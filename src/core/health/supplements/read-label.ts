import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { LabelLine } from '#core/journal/kinds/health.ts';
import { internationalUnits, nutrientNames } from '#core/tables/nutrient-names.ts';
import type { MassUnit } from '#core/tables/upper-limit.ts';
import { findSubstance, nutrientOf, type FoundSubstance } from './find-substance.ts';

export type Product = DataOf<'supplement-defined'>;

/** One line of a label, understood as far as the tables know it, for a single unit of the product. */
export interface LabelPart {
  readonly printed: string;
  readonly found: FoundSubstance;
  /** Key of the nutrient or substance; undefined for what is not known. */
  readonly key: string | undefined;
  readonly form?: string;
  /** In the nutrient's unit, substances in mg; absent where the label does not say or the unit says nothing. */
  readonly perUnit?: number;
  readonly unit: MassUnit;
  /** What was assumed on the safe side, or could not be read. */
  readonly note?: string;
}

const GRAMS_PER: Readonly<Record<MassUnit, number>> = { g: 1, mg: 1e-3, ug: 1e-6 };

/** Every line of a product's label, per unit. */
export function readLabel(product: Product): LabelPart[] {
  return product.contents.map((line) => readLine(line, product.perUnits));
}

/** Keys of all a product holds: what separation rules, cautions and notes go by. */
export function keysIn(product: Product): Set<string> {
  return new Set(readLabel(product).flatMap(({ key }) => (key === undefined ? [] : [key])));
}

function readLine(line: LabelLine, perUnits: number): LabelPart {
  const found = findSubstance(line.of);
  const named = found.kind === 'nutrient' ? found.form : undefined;
  const form = line.form ?? named;
  const key =
    found.kind === 'nutrient'
      ? keyWithForm(found.nutrient.key, form)
      : found.kind === 'substance'
        ? found.substance.key
        : undefined;
  const unit: MassUnit = found.kind === 'nutrient' && key !== undefined ? nutrientOf(key).unit : 'mg';
  const common = { printed: line.of, found, key, unit, ...(form === undefined ? {} : { form }) };
  if (line.amount === undefined || line.unit === undefined)
    return { ...common, note: 'the label does not say how much' };
  const factor = line.unit === '[IU]' ? unitsFactor(key, form) : GRAMS_PER[line.unit] / GRAMS_PER[unit];
  if (factor === undefined) return { ...common, note: 'international units say nothing of it here' };
  const salt = isSalt(line.of, found)
    ? { note: "taken as the mass of the element; a label of the salt's mass overstates it" }
    : {};
  return { ...common, perUnit: (line.amount * factor) / perUnits, ...salt };
}

/** Vitamin A as beta-carotene is counted as what it is. */
function keyWithForm(nutrient: string, form: string | undefined): string {
  const carotene = nutrient === 'vitaminA' && form !== undefined && /carotene/i.test(form);
  return carotene ? 'betaCarotene' : nutrient;
}

function unitsFactor(key: string | undefined, form: string | undefined): number | undefined {
  const factors = internationalUnits[key ?? ''];
  return factors && (factors[form ?? 'any'] ?? factors.any);
}

/** "magnesium citrate" may print the mass of the salt. */
function isSalt(printed: string, found: FoundSubstance): boolean {
  if (found.kind !== 'nutrient') return false;
  const minerals = ['calcium', 'magnesium', 'iron', 'zinc', 'potassium', 'chromium'];
  return (
    minerals.includes(found.nutrient.key) && printed.trim().includes(' ') && !nutrientNames.get(printed)?.form
  );
}

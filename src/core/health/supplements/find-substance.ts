import { nutrientNames } from '#core/tables/nutrient-names.ts';
import { substances } from '#core/tables/substances.ts';
import type { Substance } from '#core/tables/substance.ts';
import type { NutrientLimits } from '#core/tables/upper-limit.ts';
import { upperLimits } from '#core/tables/upper-limits.ts';
import { plainName } from '../plain-name.ts';

/** What a name on a label stands for: a nutrient with its form, a substance, or nothing that is known here. */
export type FoundSubstance =
  | { readonly kind: 'nutrient'; readonly nutrient: NutrientLimits; readonly form?: string }
  | { readonly kind: 'substance'; readonly substance: Substance }
  | { readonly kind: 'unknown' };

const nutrientByKey = new Map(upperLimits.map((row) => [row.key, row]));
const nutrientByName = new Map([...nutrientNames].map(([name, found]) => [plainName(name), found]));
const substanceByName = new Map(
  substances.flatMap((substance) =>
    [substance.key, substance.name, ...substance.alsoCalled].map(
      (name) => [plainName(name), substance] as const,
    ),
  ),
);

export function findSubstance(name: string): FoundSubstance {
  const plain = plainName(name);
  const named = nutrientByName.get(plain);
  const nutrient = named && nutrientByKey.get(named.nutrient);
  if (named && nutrient) {
    return { kind: 'nutrient', nutrient, ...(named.form === undefined ? {} : { form: named.form }) };
  }
  const substance = substanceByName.get(plain);
  return substance ? { kind: 'substance', substance } : { kind: 'unknown' };
}

/** The key under which tables speak of it; undefined for what is not known. */
export function substanceKey(name: string): string | undefined {
  const found = findSubstance(name);
  if (found.kind === 'nutrient') return found.nutrient.key;
  return found.kind === 'substance' ? found.substance.key : undefined;
}

/** A nutrient of the table; asking for one that is not there is a fault of the program. */
export function nutrientOf(key: string): NutrientLimits {
  const nutrient = nutrientByKey.get(key);
  if (!nutrient) throw new RangeError(`no nutrient "${key}"`);
  return nutrient;
}

/** One figure or text of an entry, by its field in words. */
export interface DataLine {
  readonly field: string;
  readonly value: string;
}

/** Endings of field names that say a unit. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/KcalPerDay$/, 'kcal a day'],
  [/Kcal$/, 'kcal'],
  [/Kg$/, 'kg'],
  [/Mg$/, 'mg'],
  [/Cm$/, 'cm'],
  [/Percent$/, '%'],
  [/Minutes$/, 'min'],
  [/Px$/, 'px'],
  [/G$/, 'g'],
];

/**
 * Any entry's data as lines to read, so that entries of kinds without a form of their own, and of newer versions, can be
 * seen whole. Names come from `nameOf`, which may know what an id stands for.
 */
export function dataLines(
  data: { readonly [field: string]: unknown },
  nameOf: (id: string) => string | undefined,
): DataLine[] {
  return Object.entries(data).flatMap(([field, value]) => linesOf(field, value, nameOf));
}

function linesOf(field: string, value: unknown, nameOf: (id: string) => string | undefined): DataLine[] {
  if (Array.isArray(value)) {
    if (value.every((part) => typeof part !== 'object')) {
      const { name, unit } = fieldWords(field);
      return [
        { field: name, value: `${value.map((part) => plain(part, nameOf)).join(', ')} ${unit}`.trimEnd() },
      ];
    }
    return value.flatMap((part, place) => linesOf(`${fieldWords(field).name} ${place + 1}`, part, nameOf));
  }
  if (typeof value === 'object' && value !== null) {
    const parts = Object.entries(value).flatMap(([inner, part]) => linesOf(inner, part, nameOf));
    return [
      { field: fieldWords(field).name, value: parts.map((part) => `${part.field} ${part.value}`).join(', ') },
    ];
  }
  const { name, unit } = fieldWords(field);
  return [{ field: name, value: unit === '' ? plain(value, nameOf) : `${plain(value, nameOf)} ${unit}` }];
}

function plain(value: unknown, nameOf: (id: string) => string | undefined): string {
  if (typeof value === 'string') return nameOf(value) ?? value;
  if (value === true) return 'yes';
  if (value === false) return 'no';
  return String(value);
}

/** "rawG" is "raw" in g; "massKg" is "mass" in kg; "cookedGrossG" is "cooked gross" in g. */
function fieldWords(field: string): { readonly name: string; readonly unit: string } {
  const [ending, unit] = UNITS.find(([pattern]) => pattern.test(field)) ?? [undefined, ''];
  const stem = ending === undefined ? field : field.replace(ending, '');
  const name = stem.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
  return { name: name === '' ? field : name, unit };
}

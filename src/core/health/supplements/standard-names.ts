import { nutrientNames } from '#core/tables/nutrient-names.ts';
import { substances } from '#core/tables/substances.ts';
import { plainName } from '../plain-name.ts';

/** Keys such as "vitaminA" are the program's own, no label prints them. */
const isKey = (name: string) => /^[a-z]+[A-Z]/.test(name);

const names: readonly string[] = [
  ...[...nutrientNames.keys()].filter((name) => !isKey(name)),
  ...substances.flatMap(({ name, alsoCalled }) => [name, ...alsoCalled]),
];

/** Names the tables know that hold what was typed; those that begin with it first. */
export function standardNames(typed: string, most: number): readonly string[] {
  const wanted = plainName(typed);
  if (wanted === '') return [];
  const plain = names.map((name) => ({ name, at: plainName(name).indexOf(wanted) }));
  const found = plain.filter(({ at }) => at >= 0).sort((a, b) => Math.min(a.at, 1) - Math.min(b.at, 1));
  return [...new Set(found.map(({ name }) => name))].slice(0, most);
}

import MiniSearch from 'minisearch';
import type { CatalogueFood } from '#core/kitchen/catalogue-food.ts';
import { byStanding, unknownStanding, type Standing } from '#core/kitchen/picking-order.ts';
import { lookUpForm, slipsAllowed, withSwappedLetters, wordsOf } from './search-terms.ts';

export interface FoodSearch {
  /**
   * Foods that answer what was typed so far, in the order they should be offered: what is in stock and favourites first, each
   * group by how well it answers. Words in any order, the beginning of a word is enough; small slips are forgiven
   * where few foods answer as written. Nothing typed: every food, by standing.
   */
  find(typed: string, standings: ReadonlyMap<string, Standing>, limit?: number): readonly CatalogueFood[];
}

interface Hit {
  readonly food: CatalogueFood;
  readonly standing: Standing;
  readonly score: number;
}

/** Below this many answers as written, slips are forgiven. */
const FEW = 5;

/** An index over the catalogue's foods. Built anew when the catalogue changes: a few milliseconds for some hundred foods. */
export function createFoodSearch(foods: readonly CatalogueFood[]): FoodSearch {
  const byId = new Map(foods.map((food) => [food.id, food]));
  const index = new MiniSearch<CatalogueFood>({
    idField: 'id',
    fields: ['name', 'synonyms', 'state'],
    extractField: (food, field) => fieldText(food, field),
    tokenize: wordsOf,
    processTerm: (word) => lookUpForm(word) ?? null,
    searchOptions: { combineWith: 'AND', prefix: true, boost: { name: 3, synonyms: 2 } },
  });
  index.addAll(foods);

  const hitsOf = (typed: string, standings: ReadonlyMap<string, Standing>, slips: boolean): Hit[] =>
    index
      .search(typed, slips ? { fuzzy: slipsAllowed } : {})
      .map(({ id, score }) => hit(byId.get(String(id)), standings, score))
      .filter((found) => found !== undefined)
      .sort(byStandingThenScore);

  return {
    find(typed, standings, limit = 40) {
      if (wordsOf(typed).length === 0) {
        return foods
          .map((food) => hit(food, standings, 0))
          .filter((found) => found !== undefined)
          .sort(byStandingThenScore)
          .slice(0, limit)
          .map(({ food }) => food);
      }
      const asWritten = hitsOf(typed, standings, false);
      const found = new Set(asWritten.map(({ food }) => food));
      if (asWritten.length < FEW) {
        for (const { food } of hitsOf(typed, standings, true)) found.add(food);
        for (const variant of withSwappedLetters(typed)) {
          for (const { food } of hitsOf(variant, standings, false)) found.add(food);
        }
      }
      return [...found].slice(0, limit);
    },
  };
}

function fieldText(food: CatalogueFood, field: string): string {
  if (field === 'id') return food.id;
  if (field === 'name') return food.name;
  return field === 'synonyms' ? food.synonyms.join(' ') : food.state;
}

function hit(
  food: CatalogueFood | undefined,
  standings: ReadonlyMap<string, Standing>,
  score: number,
): Hit | undefined {
  return food && { food, standing: standings.get(food.id) ?? unknownStanding, score };
}

function byStandingThenScore(a: Hit, b: Hit): number {
  const byTier = a.standing.tier - b.standing.tier;
  if (byTier !== 0) return byTier;
  return (
    b.score - a.score ||
    byStanding(a.standing, b.standing) ||
    (a.food.name.toLowerCase() < b.food.name.toLowerCase() ? -1 : 1)
  );
}

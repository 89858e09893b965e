import { computed } from '@preact/signals';
import { kitchenNow, type KitchenNow } from '#core/cycle/kitchen-now.ts';
import type { PlateItem } from '#core/journal/kinds/plate-item.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { createCatalogue } from '#core/kitchen/catalogue.ts';
import type { CatalogueFood } from '#core/kitchen/catalogue-food.ts';
import { plateItemOf } from '#core/kitchen/item-nutrients.ts';
import { isNear, pickingStandings, type Standing } from '#core/kitchen/picking-order.ts';
import { capital } from '#core/units/capital.ts';
import { createFoodSearch } from '#outside/food-search/food-search.ts';
import { now } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';

export interface ReadyPortion {
  readonly batch: string;
  /** Absent: what is in the pan. */
  readonly portion?: number;
  readonly name: string;
  readonly detail: string;
  readonly grams: number;
}

export interface FoodHit {
  readonly id: string;
  readonly title: string;
  readonly detail: string;
}

/** The kitchen as screens use it. */
export interface KitchenView extends KitchenNow {
  readonly nameOfFood: (id: string) => string | undefined;
  /** A food of the catalogue as an item without grams yet. */
  readonly itemOf: (id: string) => PlateItem;
  readonly search: (typed: string) => readonly FoodHit[];
  readonly readyPortions: readonly ReadyPortion[];
  readonly containers: readonly DataOf<'container-weighed'>[];
}

const HITS = 12;
/** Offered before anything is typed. */
const AT_HAND = 5;

/** Catalogue and search index are drawn once for each state of the journal, the stock at each tick of the clock. */
const catalogue = computed(() => createCatalogue(ledger.value));
const index = computed(() => createFoodSearch(catalogue.value.foods()));

export const kitchen = computed<KitchenView>(() => {
  const open = ledger.value;
  const drawn = kitchenNow(open, now.value, catalogue.value);
  const standings = pickingStandings(open, drawn.catalogue, drawn.stock);
  const containers = new Map(open.of('container-weighed').map(({ data }) => [data.container, data]));
  return {
    ...drawn,
    nameOfFood: (id) => drawn.catalogue.food(id)?.name ?? drawn.catalogue.batch(id)?.name,
    itemOf: (id) => plateItemOf(id, 0),
    search: (typed) =>
      (typed.trim() === ''
        ? index.value.find('', standings, AT_HAND).filter(({ id }) => isNear(standings.get(id)))
        : index.value.find(typed, standings, HITS)
      ).map((food) => hitOf(food, standings.get(food.id))),
    readyPortions: readyPortions(drawn),
    containers: [...containers.values()],
  };
});

function hitOf(food: CatalogueFood, standing: Standing | undefined): FoodHit {
  const { energyKcal, proteinG, carbohydrateG, fatG } = food.per100g.nutrients;
  const macros = `${Math.round(energyKcal)} kcal, ${round1(proteinG)} P, ${round1(carbohydrateG)} C, ${round1(fatG)} F in 100 g`;
  const near = standing && standing.tier <= 1 ? 'in stock; ' : standing?.tier === 2 ? 'favourite; ' : '';
  return { id: food.id, title: capital(food.name), detail: near + macros };
}

function round1(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function readyPortions({ stock }: KitchenNow): ReadyPortion[] {
  return stock.batches.flatMap(({ batch, containers }) =>
    containers
      .filter(({ reading }) => reading.state !== 'out' && reading.state !== 'frozen')
      .map(({ portion, grams, place }) => ({
        batch: batch.batch,
        ...(portion > 0 && { portion }),
        name: batch.name,
        detail: portion > 0 ? `portion ${portion}, ${place}` : `in the pan, ${place}`,
        grams,
      })),
  );
}

import type { RequestFood } from '../day/day-request.ts';
import type { PlateItem } from '../journal/kinds/plate-item.ts';
import type { Ledger } from '../journal/ledger.ts';
import { availableFoods, type Available } from '../kitchen/available.ts';
import { createCatalogue, type Catalogue } from '../kitchen/catalogue.ts';
import { batchFoodId } from '../kitchen/cooked-batch.ts';
import type { CatalogueFood } from '../kitchen/catalogue-food.ts';
import { foodIdOf, nutrientsOfItem } from '../kitchen/item-nutrients.ts';
import { knownNutrients } from '../kitchen/nutrients.ts';
import { stockAt, type Stock } from '../kitchen/stock.ts';
import type { StorageClass } from '../tables/storage-clock.ts';
import { roundTo } from '../units/rounding.ts';
import type { ReadItem } from './day-sheet.ts';

/** The kitchen as the journal has it at a moment. */
export interface KitchenNow {
  readonly catalogue: Catalogue;
  readonly stock: Stock;
  readonly available: ReadonlyMap<string, Available>;
  readonly read: ReadItem;
  /** What the day may be planned from. */
  readonly plannable: readonly RequestFood[];
}

/** Raw meat and fish are cooked in batches; on a plate they go only when the athlete says so (common practice, no source). */
const COOKED_FIRST: readonly StorageClass[] = [
  'raw-mince',
  'raw-poultry-mince',
  'raw-meat',
  'raw-poultry',
  'raw-fish',
  'raw-fatty-fish',
  'raw-shellfish',
];

export function kitchenNow(
  ledger: Ledger,
  atMs: number,
  catalogue: Catalogue = createCatalogue(ledger),
): KitchenNow {
  const stock = stockAt(ledger, catalogue, atMs);
  const available = availableFoods(stock);
  return {
    catalogue,
    stock,
    available,
    read: reader(catalogue),
    plannable: plannableFoods(ledger, catalogue, available, mustGoSoon(stock)),
  };
}

function reader(catalogue: Catalogue): ReadItem {
  return (item: PlateItem, atMs?: number) => {
    const amount = nutrientsOfItem(catalogue, item, atMs);
    if (!amount.ok) return undefined;
    const id = foodIdOf(item);
    const name = item.source === 'guess' ? item.name : nameOf(catalogue, item, id);
    return { name, amount: amount.value };
  };
}

function nameOf(catalogue: Catalogue, item: PlateItem, id: string | undefined): string {
  if (item.source === 'slices') return catalogue.recipe(item.recipe)?.name ?? 'a recipe';
  return (id && catalogue.food(id)?.name) || 'a food';
}

/**
 * Foods that may go on today's plates: what is in stock and may be eaten (frozen berries and vegetables as they are), packed
 * portions whole, and foods the athlete has at hand uncounted. What is out of date is never offered (RUN-06).
 */
function plannableFoods(
  ledger: Ledger,
  catalogue: Catalogue,
  available: ReadonlyMap<string, Available>,
  soon: ReadonlySet<string>,
): RequestFood[] {
  const freely = ledger.of('food-preferred').filter((fact) => fact.data.planFreely === true);
  const ids = new Set([...available.keys(), ...freely.map((fact) => fact.data.food)]);
  return [...ids].flatMap((id) => {
    const food = catalogue.food(id);
    const planned =
      food && plannedFood(food, available.get(id), catalogue.preference(id)?.planFreely === true);
    return planned ? [soon.has(id) ? { ...planned, dislike: SPENT_FIRST } : planned] : [];
  });
}

/** Putting a food that must go soon on a plate costs this much less (common practice, no source). */
const SPENT_FIRST = -4;

/** Foods and batches of which something is to be eaten next. */
function mustGoSoon(stock: Stock): ReadonlySet<string> {
  const foods = stock.foods.filter(({ reading }) => reading.state === 'use soon').map(({ food }) => food);
  const batches = stock.batches
    .filter(({ containers }) => containers.some(({ reading }) => reading.state === 'use soon'))
    .map(({ batch }) => batchFoodId(batch.batch));
  return new Set([...foods, ...batches]);
}

function plannedFood(
  food: CatalogueFood,
  stock: Available | undefined,
  freely: boolean,
): RequestFood | undefined {
  const onHandG = stock ? stock.readyG + (food.storage === 'frozen-produce' ? stock.frozenG : 0) : 0;
  if (!freely && (COOKED_FIRST.includes(food.storage) || onHandG <= 0)) return undefined;
  const { minG, maxG, unitG } = food.serving;
  const portionsG = (stock?.portions ?? [])
    .map((portion) => roundTo(portion.grams, 0))
    .filter((grams) => grams >= 1);
  const base = {
    id: food.id,
    per100g: knownNutrients(food.per100g),
    minG,
    maxG,
    asked: false,
    banned: false,
    dislike: 0,
  };
  if (portionsG.length > 0) {
    const largest = Math.max(...portionsG);
    return {
      ...base,
      minG: Math.min(minG, ...portionsG),
      maxG: Math.max(maxG, largest),
      portionsG: portionsG.slice(0, 40),
    };
  }
  return {
    ...base,
    ...(unitG !== undefined && { unitG }),
    ...(!freely && { availableG: Math.floor(onHandG) }),
  };
}

import type { Grams } from '../units/quantities.ts';
import { batchFoodId } from './cooked-batch.ts';
import type { ShelfReading } from './shelf-life.ts';
import type { Stock } from './stock.ts';

export interface Available {
  /** Can go on a plate now. */
  readonly readyG: Grams;
  /** Would have to be thawed. */
  readonly frozenG: Grams;
  /** Packed portions that can go on a plate now, in the order they should go. */
  readonly portions: readonly { readonly portion: number; readonly grams: Grams }[];
}

const usable = (reading: ShelfReading) => reading.state !== 'out' && reading.state !== 'frozen';

/** What of the stock may be eaten, by catalogue id; what is out is never offered (BAT-35). Foods not in stock are absent. */
export function availableFoods(stock: Stock): ReadonlyMap<string, Available> {
  const found = new Map<string, Available>();
  const add = (id: string, grams: Grams, reading: ShelfReading, portion?: number) => {
    const before = found.get(id) ?? { readyG: 0, frozenG: 0, portions: [] };
    const ready = usable(reading) ? grams : 0;
    const packed = portion !== undefined && portion > 0 && ready > 0;
    found.set(id, {
      readyG: before.readyG + ready,
      frozenG: before.frozenG + (reading.state === 'frozen' ? grams : 0),
      portions: packed ? [...before.portions, { portion, grams }] : before.portions,
    });
  };
  for (const { food, grams, reading } of stock.foods) add(food, grams, reading);
  for (const { batch, containers } of stock.batches) {
    for (const { portion, grams, reading } of containers)
      add(batchFoodId(batch.batch), grams, reading, portion);
  }
  return found;
}

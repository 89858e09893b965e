import type { Fact, Ledger } from '../journal/ledger.ts';
import {
  moveContainer,
  openBatch,
  pack,
  reweigh,
  takeFromBatch,
  type BatchContainers,
} from './batch-containers.ts';
import { batchFoodId, type CookedBatch } from './cooked-batch.ts';
import { eventsOf, type KitchenEvent } from './kitchen-event.ts';
import type { Say } from './stock-notes.ts';

export type OpenBatches = Map<string, BatchContainers>;

/** Everything that happens to cooked batches but being eaten: cooked, packed, weighed again, moved. */
export function batchEvents(
  ledger: Ledger,
  batches: ReadonlyMap<string, CookedBatch>,
  open: OpenBatches,
  say: Say,
  untilMs: number,
): KitchenEvent[] {
  return [
    ...eventsOf(ledger.of('batch-cooked'), untilMs, ({ data, entry }) => {
      const batch = batches.get(data.batch);
      if (batch?.entry === entry.id) open.set(batch.batch, openBatch(batch));
    }),
    ...eventsOf(ledger.of('batch-portioned'), untilMs, ({ data, entry, epochMs }) => {
      const of = open.get(data.batch);
      if (of) say(batchFoodId(data.batch), epochMs, pack(of, data.portionsG, data.place, epochMs, entry.id));
    }),
    ...eventsOf(ledger.of('batch-reweighed'), untilMs, ({ data, entry, epochMs }) => {
      const of = open.get(data.batch);
      if (!of) return;
      const problem = reweigh(of, data.portion ?? 0, data.leftG, epochMs, entry.id);
      say(batchFoodId(data.batch), epochMs, problem);
    }),
    ...eventsOf(ledger.of('portion-moved'), untilMs, ({ data, epochMs }) => {
      const of = open.get(data.batch);
      if (of) moveContainer(of, data.portion ?? 0, data.to, epochMs, data);
    }),
  ];
}

/** What a meal takes from the batches. */
export function eatFromBatches(fact: Fact<'meal-eaten'>, open: OpenBatches, say: Say): void {
  for (const item of fact.data.items) {
    const of = item.source === 'batch' ? open.get(item.batch) : undefined;
    if (item.source !== 'batch' || !of) continue;
    const problem = takeFromBatch(of, item.portion, item.grams, fact.entry.id);
    say(batchFoodId(item.batch), fact.epochMs, problem);
  }
}

import type { Ledger } from '../journal/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import {
  moveContainer,
  openBatch,
  pack,
  reweigh,
  takeFromBatch,
  type BatchContainers,
} from './batch-containers.ts';
import type { CookedBatch } from './cooked-batch.ts';
import { eventOf, type KitchenEvent } from './kitchen-event.ts';

export type OpenBatches = Map<string, BatchContainers>;

/** Everything that happens to cooked batches: cooked, packed, weighed again, moved, eaten. */
export function batchEvents(
  ledger: Ledger,
  batches: ReadonlyMap<string, CookedBatch>,
  open: OpenBatches,
  notes: Problem[],
): KitchenEvent[] {
  const say = (problem: Problem | undefined) => {
    if (problem) notes.push(problem);
  };
  const events: KitchenEvent[] = [];
  for (const fact of ledger.of('batch-cooked')) {
    const batch = batches.get(fact.data.batch);
    if (batch?.entry === fact.entry.id)
      events.push(eventOf(fact, () => open.set(batch.batch, openBatch(batch))));
  }
  for (const fact of ledger.of('batch-portioned')) {
    const { batch, portionsG, place } = fact.data;
    events.push(
      eventOf(fact, () => {
        const of = open.get(batch);
        if (of) say(pack(of, portionsG, place, fact.epochMs, fact.entry.id));
      }),
    );
  }
  for (const fact of ledger.of('batch-reweighed')) {
    const { batch, portion = 0, leftG } = fact.data;
    events.push(
      eventOf(fact, () => {
        const of = open.get(batch);
        if (of) say(reweigh(of, portion, leftG, fact.epochMs, fact.entry.id));
      }),
    );
  }
  for (const fact of ledger.of('portion-moved')) {
    const { batch, portion = 0, to } = fact.data;
    events.push(
      eventOf(fact, () => {
        const of = open.get(batch);
        if (of) moveContainer(of, portion, to, fact.epochMs, fact.data);
      }),
    );
  }
  return [...events, ...eatenFromBatches(ledger, open, say)];
}

function eatenFromBatches(
  ledger: Ledger,
  open: OpenBatches,
  say: (problem: Problem | undefined) => void,
): KitchenEvent[] {
  const events: KitchenEvent[] = [];
  for (const fact of ledger.of('meal-eaten')) {
    for (const item of fact.data.items) {
      if (item.source !== 'batch') continue;
      events.push(
        eventOf(fact, () => {
          const of = open.get(item.batch);
          if (of) say(takeFromBatch(of, item.portion, item.grams, fact.entry.id));
        }),
      );
    }
  }
  return events;
}

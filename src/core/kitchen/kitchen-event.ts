import type { Fact } from '../journal/ledger.ts';
import type { KnownKind } from '../journal/kinds/registry.ts';

/** A fact of the kitchen with what it does to the stock. */
export interface KitchenEvent {
  readonly atMs: number;
  readonly stamp: string;
  readonly happen: () => void;
}

/** Facts of one kind, all doing the same thing to the stock. */
export function eventsOf<Kind extends KnownKind>(
  facts: readonly Fact<Kind>[],
  untilMs: number,
  happen: (fact: Fact<Kind>) => void,
): KitchenEvent[] {
  const events: KitchenEvent[] = [];
  for (const fact of facts) {
    if (fact.epochMs > untilMs) continue;
    events.push({ atMs: fact.epochMs, stamp: fact.entry.stamp, happen: () => happen(fact) });
  }
  return events;
}

/** Lets events happen in the order they did, those of one moment in the order they were written. */
export function play(events: KitchenEvent[]): void {
  // Kinds come sorted, so this is a merge of runs, not a sort from scratch.
  events.sort((a, b) => a.atMs - b.atMs || (a.stamp < b.stamp ? -1 : a.stamp > b.stamp ? 1 : 0));
  for (const event of events) event.happen();
}

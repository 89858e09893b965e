import type { Fact } from '../journal/ledger.ts';

/** A fact of the kitchen with what it does to the stock. */
export interface KitchenEvent {
  readonly atMs: number;
  readonly stamp: string;
  readonly apply: () => void;
}

export function eventOf(fact: Fact, apply: () => void): KitchenEvent {
  return { atMs: fact.epochMs, stamp: fact.entry.stamp, apply };
}

/** Lets events happen in the order they did, those of one moment in the order they were written, up to a moment. */
export function play(events: KitchenEvent[], untilMs: number): void {
  const due = events.filter((event) => event.atMs <= untilMs);
  due.sort((a, b) => a.atMs - b.atMs || (a.stamp < b.stamp ? -1 : a.stamp > b.stamp ? 1 : 0));
  for (const event of due) event.apply();
}

import type { Ledger } from '../journal/ledger.ts';
import type { Problem } from '../problems/problem.ts';
import { batchFoodId } from './cooked-batch.ts';

/** Something in the log that does not agree with the scale. */
export interface StockNote {
  /** Catalogue id of the food or batch. */
  readonly subject: string;
  readonly atMs: number;
  readonly problem: Problem;
}

export type Say = (subject: string, atMs: number, problem: Problem | undefined) => void;

/** Older ones help nobody: what was there then is eaten or gone. Common practice, no source. */
const NEWS_MS = 7 * 86_400_000;

export function noteTo(notes: StockNote[]): Say {
  return (subject, atMs, problem) => {
    if (problem) notes.push({ subject, atMs, problem });
  };
}

/** Notes of the last week that no later count or weighing has answered (BAT-65). */
export function openNotes(notes: readonly StockNote[], ledger: Ledger, atMs: number): Problem[] {
  const answeredMs = new Map<string, number>();
  const answer = (subject: string, whenMs: number) => {
    if (whenMs <= atMs) answeredMs.set(subject, Math.max(whenMs, answeredMs.get(subject) ?? whenMs));
  };
  for (const fact of ledger.of('stock-counted')) answer(fact.data.food, fact.epochMs);
  for (const fact of ledger.of('batch-reweighed')) answer(batchFoodId(fact.data.batch), fact.epochMs);
  return notes
    .filter(
      (note) => note.atMs > atMs - NEWS_MS && !((answeredMs.get(note.subject) ?? note.atMs) > note.atMs),
    )
    .map((note) => note.problem);
}

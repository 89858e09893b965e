import { composeEntry } from '#core/journal/compose-entry.ts';
import type { Entry } from '#core/journal/entry.ts';
import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import { formatDate } from '#core/units/civil-date.ts';

/** Sunday, 7 March 2027, 18:00 UTC: hour 0 of every kitchen journal. */
export const HOUR_0_MS = 1_804_442_400_000;
export const HOUR_MS = 3_600_000;

export type KitchenStep = {
  readonly [Kind in KnownKind]: readonly [hours: number, kind: Kind, data: DataOf<Kind>];
}[KnownKind];

/** The moment so many hours after hour 0. */
export const hour = (hours: number): number => HOUR_0_MS + hours * HOUR_MS;

/** Entries written at so many hours after hour 0, each held against its kind. */
export function kitchenEntries(steps: readonly KitchenStep[]): Entry[] {
  return steps.map(([hours, kind, data], index) => {
    const atMs = Math.round(hour(hours));
    const entry = composeEntry({
      kind,
      data,
      day: formatDate(Math.floor(atMs / 86_400_000)),
      atMs,
      nowMs: HOUR_0_MS + index * 1000,
      offsetMinutes: 0,
      zone: 'UTC',
      device: 'kitchen',
      writer: 'kitchen',
      random: Uint8Array.from({ length: 10 }, (_, byte) => (index * 31 + byte * 7) % 256),
      latestStamp: undefined,
    });
    if (!entry.ok) throw new Error(`${entry.problem.path}: ${entry.problem.message}`);
    return entry.value;
  });
}

/** A journal of the kitchen. */
export function kitchenJournal(...steps: readonly KitchenStep[]): GrowingLedger {
  return createLedger(kitchenEntries(steps));
}

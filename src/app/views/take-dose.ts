import type { DoseItem } from '#core/cycle/doses-of-day.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { today } from '../state/clock.ts';
import { record, recordAll, type NewFact, type Saved } from '../state/open-journal.ts';

/** Taken with one tap: all of them at once, and one undo takes all of it back. */
export function takeDoses(items: readonly DoseItem[], at?: ClockMinutes): Promise<Saved> {
  const facts = items.map(
    ({ supplement, units, regimen, slot }): NewFact => ({
      kind: 'supplement-taken',
      data: { supplement, units, regimen, ...(slot === undefined ? {} : { slot }) },
      ...(at === undefined ? {} : { day: today.peek(), clock: at }),
    }),
  );
  const [only] = items;
  return recordAll(facts, {
    says: items.length === 1 && only ? `${only.name} taken` : `${items.length} supplements taken`,
  });
}

export function skipDose(
  { supplement, regimen, name }: Pick<DoseItem, 'supplement' | 'regimen' | 'name'>,
  reason: string,
): Promise<Saved> {
  return record('supplement-skipped', { supplement, regimen, reason }, { says: `${name} skipped` });
}

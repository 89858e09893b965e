import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import type { Entry } from '#core/journal/entry.ts';
import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import { addDays } from '#core/units/civil-date.ts';

/** Writes a journal of training by hand: each line gets the next stamp and name. */
export interface GymJournal {
  readonly ledger: GrowingLedger;
  /** `at` is "HH:MM:SS" or "HH:MM" of the day; UTC. Returns the entry's id. */
  write<Kind extends KnownKind>(
    at: string,
    kind: Kind,
    data: DataOf<Kind>,
    more?: { readonly device?: string; readonly replaces?: string },
  ): string;
  /** Further lines stand on the day so many days after the first. */
  onDay(offset: number): string;
}

export function gymJournal(firstDay = '2027-03-01'): GymJournal {
  const ledger = createLedger();
  let day = firstDay;
  let count = 0;
  return {
    ledger,
    onDay(offset) {
      day = addDays(firstDay, offset);
      return day;
    },
    write(at, kind, data, more = {}) {
      count += 1;
      const id = `entry-${String(count).padStart(5, '0')}`;
      const entry: Entry = {
        id,
        stamp: `2027-01-01T00:00:00.000Z-${count.toString(16).padStart(4, '0')}-test`,
        device: more.device ?? 'phone-a',
        kind,
        day,
        at: `${day}T${at.length === 5 ? `${at}:00` : at}+00:00`,
        zone: 'Atlantic/Azores',
        data,
        ...(more.replaces === undefined ? {} : { replaces: more.replaces }),
      };
      ledger.add([entry]);
      return id;
    },
  };
}

type Load = DataOf<'set-done'>['load'];

/** A set with a load on a bar, in as few words as a test needs. */
export function barSet(
  exercise: string,
  kg: number,
  reps: number,
  more: Partial<DataOf<'set-done'>> = {},
): DataOf<'set-done'> {
  const load: Load = { of: 'kg', kg };
  return { session: 'monday', exercise, set: 'working', load, reps, ...more };
}

import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { addDays } from '#core/units/civil-date.ts';

/** How one felt on a day: the last note of each thing counts. */
export interface FeltDay {
  readonly day: string;
  readonly felt: Omit<DataOf<'feeling-noted'>, 'note'>;
}

export const measures = [
  'restingHeartRateBpm',
  'sleepHours',
  'sleepQuality',
  'libido',
  'mood',
  'cold',
  'hunger',
  'jointPain',
] as const;
export type Measure = (typeof measures)[number];

/** Days with a note, ascending; several notes of one day are one. */
export function feltDays(ledger: Ledger, from: string, until: string): readonly FeltDay[] {
  const byDay = new Map<string, Partial<Record<Measure, number>>>();
  for (const { day, data } of ledger.of('feeling-noted')) {
    if (day < from || day > until) continue;
    const felt = byDay.get(day) ?? {};
    for (const measure of measures) {
      const value = data[measure];
      if (value !== undefined) felt[measure] = value;
    }
    byDay.set(day, felt);
  }
  return [...byDay].map(([day, felt]) => ({ day, felt }));
}

export interface Mean {
  readonly mean: number;
  readonly days: number;
}

/** Mean of one measure over the days that have it; undefined where none has. */
export function meanOf(days: readonly FeltDay[], measure: Measure): Mean | undefined {
  const values = days.map(({ felt }) => felt[measure]).filter((value) => value !== undefined);
  if (values.length === 0) return undefined;
  return { mean: values.reduce((sum, value) => sum + value, 0) / values.length, days: values.length };
}

/** First days of bleeding, ascending, and whether their absence was noted. */
export function cyclesIn(
  ledger: Ledger,
  until: string,
): { readonly began: readonly string[]; readonly absentNotedOn?: string } {
  const noted = ledger.of('cycle-noted').filter(({ day }) => day <= until);
  const began = noted.filter(({ data }) => data.event === 'menses began').map(({ day }) => day);
  const absent = noted.filter(({ data }) => data.event === 'no menses for three months').at(-1)?.day;
  const stillAbsent = absent !== undefined && !began.some((day) => day > absent);
  return { began, ...(stillAbsent ? { absentNotedOn: absent } : {}) };
}

/** The seven days that end a week begun on `week`. */
export function lastDayOf(week: string): string {
  return addDays(week, 6);
}

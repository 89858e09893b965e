import type { DoseItem } from '#core/cycle/doses-of-day.ts';

/** "2 capsules", "1 g", "0.5 scoops". */
export function unitsWords(units: number, unit: string): string {
  const short: Readonly<Record<string, string>> = { gram: 'g', millilitre: 'mL' };
  const name = short[unit] ?? (units === 1 ? unit : unit.endsWith('s') ? unit : `${unit}s`);
  return `${Number(units.toPrecision(4))} ${name}`;
}

/** "Vitamin D3, 1 softgel". */
export function doseWords({ name, units, unit }: Pick<DoseItem, 'name' | 'units' | 'unit'>): string {
  return `${name}, ${unitsWords(units, unit)}`;
}

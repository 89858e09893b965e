import type { Percent } from '../units/quantities.ts';
import { derivedYields } from './data/derived-yields.ts';
import { legumeRatios } from './data/legume-ratios.ts';
import { publishedYields } from './data/published-yields.ts';
import type { SourceKey } from './sources.ts';
import { tableFoodId } from './table-food.ts';
import { cellList, cellNumber, cellWord, readTextTable, requiredNumber } from './text-table.ts';

/** How a row was come by: weighed and published, or worked out from raw and cooked samples. */
export type YieldBasis = 'published' | 'protein' | 'dry-matter' | 'legume-ratio';

export interface YieldRow {
  /** The name a batch's ingredient gives as its `form`. */
  readonly form: string;
  readonly name: string;
  /** Foods of the table it fits, by id. */
  readonly rawFoods: readonly string[];
  /** USDA number of the cooked sample; it names the row too. */
  readonly ndb?: string;
  /** Cooked weight in percent of raw weight. */
  readonly percent: Percent;
  /** What a home pan may come to. */
  readonly band: { readonly low: Percent; readonly high: Percent; readonly source: SourceKey };
  readonly basis: YieldBasis;
  readonly samples?: number;
  readonly sd?: Percent;
  /** Percent of the RAW weight, negative when lost. */
  readonly moistureChange?: Percent;
  readonly fatChange?: Percent;
  readonly year?: number;
  readonly source: SourceKey;
}

const foodIds = (cell: string | undefined) => cellList(cell, ' ').map(tableFoodId);

/**
 * Columns: form | name | raw foods | USDA number of the cooked sample | yield %, min, max | n | SD | moisture change,
 * fat change in % of raw weight | year of the data.
 * Four samples understate the spread, so the band is the published range or two SD, whichever reaches further;
 * single samples get ten points either way (common practice, no source).
 */
const published: readonly YieldRow[] = readTextTable(publishedYields, 12).map((cells) => {
  const [form = '', name = '', raw, ndb, yieldCell, minCell, maxCell, n, sdCell, moisture, fat, year] = cells;
  const percent = requiredNumber(yieldCell);
  const [min, max, sd] = [cellNumber(minCell), cellNumber(maxCell), cellNumber(sdCell) ?? 0];
  const known = min !== undefined && max !== undefined;
  const row: YieldRow = {
    form,
    name,
    rawFoods: foodIds(raw),
    percent,
    band: known
      ? {
          low: Math.min(min, percent - 2 * sd),
          high: Math.max(max, percent + 2 * sd),
          source: 'usda-yields-2014',
        }
      : { low: percent - 10, high: percent + 10, source: 'common-practice' },
    basis: 'published',
    year: requiredNumber(year),
    source: 'usda-yields-2014',
  };
  return {
    ...row,
    ...(ndb !== undefined && ndb !== '-' && { ndb }),
    ...ifKnown('samples', cellNumber(n)),
    ...ifKnown('sd', cellNumber(sdCell)),
    ...ifKnown('moistureChange', cellNumber(moisture)),
    ...ifKnown('fatChange', cellNumber(fat)),
  };
});

/**
 * Columns: form | name | raw food | cooked food | yield % | held equal | pair measured or imputed | fat change.
 * Meat, fish and potatoes: ten points either way. What takes up water is the cook's choice: from seven tenths to
 * one and a half times the sample's (both common practice, no source).
 */
const derived: readonly YieldRow[] = readTextTable(derivedYields, 8).map((cells) => {
  const [form = '', name = '', raw, ndb = '', yieldCell, basis, , fat] = cells;
  const percent = requiredNumber(yieldCell);
  const takesUpWater = percent > 150;
  return {
    form,
    name,
    rawFoods: foodIds(raw),
    ndb,
    percent,
    band: {
      low: takesUpWater ? percent * 0.7 : percent - 10,
      high: takesUpWater ? percent * 1.5 : percent + 10,
      source: 'common-practice',
    },
    basis: cellWord(basis, ['protein', 'dry-matter']),
    ...ifKnown('fatChange', cellNumber(fat)),
    source: 'usda-sr28',
  };
});

const legumes: readonly YieldRow[] = readTextTable(legumeRatios, 4).map((cells) => {
  const [form = '', name = '', raw, ratio] = cells;
  const percent = requiredNumber(ratio) * 100;
  return {
    form,
    name,
    rawFoods: foodIds(raw),
    percent,
    band: { low: percent * 0.7, high: percent * 1.5, source: 'common-practice' },
    basis: 'legume-ratio',
    source: 'usda-sr28-legumes',
  };
});

/** All yields: 56 published for meat and poultry, those worked out from samples, 18 ratios of legumes. */
export const yieldRows: readonly YieldRow[] = [...published, ...derived, ...legumes];

// A row answers to its form and to the number of its cooked sample; a weighed row comes before a worked-out one.
const byName = new Map<string, YieldRow>();
for (const row of yieldRows) byName.set(row.form, row);
for (const row of yieldRows) if (row.ndb !== undefined && !byName.has(row.ndb)) byName.set(row.ndb, row);

/** Every name a row answers to. */
export const yieldFormNames: readonly string[] = [...byName.keys()];

/** The row a batch's `form` names: its form, or the USDA number of its cooked sample. */
export function yieldRow(form: string): YieldRow | undefined {
  return byName.get(form);
}

/** Yields that fit a raw food of the table, weighed ones first. */
export function yieldRowsFor(foodId: string): readonly YieldRow[] {
  return yieldRows.filter((row) => row.rawFoods.includes(foodId));
}

function ifKnown<Key extends string>(key: Key, value: number | undefined): Partial<Record<Key, number>> {
  const part: Partial<Record<Key, number>> = {};
  if (value !== undefined) part[key] = value;
  return part;
}

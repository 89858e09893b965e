import type { Ledger } from '#core/journal/ledger.ts';
import { addDays, daysBetween } from '#core/units/civil-date.ts';
import { roundTo } from '#core/units/rounding.ts';
import { isDue, productsIn, regimensIn, type Regimen } from './regimens.ts';

export interface StockOptions {
  readonly today: string;
  /** The show date the stock is held against. */
  readonly show?: string;
  /** Whether a day to come is a training day; undefined or absent: not known, and counted as used. */
  readonly trainingOn?: (date: string) => boolean | undefined;
}

/** What is left of one product, and how long it lasts. */
export interface SupplementStock {
  readonly supplement: string;
  readonly name: string;
  readonly unit: string;
  /** Absent: never counted nor bought, so not known. */
  readonly left?: number;
  /** Day of the count it starts from, or of the first purchase. */
  readonly countedOn?: string;
  /** More was taken than was there: a count is due. */
  readonly belowZero: boolean;
  /** Units a day over the next four weeks, by the regimens as they stand. */
  readonly usedPerDay: number;
  /** First day with a dose that the stock no longer covers; absent: beyond two years, or nothing is used. */
  readonly runsOutOn?: string;
  /** Days before the show that it runs out; absent: it lasts, or there is no show, or it is not known. */
  readonly daysBeforeShow?: number;
  /** Units to buy so that it lasts to the show day. */
  readonly missingForShow?: number;
  readonly words: string;
}

const FAR_DAYS = 730;
const USE_DAYS = 28;

/** Stock of every product that is not retired, by the last count, what was bought and taken since, and the regimens. */
export function supplementStock(ledger: Ledger, options: StockOptions): readonly SupplementStock[] {
  const regimens = regimensIn(ledger);
  return [...productsIn(ledger).values()]
    .filter(({ retired }) => retired !== true)
    .map(({ supplement, name, unit }) => {
      const own = regimens.filter((regimen) => regimen.supplement === supplement);
      const { left, countedOn, belowZero } = leftOf(ledger, supplement);
      const use = futureUse(ledger, own, options);
      const out = left === undefined ? undefined : runOut(left, use);
      const toShow = options.show === undefined ? undefined : neededUntil(use, options.today, options.show);
      const early =
        out !== undefined && options.show !== undefined ? daysBetween(out, options.show) : undefined;
      const missing = left === undefined || toShow === undefined ? undefined : Math.max(0, toShow - left);
      const stock = {
        supplement,
        name,
        unit,
        ...(left === undefined ? {} : { left: roundTo(left, 2) }),
        ...(countedOn === undefined ? {} : { countedOn }),
        belowZero,
        usedPerDay: roundTo(use.slice(0, USE_DAYS).reduce((sum, day) => sum + day.units, 0) / USE_DAYS, 2),
        ...(out === undefined ? {} : { runsOutOn: out }),
        ...(early !== undefined && early >= 0 ? { daysBeforeShow: early } : {}),
        ...(missing === undefined ? {} : { missingForShow: roundTo(missing, 2) }),
      };
      return { ...stock, words: wordsOf(stock, options) };
    });
}

function leftOf(
  ledger: Ledger,
  supplement: string,
): { left?: number; countedOn?: string; belowZero: boolean } {
  const counted = ledger.of('supplement-counted').filter(({ data }) => data.supplement === supplement);
  const bought = ledger.of('supplement-bought').filter(({ data }) => data.supplement === supplement);
  const start = counted.at(-1) ?? bought[0];
  if (!start) return { belowZero: false };
  // A count replaces all before it; a purchase starts from nothing and counts itself.
  const from = counted.at(-1)?.epochMs ?? Number.NEGATIVE_INFINITY;
  const since = (facts: readonly { epochMs: number; data: { units: number; supplement: string } }[]) =>
    facts
      .filter(({ epochMs, data }) => data.supplement === supplement && epochMs > from)
      .reduce((sum, { data }) => sum + data.units, 0);
  const left = (counted.at(-1)?.data.units ?? 0) + since(bought) - since(ledger.of('supplement-taken'));
  return { left: Math.max(0, left), countedOn: start.day, belowZero: left < -1e-9 };
}

interface UseOfDay {
  readonly date: string;
  readonly units: number;
}

/** Units each day to come, without today's doses that are done. */
function futureUse(
  ledger: Ledger,
  regimens: readonly Regimen[],
  { today, trainingOn }: StockOptions,
): UseOfDay[] {
  const doses = [...ledger.of('supplement-taken'), ...ledger.of('supplement-skipped')];
  const done = new Set(doses.filter(({ day }) => day === today).map(({ data }) => data.regimen));
  return Array.from({ length: FAR_DAYS }, (_, ahead) => {
    const date = addDays(today, ahead);
    const units = regimens
      .filter(
        (regimen) => isDue(regimen, date, trainingOn?.(date)) && !(ahead === 0 && done.has(regimen.regimen)),
      )
      .reduce((sum, regimen) => sum + regimen.units, 0);
    return { date, units };
  });
}

function runOut(left: number, use: readonly UseOfDay[]): string | undefined {
  let rest = left;
  for (const { date, units } of use) {
    rest -= units;
    if (rest < -1e-9) return date;
  }
  return undefined;
}

function neededUntil(use: readonly UseOfDay[], today: string, show: string): number {
  const days = Math.max(0, daysBetween(today, show) + 1);
  return use.slice(0, days).reduce((sum, { units }) => sum + units, 0);
}

function wordsOf(stock: Omit<SupplementStock, 'words'>, { show }: StockOptions): string {
  const { name, left, unit, runsOutOn, daysBeforeShow, missingForShow } = stock;
  if (left === undefined) return `${name}: not counted yet; count it once.`;
  const rest = `${name}: ${left} ${unit}${left === 1 ? '' : 's'} left`;
  if (runsOutOn === undefined)
    return `${rest}${stock.usedPerDay === 0 ? ', none planned' : ', more than enough'}.`;
  if (show === undefined) return `${rest}, runs out on ${runsOutOn}.`;
  return daysBeforeShow === undefined
    ? `${rest}, lasts to the show (runs out on ${runsOutOn}).`
    : `${rest}, runs out on ${runsOutOn}, ${daysBeforeShow === 0 ? 'on show day' : `${daysBeforeShow} days before the show`}: ${missingForShow} more are needed.`;
}

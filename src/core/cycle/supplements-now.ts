import type { SumAnswer } from '../health/supplements/sum-request.ts';
import { isPaused, productsIn, regimensIn, type Regimen } from '../health/supplements/regimens.ts';
import { refuseDose, type DoseRefusal } from '../health/supplements/refuse-dose.ts';
import { sumSupplements } from '../health/supplements/sum-supplements.ts';
import type { Product } from '../health/supplements/read-label.ts';
import { supplementStock, type SupplementStock } from '../health/supplements/supplement-stock.ts';
import { showsFrom } from '../course/read-course.ts';
import { shapeOfDay } from '../day/shape-of-day.ts';
import { athleteAt } from '../health/panel/panel-from-journal.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays, daysBetween } from '../units/civil-date.ts';
import { roundTo } from '../units/rounding.ts';

export interface RegimenNow {
  readonly regimen: Regimen;
  readonly paused: boolean;
  /** Never planned, whatever the day looks like. */
  readonly refusal?: DoseRefusal;
}

export interface ProductNow {
  readonly product: Product;
  readonly stock?: SupplementStock;
  /** Those that run today or begin later. */
  readonly regimens: readonly RegimenNow[];
}

/** Own products with their stock and regimens, oldest first; retired ones are left out (HLT-45). */
export function supplementsNow(ledger: Ledger, today: string): readonly ProductNow[] {
  const show = showsFrom(ledger, today)[0]?.date;
  const stock = supplementStock(ledger, {
    today,
    ...(show === undefined ? {} : { show }),
    trainingOn: trainingDays(ledger),
  });
  const regimens = regimensIn(ledger).filter(({ until }) => until === undefined || until >= today);
  return [...productsIn(ledger).values()]
    .filter(({ retired }) => retired !== true)
    .map((product) => {
      const own = stock.find(({ supplement }) => supplement === product.supplement);
      return {
        product,
        ...(own && { stock: own }),
        regimens: regimens
          .filter(({ supplement }) => supplement === product.supplement)
          .map((regimen) => {
            const refusal = refuseDose(product, regimen.units);
            return { regimen, paused: isPaused(regimen, today), ...(refusal && { refusal }) };
          }),
      };
    });
}

/** Whether a day has training, each day worked out once: every product asks for two years of them. */
function trainingDays(ledger: Ledger): (date: string) => boolean | undefined {
  const known = new Map<string, boolean | undefined>();
  return (date) => {
    if (!known.has(date)) {
      const shape = shapeOfDay(ledger, date);
      known.set(date, shape && shape.training !== undefined);
    }
    return known.get(date);
  };
}

/** Drinks are looked at so far back for the caffeine of a day. */
const DRINK_DAYS = 14;

/**
 * What a usual day's products add up to, by the regimens as they stand, pauses left aside (HLT-46). Food holds no vitamins or
 * minerals in this journal but sodium and potassium: a limit that counts food says so. Undefined before anyone is described.
 */
export function sumsNow(ledger: Ledger, today: string): SumAnswer | undefined {
  const athlete = athleteAt(ledger, today);
  if (!athlete || athlete.age < 18) return undefined;
  const products = supplementsNow(ledger, today);
  const massKg = ledger.latest('body-weighed')?.data.massKg;
  const caffeine = drinkCaffeineMg(ledger, today);
  const running = products.map(({ product, regimens }) => ({
    product,
    regimens: regimens.map(({ regimen }) => regimen).filter(({ from }) => from <= today),
  }));
  const sums = sumSupplements({
    athlete: { ...athlete, ...(massKg !== undefined && { massKg }) },
    products: products.map(({ product }) => product),
    intakes: running
      .filter(({ regimens }) => regimens.length > 0)
      .map(({ product, regimens }) => ({
        supplement: product.supplement,
        unitsPerDay: roundTo(
          regimens.reduce((sum, regimen) => sum + unitsPerDay(ledger, regimen, today), 0),
          3,
        ),
        unitsPerDose: Math.max(...regimens.map(({ units }) => units)),
      })),
    ...(caffeine !== undefined && { drinksCaffeineMg: caffeine }),
  });
  return sums.ok ? sums.value : undefined;
}

/** The mean over a week; a day whose shape is not known counts as one with a dose. */
function unitsPerDay(ledger: Ledger, { cadence, units }: Regimen, today: string): number {
  switch (cadence.of) {
    case 'every day':
      return units;
    case 'every n-th day':
      return units / cadence.days;
    case 'weekdays':
      return (units * new Set(cadence.weekdays).size) / 7;
    case 'training days':
    case 'rest days': {
      const wanted = cadence.of === 'training days';
      const days = Array.from({ length: 7 }, (_, ahead) => shapeOfDay(ledger, addDays(today, ahead)));
      const dosed = days.filter((shape) => !shape || (shape.training !== undefined) === wanted).length;
      return (units * dosed) / 7;
    }
  }
}

/** The most caffeine out of drinks on one of the last days that has any drink noted; undefined where none has. */
function drinkCaffeineMg(ledger: Ledger, today: string): number | undefined {
  const sums = new Map<string, number>();
  for (const { day, data } of ledger.of('water-drunk')) {
    const back = daysBetween(day, today);
    if (back < 0 || back >= DRINK_DAYS) continue;
    sums.set(day, (sums.get(day) ?? 0) + (data.caffeineMg ?? 0));
  }
  return sums.size === 0 ? undefined : Math.max(...sums.values());
}

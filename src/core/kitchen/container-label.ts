import { answered, refused, type Outcome } from '../problems/problem.ts';
import { formatInstant } from '../units/format-instant.ts';
import type { Grams, Minutes } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { nutrientNames, nutrientWords, scaleTotal, type NutrientName } from './nutrients.ts';
import type { ShelfState } from './shelf-life.ts';
import type { Stock } from './stock.ts';

/** What stands on a box, as data: to be read on the screen, printed, or written on by hand. */
export interface ContainerLabel {
  readonly name: string;
  /** 0 is the pan. */
  readonly portion: number;
  readonly grams: Grams;
  readonly nutrients: readonly LabelLine[];
  /** Raw weights behind it. */
  readonly raw: readonly { readonly name: string; readonly grams: Grams }[];
  /** RFC 3339 with the local offset. */
  readonly cookedAt: string;
  /** Absent while frozen and where no clock runs. */
  readonly useBy?: string;
  readonly state: ShelfState;
  readonly place: string;
  readonly hints: readonly string[];
}

export interface LabelLine {
  readonly nutrient: NutrientName;
  readonly label: string;
  readonly amount: number;
  readonly unit: string;
  /** Not every ingredient stated it: the figure is a lower bound. */
  readonly atLeast: boolean;
}

/** The label of a container in stock (BAT-36). `offsetMinutes` is the local offset from UTC. */
export function containerLabel(
  stock: Stock,
  batchId: string,
  portion: number,
  offsetMinutes: Minutes,
): Outcome<ContainerLabel> {
  const found = stock.batches.find(({ batch }) => batch.batch === batchId);
  const container = found?.containers.find((one) => one.portion === portion);
  if (!found || !container) {
    return refused(
      'kitchen/no-such-portion',
      'portion',
      `There is nothing left of portion ${portion} of this batch.`,
      'Pick a container that is in stock.',
    );
  }
  const { batch } = found;
  const total = scaleTotal(batch.balance.per100gCooked, (container.grams / 100) * container.strength);
  const share = (container.grams * container.strength) / batch.balance.cookedG;
  const { useByMs, state } = container.reading;
  return answered({
    name: batch.name,
    portion,
    grams: container.grams,
    nutrients: nutrientNames.flatMap((nutrient) => {
      const amount = total.nutrients[nutrient];
      const atLeast = total.atLeast.some((name) => name === nutrient);
      return amount === undefined
        ? []
        : [{ nutrient, ...nutrientWords[nutrient], amount: roundTo(amount, decimalsOf(nutrient)), atLeast }];
    }),
    raw: batch.ingredients.map(({ name, rawG }) => ({ name, grams: roundTo(rawG * share, 1) })),
    cookedAt: formatInstant(batch.cookedAtMs, offsetMinutes),
    ...(useByMs !== undefined && { useBy: formatInstant(useByMs, offsetMinutes) }),
    state,
    place: container.place,
    hints: batch.storage.hints.map((hint) => hint.text),
  });
}

function decimalsOf(nutrient: NutrientName): number {
  return nutrientWords[nutrient].unit === 'g' ? 1 : 0;
}

import { answerEstimate } from '../body/estimate.ts';
import type { EstimateAnswer, EstimateDay, EstimateRequest } from '../body/estimate-request.ts';
import type { Fact, Ledger } from '../journal/ledger.ts';
import { sumNutrients } from '../kitchen/nutrients.ts';
import type { Outcome } from '../problems/problem.ts';
import { refused } from '../problems/problem.ts';
import type { Kilograms } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import type { ReadItem } from './day-sheet.ts';

/** What the body did up to a day, as the journal has it. */
export interface BodyNow {
  readonly weighed: readonly { readonly day: string; readonly massKg: Kilograms }[];
  /** The estimate over every day since the first weigh-in, or why there is none. */
  readonly estimate: Outcome<EstimateAnswer>;
}

/**
 * Reads the log as the estimate needs it (RUN-20): the first weigh-in of a day on an ordinary morning, food where the day was
 * totalled or closed as complete, body fat as measured. A day with only some of its meals is not a log of the day.
 */
export function bodyNow(ledger: Ledger, day: string, read: ReadItem): BodyNow {
  const weighed = firstOfDays(ledger.of('body-weighed').filter((fact) => fact.day <= day));
  return {
    weighed: weighed.map((fact) => ({ day: fact.day, massKg: fact.data.massKg })),
    estimate: estimateFrom(ledger, day, read),
  };
}

function estimateFrom(ledger: Ledger, day: string, read: ReadItem): Outcome<EstimateAnswer> {
  const who = ledger.latest('athlete-described')?.data;
  const first = ledger.of('body-weighed')[0]?.day;
  if (!who || first === undefined || first > day) {
    return refused(
      'body/never-weighed',
      'weighed',
      'There is no weigh-in yet.',
      'Weigh in on a few mornings; the estimate begins with the first.',
    );
  }
  const request: EstimateRequest = {
    athlete: { sex: who.sex, heightCm: who.heightCm, age: Number(day.slice(0, 4)) - who.birthYear },
    days: daysOf(ledger, day, first, read),
  };
  return answerEstimate(request);
}

function daysOf(ledger: Ledger, until: string, first: string, read: ReadItem): EstimateDay[] {
  const rows = new Map<string, EstimateDay>();
  const row = (day: string): EstimateDay => {
    const known = rows.get(day) ?? { date: day };
    rows.set(day, known);
    return known;
  };
  const within = ({ day }: { readonly day: string }) => day >= first && day <= until;
  for (const fact of firstOfDays(ledger.of('body-weighed').filter(within))) {
    const { massKg, circumstances } = fact.data;
    const line = row(fact.day);
    line.weightKg = massKg;
    if (circumstances?.includes('travelling') || circumstances?.includes('other scale'))
      line.travelling = true;
  }
  for (const { data } of ledger.of('intake-totalled')) {
    if (!within({ day: data.of })) continue;
    const { energyKcal, proteinG = 0, carbohydrateG = 0, fatG = 0, sodiumMg } = data;
    row(data.of).intake = {
      energyKcal,
      proteinG,
      carbohydrateG,
      fatG,
      ...(sodiumMg !== undefined && { sodiumMg }),
    };
  }
  for (const fact of ledger.of('day-closed').filter(within)) {
    if (fact.data.complete) row(fact.day).intake = eatenOn(ledger, fact.day, read);
  }
  for (const fact of ledger.of('body-fat-measured').filter(within)) {
    row(fact.day).bodyFat = { percent: fact.data.percent, method: fact.data.method };
  }
  return [...rows.values()].sort((a, b) => (a.date < b.date ? -1 : 1));
}

function eatenOn(ledger: Ledger, day: string, read: ReadItem): NonNullable<EstimateDay['intake']> {
  const meals = ledger.onDay(day).filter((fact): fact is Fact<'meal-eaten'> => fact.kind === 'meal-eaten');
  const amounts = meals.flatMap((meal) =>
    meal.data.items.flatMap((item) => read(item, meal.epochMs)?.amount ?? []),
  );
  const { nutrients, atLeast } = sumNutrients(amounts);
  const sodium = atLeast.includes('sodiumMg') ? undefined : nutrients.sodiumMg;
  return {
    energyKcal: roundTo(nutrients.energyKcal, 1),
    proteinG: roundTo(nutrients.proteinG, 1),
    carbohydrateG: roundTo(nutrients.carbohydrateG, 1),
    fatG: roundTo(nutrients.fatG, 1),
    ...(sodium !== undefined && { sodiumMg: roundTo(sodium, 0) }),
  };
}

/** The first reading of each day that was not taken clothed or after food; the first of all where there is no other. */
function firstOfDays(facts: readonly Fact<'body-weighed'>[]): Fact<'body-weighed'>[] {
  const ordinary = ({ data }: Fact<'body-weighed'>) =>
    !(data.circumstances?.includes('clothed') || data.circumstances?.includes('after food'));
  const chosen = new Map<string, Fact<'body-weighed'>>();
  for (const fact of facts) {
    const before = chosen.get(fact.day);
    if (!before || (!ordinary(before) && ordinary(fact))) chosen.set(fact.day, fact);
  }
  return [...chosen.values()];
}

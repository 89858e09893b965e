import { citation } from '#core/tables/sources.ts';
import type { NutrientLimits, UpperLimit } from '#core/tables/upper-limit.ts';
import { COPPER_ADI_MG_PER_KG, usLimitByAge } from '#core/tables/upper-limits.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { LimitCheck, SumRequest } from './sum-request.ts';

/** An amount of one nutrient out of products, with its form where the label says it. */
export interface FormAmount {
  readonly amount: number;
  readonly form?: string;
}

/** Both bodies' limits of a nutrient, held against what counts towards each. */
export function checkLimits(
  nutrient: NutrientLimits,
  amounts: readonly FormAmount[],
  food: number | undefined,
  athlete: SumRequest['athlete'],
): { us: LimitCheck[]; eu: LimitCheck[] } {
  const check = (limit: UpperLimit) => checkOne(limit, amounts, food);
  return {
    us: nutrient.us.map((limit) => check(atAge(nutrient.key, limit, athlete.age))),
    eu: nutrient.eu.map((limit) => check(ofMass(nutrient.key, limit, athlete.massKg))),
  };
}

function checkOne(limit: UpperLimit, amounts: readonly FormAmount[], food: number | undefined): LimitCheck {
  const fromProducts = amounts
    .filter(({ form }) => countsTowards(limit, form))
    .reduce((sum, { amount }) => sum + amount, 0);
  const foodCounts = limit.counted === 'all sources';
  const total = fromProducts + (foodCounts ? (food ?? 0) : 0);
  return {
    perDay: limit.perDay,
    counted: limit.counted,
    basis: limit.basis,
    total: roundTo(total, 3),
    percent: roundTo((total / limit.perDay) * 100, 1),
    over: limit.basis === 'dose of concern' ? total >= limit.perDay : total > limit.perDay * (1 + 1e-9),
    foodUnknown: foodCounts && food === undefined,
    ...(limit.words === undefined ? {} : { words: limit.words }),
    ...(limit.year === undefined ? {} : { year: limit.year }),
    evidence: limit.evidence,
    source: citation(limit.source),
  };
}

/** A form the label does not say counts towards every limit of a form: the safe side. */
export function countsTowards(limit: UpperLimit, form: string | undefined): boolean {
  return limit.forms === undefined || form === undefined || limit.forms.includes(form);
}

function atAge(key: string, limit: UpperLimit, age: number): UpperLimit {
  const changed = usLimitByAge[key];
  if (!changed || age < changed.fromAge) return limit;
  return { ...limit, perDay: changed.perDay, words: `from ${changed.fromAge} years` };
}

/** Copper's EU figure goes by body mass since 2022; without one the older level stands. */
function ofMass(key: string, limit: UpperLimit, massKg: number | undefined): UpperLimit {
  if (key !== 'copper' || massKg === undefined) return limit;
  return {
    ...limit,
    perDay: roundTo(COPPER_ADI_MG_PER_KG * massKg, 2),
    basis: 'safe level',
    evidence: 'from memory',
    words: `${COPPER_ADI_MG_PER_KG} mg per kg body mass`,
  };
}

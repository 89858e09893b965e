import { readShape } from '#core/problems/from-issues.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { caffeineLimits } from '#core/tables/caffeine-limits.ts';
import { citation } from '#core/tables/sources.ts';
import { strictLiability } from '#core/tables/substances.ts';
import type { Substance } from '#core/tables/substance.ts';
import type { NutrientLimits } from '#core/tables/upper-limit.ts';
import { roundTo } from '#core/units/rounding.ts';
import { checkLimits } from './check-limits.ts';
import { findSubstance, nutrientOf } from './find-substance.ts';
import { readLabel, type LabelPart, type Product } from './read-label.ts';
import { sumRequest, type SumAnswer, type SumRequest } from './sum-request.ts';

interface Share {
  readonly product: Product;
  readonly part: LabelPart;
  readonly unitsPerDay: number;
}

/**
 * What a day's products add up to (HLT-40 to HLT-44): every vitamin and mineral against the US and the EU limit side by
 * side, food only where the limit counts it, every substance with its cautions, caffeine by dose and by day.
 */
export function sumSupplements(input: unknown): Outcome<SumAnswer> {
  const shaped = readShape(sumRequest, input, 'health');
  if (!shaped.ok) return shaped;
  const request = shaped.value;
  const products = new Map(request.products.map((product) => [product.supplement, product]));
  const shares: Share[] = [];
  for (const [index, { supplement, unitsPerDay }] of request.intakes.entries()) {
    const product = products.get(supplement);
    if (!product) {
      return refused(
        'health/unknown-supplement',
        `intakes.${index}.supplement`,
        `No product "${supplement}" is described.`,
        'Add it to "products", or correct its name.',
      );
    }
    shares.push(...readLabel(product).map((part) => ({ product, part, unitsPerDay })));
  }
  const food = foodAmounts(request);
  if (!food.ok) return food;
  return answered(sum(request, shares, food.value));
}

/** Food by nutrient key; a name that no table knows is asked about. */
function foodAmounts(request: SumRequest): Outcome<ReadonlyMap<string, number>> {
  const amounts = new Map<string, number>();
  for (const [name, amount] of Object.entries(request.food ?? {})) {
    const found = findSubstance(name);
    if (found.kind !== 'nutrient') {
      return refused(
        'health/unknown-nutrient',
        `food.${name}`,
        `"${name}" is no nutrient that is known here.`,
        'Write its standard name, such as "iron" or "vitamin D".',
      );
    }
    amounts.set(found.nutrient.key, amount);
  }
  return answered(amounts);
}

function sum(request: SumRequest, shares: readonly Share[], food: ReadonlyMap<string, number>): SumAnswer {
  const byKey = new Map<string, Share[]>();
  for (const share of shares) {
    const { key } = share.part;
    if (key !== undefined) byKey.set(key, [...(byKey.get(key) ?? []), share]);
  }
  const nutrients: SumAnswer['nutrients'] = [];
  const substances: SumAnswer['substances'] = [];
  for (const [key, group] of byKey) {
    const found = group[0]?.part.found;
    if (found?.kind === 'nutrient')
      nutrients.push(nutrientRow(nutrientOf(key), group, food.get(key), request));
    else if (found?.kind === 'substance') substances.push(substanceRow(found.substance, group));
  }
  const caffeine = caffeineOf(request, shares);
  const answer = { nutrients, substances, notKnown: notKnown(shares), caffeine };
  return { ...answer, cautions: cautionsOf(request), why: whyOf(answer) };
}

function nutrientRow(
  nutrient: NutrientLimits,
  group: readonly Share[],
  food: number | undefined,
  request: SumRequest,
): SumAnswer['nutrients'][number] {
  const amounts = group.flatMap(({ part, unitsPerDay }) =>
    part.perUnit === undefined
      ? []
      : [{ amount: part.perUnit * unitsPerDay, ...(part.form === undefined ? {} : { form: part.form }) }],
  );
  const fed = nutrient.key === 'caffeine' ? request.drinksCaffeineMg : food;
  const { us, eu } = checkLimits(nutrient, amounts, fed, request.athlete);
  const formMatters = [...nutrient.us, ...nutrient.eu].some(({ forms }) => forms !== undefined);
  const unsaid = formMatters && amounts.some(({ form }) => form === undefined);
  const { caution } = nutrient;
  return {
    nutrient: nutrient.key,
    name: nutrient.name,
    unit: nutrient.unit,
    parts: group.map(partOf),
    supplements: roundTo(
      amounts.reduce((total, { amount }) => total + amount, 0),
      3,
    ),
    ...(fed === undefined ? {} : { food: fed }),
    duplicate: new Set(group.map(({ product }) => product.supplement)).size > 1,
    us,
    eu,
    ...(caution === undefined ? {} : { caution }),
    notes: unsaid
      ? ['A label does not say the form, so the amount counts towards every limit of a form.']
      : [],
  };
}

function substanceRow(substance: Substance, group: readonly Share[]): SumAnswer['substances'][number] {
  const known = group.every(({ part }) => part.perUnit !== undefined);
  const mg = group.reduce((total, { part, unitsPerDay }) => total + (part.perUnit ?? 0) * unitsPerDay, 0);
  return {
    substance: substance.key,
    name: substance.name,
    ...(known ? { mg: roundTo(mg, 3) } : {}),
    parts: group.map(partOf),
    duplicate: new Set(group.map(({ product }) => product.supplement)).size > 1,
    cautions: substance.cautions.map(({ words, source }) => ({ words, source: citation(source) })),
    ...(substance.inSport === undefined ? {} : { inSport: substance.inSport }),
  };
}

function partOf({ product, part, unitsPerDay }: Share): SumAnswer['nutrients'][number]['parts'][number] {
  return {
    supplement: product.supplement,
    name: product.name,
    ...(part.perUnit === undefined ? {} : { amount: roundTo(part.perUnit * unitsPerDay, 3) }),
    ...(part.form === undefined ? {} : { form: part.form }),
    ...(part.note === undefined ? {} : { note: part.note }),
  };
}

function notKnown(shares: readonly Share[]): SumAnswer['notKnown'] {
  return shares
    .filter(({ part }) => part.key === undefined)
    .map(({ product, part }) => ({
      supplement: product.supplement,
      name: product.name,
      printed: part.printed,
    }));
}

function caffeineOf(request: SumRequest, shares: readonly Share[]): SumAnswer['caffeine'] {
  const own = shares.filter(({ part }) => part.key === 'caffeine' && part.perUnit !== undefined);
  const products = own.reduce((total, { part, unitsPerDay }) => total + (part.perUnit ?? 0) * unitsPerDay, 0);
  const perDayMg = products + (request.drinksCaffeineMg ?? 0);
  const largestDoseMg = Math.max(
    0,
    ...own.map(({ product, part, unitsPerDay }) => {
      const intake = request.intakes.find(({ supplement }) => supplement === product.supplement);
      return (part.perUnit ?? 0) * (intake?.unitsPerDose ?? unitsPerDay);
    }),
  );
  const { perDayMg: limitPerDayMg, perDoseMg: limitPerDoseMg, doseSource } = caffeineLimits;
  return {
    perDayMg: roundTo(perDayMg, 1),
    limitPerDayMg,
    largestDoseMg: roundTo(largestDoseMg, 1),
    limitPerDoseMg,
    drinksUnknown: request.drinksCaffeineMg === undefined,
    over: perDayMg > limitPerDayMg || largestDoseMg > limitPerDoseMg,
    source: citation(doseSource),
  };
}

/** Strict liability goes with every list of products; so does the batch that nobody has tested. */
function cautionsOf(request: SumRequest): SumAnswer['cautions'] {
  const untested = request.products.filter(({ batchTested }) => batchTested !== true).map(({ name }) => name);
  const cautions = strictLiability.map(({ words, source }) => ({ words, source: citation(source) }));
  if (untested.length === 0) return cautions;
  return [
    ...cautions,
    { words: `No batch test is noted for: ${untested.join(', ')}.`, source: citation('geyer-2004') },
  ];
}

function whyOf(answer: Pick<SumAnswer, 'nutrients' | 'substances' | 'notKnown' | 'caffeine'>): string[] {
  const over = answer.nutrients.flatMap(({ name, unit, us, eu }) =>
    [...us.map((limit) => ['US', limit] as const), ...eu.map((limit) => ['EU', limit] as const)]
      .filter(([, limit]) => limit.over)
      .map(
        ([body, limit]) =>
          `${name}: ${limit.total} ${unit} a day is above the ${body} ${limit.basis} of ${limit.perDay} ${unit} (${limit.words ?? limit.counted}).`,
      ),
  );
  const twice = [...answer.nutrients, ...answer.substances].filter(({ duplicate }) => duplicate);
  const unknownFood = answer.nutrients.filter(({ us, eu }) =>
    [...us, ...eu].some(({ foodUnknown }) => foodUnknown),
  );
  return [
    `${answer.nutrients.length} nutrients and ${answer.substances.length} substances added up; ${over.length} limits passed.`,
    ...over,
    ...twice.map(({ name, parts }) => `${name} is in ${parts.map((part) => part.name).join(' and ')}.`),
    ...(unknownFood.length > 0
      ? [
          `Food is not known for ${unknownFood.map(({ name }) => name).join(', ')}: where it counts, the true total is higher.`,
        ]
      : []),
    ...(answer.notKnown.length > 0
      ? [`Not known here and not summed: ${answer.notKnown.map(({ printed }) => printed).join(', ')}.`]
      : []),
    `Caffeine: ${answer.caffeine.perDayMg} mg a day${answer.caffeine.drinksUnknown ? ' without drinks, which are not known' : ''}, largest dose ${answer.caffeine.largestDoseMg} mg.`,
  ];
}

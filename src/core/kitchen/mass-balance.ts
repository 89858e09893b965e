import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import type { PanCheck } from './batch-request.ts';
import { figure, listed, percentFigure } from './figure.ts';
import { scaleTotal, sumNutrients, type NutrientTotal } from './nutrients.ts';
import { macroGrams, waterPer100g, type Pan, type PanIngredient } from './pan.ts';
import { panBounds, panChecks } from './pan-checks.ts';

/** General factor of fat; drained fat leaves as fat (BAT-13). Source cfr-101-9. */
const KCAL_PER_G_FAT = 9;
/** Rounded labels of small servings may pass 100 g of macros a little. Common practice, no source. */
const MOST_MACROS_PER_100G = 105;
/** A scale and a list are never exact: what weighs more than this above the pan is impossible. */
const TOLERANCE = 1.02;
const TOLERANCE_G = 2;

/** What the pan came to, before it is portioned. */
export interface PanBalance {
  readonly rawG: Grams;
  readonly cookedG: Grams;
  /** Cooked weight per raw weight. */
  readonly yield: number;
  /** Nutrients of everything in the pan, drained fat taken off. */
  readonly total: NutrientTotal;
  readonly per100gCooked: NutrientTotal;
  readonly checks: readonly PanCheck[];
  readonly why: readonly string[];
}

/**
 * Mass balance of one pan (BAT-10 to BAT-16): nutrients stay but for drained fat, water is what changes. Refuses what
 * cannot be: a container heavier than what stands on it, more cooked than raw and water can come to, less than its solids
 * weigh, more fat drained than there was. What is only unlikely is answered and said in `checks`.
 */
export function balancePan(pan: Pan): Outcome<PanBalance> {
  const rawG = pan.ingredients.reduce((sum, one) => sum + one.rawG, 0);
  const cookedG = roundTo(pan.cookedGrossG - pan.containerG, 6);
  const impossible =
    overweightFood(pan.ingredients) ?? containerTooHeavy(pan, cookedG) ?? tooHeavy(pan, rawG, cookedG);
  if (impossible) return impossible;
  const raw = sumNutrients(
    pan.ingredients.map((one) => ({
      ...scaleTotal(one.per100g, one.rawG / 100),
      origin: one.per100g.origin,
    })),
  );
  const unweighable = tooMuchFatDrained(pan, raw) ?? tooLight(pan, raw, cookedG);
  if (unweighable) return unweighable;
  const total = withoutDrainedFat(raw, pan.drainedFatG);
  const checks = panChecks(pan, rawG, cookedG);
  return answered({
    rawG: roundTo(rawG, 6),
    cookedG,
    yield: roundTo(cookedG / rawG, 6),
    total,
    per100gCooked: scaleTotal(total, 100 / cookedG),
    checks,
    why: balanceSentences(pan, rawG, cookedG, checks),
  });
}

function overweightFood(ingredients: readonly PanIngredient[]): Outcome<PanBalance> | undefined {
  const index = ingredients.findIndex((one) => macroGrams(one.per100g.nutrients) > MOST_MACROS_PER_100G);
  const food = ingredients[index];
  if (!food) return undefined;
  return refused(
    'kitchen/more-than-its-weight',
    `ingredients.${index}.per100g`,
    `"${food.name}" holds ${figure(macroGrams(food.per100g.nutrients))} g of protein, fat and carbohydrate in 100 g.`,
    'Enter the figures per 100 g, not per serving or per pack.',
  );
}

function containerTooHeavy(pan: Pan, cookedG: Grams): Outcome<PanBalance> | undefined {
  if (cookedG > 0) return undefined;
  return refused(
    'kitchen/container-too-heavy',
    'containerG',
    `The container weighs ${figure(pan.containerG)} g, the full container only ${figure(pan.cookedGrossG)} g: nothing is left for the food.`,
    'Weigh the full container again, or check which container it is.',
  );
}

function tooHeavy(pan: Pan, rawG: Grams, cookedG: Grams): Outcome<PanBalance> | undefined {
  const { mostG } = panBounds(pan.ingredients);
  if (cookedG <= mostG + TOLERANCE_G) return undefined;
  return refused(
    'kitchen/heavier-than-raw',
    'cookedGrossG',
    `${figure(cookedG)} g cooked cannot come from ${figure(rawG)} g raw: at most ${figure(mostG)} g.`,
    'Take the container off the weight, or add the water and every other ingredient that went into the pan.',
  );
}

function tooMuchFatDrained(pan: Pan, raw: NutrientTotal): Outcome<PanBalance> | undefined {
  if (pan.drainedFatG <= raw.nutrients.fatG + 1e-9) return undefined;
  return refused(
    'kitchen/more-fat-drained-than-there-was',
    'drainedFatG',
    `${figure(pan.drainedFatG)} g of fat was drained, but the raw food holds only ${figure(raw.nutrients.fatG)} g.`,
    'Let the juices set and weigh only the fat, or enter 0.',
  );
}

function tooLight(pan: Pan, raw: NutrientTotal, cookedG: Grams): Outcome<PanBalance> | undefined {
  const most = cookedG * TOLERANCE + TOLERANCE_G;
  const { proteinG, carbohydrateG, fatG } = raw.nutrients;
  const lean = proteinG + carbohydrateG;
  if (lean > most) {
    return refused(
      'kitchen/lighter-than-its-solids',
      'cookedGrossG',
      `${figure(cookedG)} g cooked is less than the ${figure(lean)} g of protein and carbohydrate that went in, and those do not cook away.`,
      'Weigh the whole pan, and check the container and the raw weights.',
    );
  }
  const fatToLeave = lean + fatG - pan.drainedFatG - cookedG;
  if (lean + fatG - pan.drainedFatG <= most) return undefined;
  return refused(
    'kitchen/fat-not-accounted-for',
    'drainedFatG',
    `${figure(cookedG)} g cooked cannot hold all that went in: at least ${figure(fatToLeave)} g more fat must have left the pan.`,
    'Weigh the fat that was poured off and enter it as drained.',
  );
}

/** Fat leaves as fat: its energy at 9 kcal a gram, its saturated part in proportion. */
function withoutDrainedFat(raw: NutrientTotal, drainedFatG: Grams): NutrientTotal {
  if (drainedFatG === 0) return raw;
  const { energyKcal, fatG, saturatedFatG } = raw.nutrients;
  const kept = Math.max(0, 1 - drainedFatG / fatG);
  return {
    ...raw,
    nutrients: {
      ...raw.nutrients,
      energyKcal: Math.max(0, energyKcal - KCAL_PER_G_FAT * drainedFatG),
      fatG: fatG * kept,
      ...(saturatedFatG !== undefined && { saturatedFatG: saturatedFatG * kept }),
    },
  };
}

function balanceSentences(pan: Pan, rawG: Grams, cookedG: Grams, checks: readonly PanCheck[]): string[] {
  const sentences: string[] = [];
  if (pan.containerG > 0) {
    sentences.push(
      `${figure(pan.cookedGrossG)} g on the scale less the ${figure(pan.containerG)} g container leaves ${figure(cookedG)} g.`,
    );
  }
  sentences.push(
    `${figure(cookedG)} g cooked from ${figure(rawG)} g raw is a yield of ${percentFigure(cookedG / rawG)}.`,
  );
  const changeG = cookedG + pan.drainedFatG - rawG;
  const fat =
    pan.drainedFatG > 0 ? ` besides ${figure(pan.drainedFatG)} g of drained fat (9 kcal a gram)` : '';
  sentences.push(
    `${figure(Math.abs(changeG))} g was ${changeG > 0 ? 'taken up' : 'lost'}, taken as water${fat}; every other nutrient stays in the pan.`,
  );
  const joint = checks.find((check) => check.kind === 'joint-yield');
  if (joint) {
    const range = `${percentFigure(joint.expected[0])} to ${percentFigure(joint.expected[1])}`;
    sentences.push(
      joint.ok
        ? `That is inside what these ingredients come to, ${range}.`
        : `That is outside what these ingredients come to, ${range}: weigh again, or check the list. The weighed pan counts.`,
    );
  }
  const fatty = pan.drainedFatG === 0 ? pan.ingredients.filter(isFatMeat).map((one) => one.name) : [];
  if (fatty.length > 0) {
    sentences.push(
      `${listed(fatty)} ${fatty.length === 1 ? 'is' : 'are'} more than 12 % fat: if fat was poured off, weigh it and enter it as drained.`,
    );
  }
  return sentences;
}

/** Above 12 % fat what is poured off matters: five grams and more of 100 g raw by the published rows. */
function isFatMeat(ingredient: PanIngredient): boolean {
  const { proteinG, fatG, carbohydrateG } = ingredient.per100g.nutrients;
  return fatG > 12 && proteinG >= 10 && carbohydrateG < 5 && waterPer100g(ingredient) > 40;
}

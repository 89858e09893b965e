import * as v from 'valibot';
import { nutrientsPer100g, nutrientsUpTo, numberIn, integerIn, text } from '../problems/shapes.ts';
import { yieldFormNames } from '../tables/yields.ts';

const MOST_PORTIONS = 200;
const weight = numberIn(0.01, 100_000, 'grams');
const portionsMessage = `a count of portions from 1 to ${MOST_PORTIONS}, or a list of their weights in grams`;

/** One line of `stagewright batch`. */
export const batchRequest = v.strictObject({
  ingredients: v.pipe(
    v.array(
      v.strictObject({
        name: text(120, 'a name'),
        rawG: weight,
        /** Raw, as weighed. */
        per100g: nutrientsPer100g,
        /** A row of the yield table, by its name or by the USDA number of its cooked sample. */
        form: v.optional(
          v.picklist(
            yieldFormNames,
            'a row of the yield table, such as "beef-mince-12-22-crumbles", "chicken-breast-roast" or "white-rice-long-boiled"; --schema lists them all',
          ),
        ),
      }),
      'a list of ingredients',
    ),
    v.maxLength(200, 'a list of at most 200 ingredients'),
  ),
  /** The full container on the scale. */
  cookedGrossG: weight,
  containerG: v.optional(numberIn(0, 100_000, 'grams'), 0),
  /** Fat poured off and weighed. */
  drainedFatG: v.optional(numberIn(0, 100_000, 'grams'), 0),
  portions: v.union(
    [
      integerIn(1, MOST_PORTIONS, 'a count of portions'),
      v.pipe(
        v.array(weight),
        v.minLength(1, 'at least one portion'),
        v.maxLength(MOST_PORTIONS, `at most ${MOST_PORTIONS} portions`),
      ),
    ],
    portionsMessage,
  ),
  scaleStepG: v.optional(numberIn(0.01, 1000, 'grams'), 1),
});

const answeredNutrients = nutrientsUpTo(1e7, 1e6, 1e8);

export const batchAnswer = v.strictObject({
  cookedG: v.number(),
  yield: v.number(),
  portionsG: v.array(v.number()),
  per100gCooked: answeredNutrients,
  perPortion: v.array(
    v.strictObject({
      grams: v.number(),
      nutrients: answeredNutrients,
      /** Raw weight of each ingredient in the portion, by name. */
      rawG: v.record(v.string(), v.number()),
    }),
  ),
  checks: v.array(
    v.strictObject({
      kind: v.picklist(['joint-yield', 'gross-over-container', 'water-change']),
      ok: v.boolean(),
      /** From least to most: a ratio for the yield, grams otherwise. */
      expected: v.strictTuple([v.number(), v.number()]),
      found: v.number(),
      source: v.string(),
    }),
  ),
  why: v.array(v.string()),
});

export type BatchRequest = v.InferOutput<typeof batchRequest>;
export type BatchAnswer = v.InferOutput<typeof batchAnswer>;
export type PanCheck = BatchAnswer['checks'][number];

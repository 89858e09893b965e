import { readShape } from '../problems/from-issues.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { retention } from '../tables/retention.ts';
import { yieldRow } from '../tables/yields.ts';
import type { Grams } from '../units/quantities.ts';
import { roundTo } from '../units/rounding.ts';
import { batchRequest, type BatchAnswer, type BatchRequest } from './batch-request.ts';
import { figure, listed } from './figure.ts';
import { balancePan, type PanBalance } from './mass-balance.ts';
import {
  exactly,
  knownNutrients,
  nutrientWords,
  roundNutrients,
  scaleNutrients,
  type OptionalNutrient,
} from './nutrients.ts';
import type { Pan } from './pan.ts';
import { splitAsGiven, splitEqually, type Split } from './split-portions.ts';

/** One pan, raw in, cooked out, in portions: the door of `stagewright batch`. */
export function answerBatch(input: unknown): Outcome<BatchAnswer> {
  const read = readShape(batchRequest, input, 'kitchen');
  if (!read.ok) return read;
  const request = read.value;
  if (request.ingredients.length === 0) {
    return refused(
      'kitchen/no-ingredients',
      'ingredients',
      'Nothing went into the pan.',
      'Add at least one ingredient with its raw weight.',
    );
  }
  const balance = balancePan(panOf(request));
  if (!balance.ok) return balance;
  const split = wholePan(request, balance.value.cookedG);
  if (!split.ok) return split;
  return answered(compose(request, balance.value, split.value));
}

function panOf(request: BatchRequest): Pan {
  return {
    ingredients: request.ingredients.map(({ name, rawG, per100g, form }) => {
      const row = form === undefined ? undefined : yieldRow(form);
      return { name, rawG, per100g: exactly(per100g, name), ...(row && { form: row }) };
    }),
    cookedGrossG: request.cookedGrossG,
    containerG: request.containerG,
    drainedFatG: request.drainedFatG,
  };
}

/** The whole pan is portioned: what given weights leave over is asked for, never lost. */
function wholePan(request: BatchRequest, cookedG: Grams): Outcome<Split> {
  const { portions, scaleStepG } = request;
  if (typeof portions === 'number') return splitEqually(cookedG, portions, scaleStepG);
  const split = splitAsGiven(cookedG, portions, scaleStepG);
  if (!split.ok || split.value.restG <= scaleStepG + 1e-9) return split;
  return refused(
    'kitchen/portions-leave-some',
    'portions',
    `The portions come to ${figure(cookedG - split.value.restG)} g, the pan holds ${figure(cookedG)} g.`,
    `Add a portion of ${figure(split.value.restG)} g.`,
  );
}

function compose(request: BatchRequest, balance: PanBalance, split: Split): BatchAnswer {
  const share = (grams: Grams) => grams / balance.cookedG;
  const total = knownNutrients(balance.total);
  return {
    cookedG: balance.cookedG,
    yield: balance.yield,
    portionsG: [...split.portionsG],
    per100gCooked: roundNutrients(scaleNutrients(total, 100 / balance.cookedG)),
    perPortion: split.portionsG.map((grams) => ({
      grams,
      nutrients: roundNutrients(scaleNutrients(total, share(grams))),
      rawG: rawOfPortion(request, share(grams)),
    })),
    checks: [...balance.checks],
    why: [
      ...balance.why,
      portionSentence(request, split),
      ...unknownSentences(request, balance),
      ...leached(request),
    ],
  };
}

/** Raw grams behind a portion, by name; ingredients of one name are one. */
function rawOfPortion(request: BatchRequest, share: number): Record<string, Grams> {
  const sums = new Map<string, Grams>();
  for (const { name, rawG } of request.ingredients) sums.set(name, (sums.get(name) ?? 0) + rawG);
  return Object.fromEntries([...sums].map(([name, rawG]) => [name, roundTo(rawG * share, 4)]));
}

function portionSentence(request: BatchRequest, split: Split): string {
  const [least, most] = [Math.min(...split.portionsG), Math.max(...split.portionsG)];
  const weights =
    least === most ? `${figure(most, 2)} g each` : `${figure(least, 2)} to ${figure(most, 2)} g`;
  const sum = split.portionsG.reduce((total, grams) => total + grams, 0);
  const count = split.portionsG.length;
  const step = `steps of ${figure(request.scaleStepG, 2)} g`;
  return `${count} ${count === 1 ? 'portion' : 'portions'} of ${weights}, ${figure(sum, 2)} g together, in ${step}.`;
}

/** What no ingredient states, and what only some state: then the others' part is a lower bound. */
function unknownSentences(request: BatchRequest, balance: PanBalance): string[] {
  const { atLeast, nutrients } = balance.total;
  const held = (name: OptionalNutrient) => (nutrients[name] ?? 0) >= 0.05;
  const nowhere = atLeast.filter((name) => !held(name));
  const sentences = atLeast.filter(held).map((name) => {
    const silent = request.ingredients.filter(({ per100g }) => per100g[name] === undefined);
    const names = [...new Set(silent.map((one) => one.name))];
    const { label, unit } = nutrientWords[name];
    return `The whole pan holds at least ${figure(nutrients[name] ?? 0)} ${unit} of ${label}; ${listed(names)} ${names.length === 1 ? 'states' : 'state'} none, so it is not known.`;
  });
  if (nowhere.length > 0) {
    sentences.push(
      `Not known, because no ingredient, or not every one, states it: ${listed(nowhere.map((name) => nutrientWords[name].label))}.`,
    );
  }
  return sentences;
}

/** Salts leave with the juices; the published share kept by drained minced beef bounds them. */
function leached(request: BatchRequest): string[] {
  const row = retention('0751');
  if (request.drainedFatG === 0 || !row) return [];
  return [
    `Potassium and sodium are upper bounds: juices leave with drained fat, and ${row.name.replace(',', '')} keeps ${row.kept.potassium} % of its potassium.`,
  ];
}

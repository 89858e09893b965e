import { readShape } from '../problems/from-issues.ts';
import { answered, refused, type Outcome } from '../problems/problem.ts';
import { roundTo } from '../units/rounding.ts';
import { figure, listed } from './figure.ts';
import { printedInterval, servingInterval, type LabelRules, type PrintedInterval } from './label-rounding.ts';
import { labelRequest, type LabelAnswer, type LabelRequest } from './label-request.ts';
import {
  nutrientNames,
  nutrientWords,
  roundNutrients,
  scaleNutrients,
  type NutrientName,
} from './nutrients.ts';

type Range = { readonly [Name in NutrientName]?: PrintedInterval };

/** What a printed label really says: the door of `stagewright label` (BAT-41 to BAT-45). */
export function answerLabel(input: unknown): Outcome<LabelAnswer> {
  const request = readShape(labelRequest, input, 'kitchen');
  return request.ok ? readLabel(request.value) : request;
}

/**
 * The ranges that rounding allows, whether the energy agrees with the macros, and the label per 100 g. A label that
 * does not add up is answered and said; only what cannot be a food at all is refused.
 */
export function readLabel(label: LabelRequest): Outcome<LabelAnswer> {
  const ranges = labelRanges(label);
  const tooHeavy = heavierThanServing(label, ranges);
  if (tooHeavy) return tooHeavy;
  const macros = energyFromMacros(label.rules, ranges);
  const printed = intervalOf(ranges, 'energyKcal');
  const meets = printed.low < macros.high && macros.low < printed.high;
  const parts = partsAboveTheirWhole(label.rules, ranges);
  return answered({
    range: pairs(ranges),
    energyFromMacros: [roundTo(macros.low, 6), roundTo(macros.high, 6)],
    consistent: labelFaults(label).length === 0,
    per100g: roundNutrients(scaleNutrients(label.nutrients, 100 / label.servingG)),
    why: [
      ...energySentences(label, printed, macros, meets),
      ...parts,
      ...figureSentences(label, ranges),
      ...per100gSentences(label, ranges),
    ],
  });
}

/** Why a label does not add up, each fault with its size; none where it does (BAT-71). */
export function labelFaults(label: LabelRequest): readonly string[] {
  const ranges = labelRanges(label);
  const macros = energyFromMacros(label.rules, ranges);
  const printed = intervalOf(ranges, 'energyKcal');
  const faults = partsAboveTheirWhole(label.rules, ranges);
  if (printed.low < macros.high && macros.low < printed.high) return faults;
  const energy = `${figure(label.nutrients.energyKcal)} kcal are printed; its macros make ${figure(macros.low)} to ${figure(macros.high)} kcal.`;
  return [energy, ...faults];
}

/** For every nutrient printed, the true values that rounding may have hidden. */
export function labelRanges(label: LabelRequest): Range {
  const ranges: { [Name in NutrientName]?: PrintedInterval } = {};
  for (const name of nutrientNames) {
    const value = label.nutrients[name];
    if (value !== undefined) ranges[name] = printedInterval(label.rules, name, value);
  }
  return ranges;
}

function intervalOf(ranges: Range, name: NutrientName): PrintedInterval {
  return ranges[name] ?? { low: 0, high: 0, printable: true };
}

/**
 * Energy that the macros allow, kcal per serving: protein 4, carbohydrate 4, fat 9, fibre 2 a gram. European
 * carbohydrate leaves the fibre out, so it is added. American carbohydrate holds it: the least counts it with 2, the
 * most with 4, because the rule allows both. Sources cfr-101-9, eu-1169-2011.
 */
export function energyFromMacros(rules: LabelRules, ranges: Range): { low: number; high: number } {
  const protein = intervalOf(ranges, 'proteinG');
  const fat = intervalOf(ranges, 'fatG');
  const carbohydrate = intervalOf(ranges, 'carbohydrateG');
  const fibre = intervalOf(ranges, 'fibreG');
  const low = 4 * protein.low + 9 * fat.low + 4 * carbohydrate.low;
  const high = 4 * protein.high + 9 * fat.high + 4 * carbohydrate.high;
  if (rules === 'eu') return { low: low + 2 * fibre.low, high: high + 2 * fibre.high };
  return { low: low - 2 * Math.min(fibre.high, carbohydrate.low), high };
}

function heavierThanServing(label: LabelRequest, ranges: Range): Outcome<LabelAnswer> | undefined {
  const names: NutrientName[] = ['proteinG', 'fatG', 'carbohydrateG'];
  if (label.rules === 'eu') names.push('fibreG');
  const leastG = names.reduce((sum, name) => sum + intervalOf(ranges, name).low, 0);
  if (leastG <= servingInterval(label.rules, label.servingG).high) return undefined;
  return refused(
    'kitchen/heavier-than-its-serving',
    'nutrients',
    `Together, ${listed(names.map((name) => nutrientWords[name].label))} come to at least ${figure(leastG)} g in a serving of ${figure(label.servingG)} g.`,
    'Check the serving size and whether the figures stand per serving or per 100 g.',
  );
}

/** A part cannot outweigh what holds it. */
function partsAboveTheirWhole(rules: LabelRules, ranges: Range): string[] {
  const holds: [NutrientName, NutrientName][] = [
    ['sugarsG', 'carbohydrateG'],
    ['saturatedFatG', 'fatG'],
  ];
  if (rules === 'us') holds.push(['fibreG', 'carbohydrateG']);
  return holds
    .filter(([part, whole]) => intervalOf(ranges, part).low >= intervalOf(ranges, whole).high)
    .map(
      ([part, whole]) =>
        `More ${nutrientWords[part].label} (at least ${figure(intervalOf(ranges, part).low)} g) than ${nutrientWords[whole].label} (under ${figure(intervalOf(ranges, whole).high)} g): the label does not add up.`,
    );
}

function energySentences(
  label: LabelRequest,
  printed: PrintedInterval,
  macros: { low: number; high: number },
  meets: boolean,
): string[] {
  const says = `${figure(label.nutrients.energyKcal)} kcal printed stands for ${figure(printed.low)} to ${figure(printed.high)} kcal.`;
  const inside =
    label.rules === 'us' ? ', fibre (part of the carbohydrate) at 2 to 4' : ', fibre on top at 2';
  const fibre = label.nutrients.fibreG === undefined ? '' : inside;
  const range = `Protein and carbohydrate at 4 kcal/g, fat at 9${fibre}: ${figure(macros.low)} to ${figure(macros.high)} kcal.`;
  if (meets) return [says, range, 'The two ranges meet: energy and macros agree.'];
  const above = printed.low >= macros.high;
  const gap = above ? printed.low - macros.high : macros.low - printed.high;
  const verdict = `The energy printed lies ${figure(gap)} kcal or more ${above ? 'above' : 'below'} what the macros allow: the label does not add up. It is kept as printed.`;
  const sentences = [says, range, verdict];
  if (above && label.rules === 'eu' && label.nutrients.fibreG === undefined) {
    sentences.push(
      `Fibre is not printed and not known; ${figure(gap / 2)} g of it or more would explain the difference.`,
    );
  }
  return sentences;
}

function figureSentences(label: LabelRequest, ranges: Range): string[] {
  const odd = nutrientNames.filter((name) => ranges[name]?.printable === false);
  if (odd.length === 0) return [];
  const named = odd.map((name) => `${nutrientWords[name].label} ${figure(label.nutrients[name] ?? 0, 3)}`);
  const region = label.rules === 'us' ? 'American' : 'European';
  return [
    `The ${region} rounding prints no such figure: ${listed(named)}; taken as written, to half its last digit.`,
  ];
}

function per100gSentences(label: LabelRequest, ranges: Range): string[] {
  const serving = servingInterval(label.rules, label.servingG);
  const protein = intervalOf(ranges, 'proteinG');
  const low = (protein.low / serving.high) * 100;
  const high = (protein.high / serving.low) * 100;
  const weighed =
    serving.low === serving.high
      ? ''
      : `, the rounding of the serving (${figure(serving.low, 2)} to ${figure(serving.high, 2)} g) included`;
  const sentences = [`Per 100 g the protein is ${figure(low)} to ${figure(high)} g${weighed}.`];
  const absent = nutrientNames.filter((name) => label.nutrients[name] === undefined);
  if (absent.length > 0) {
    sentences.push(`Not printed, so not known: ${listed(absent.map((name) => nutrientWords[name].label))}.`);
  }
  return sentences;
}

function pairs(ranges: Range): LabelAnswer['range'] {
  const pair = (name: NutrientName): [number, number] => {
    const { low, high } = intervalOf(ranges, name);
    return [roundTo(low, 6), roundTo(high, 6)];
  };
  const answer: LabelAnswer['range'] = {
    energyKcal: pair('energyKcal'),
    proteinG: pair('proteinG'),
    fatG: pair('fatG'),
    carbohydrateG: pair('carbohydrateG'),
  };
  for (const name of ['fibreG', 'sugarsG', 'saturatedFatG', 'sodiumMg', 'potassiumMg'] as const) {
    if (ranges[name]) answer[name] = pair(name);
  }
  return answer;
}

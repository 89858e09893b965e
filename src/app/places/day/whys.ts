import type { DaySheet, SheetItem } from '#core/cycle/day-sheet.ts';
import type { NutrientTotal } from '#core/kitchen/nutrients.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Why } from '../../parts/why.ts';

/** Why these grams, and what is in them. */
export function itemWhy(item: SheetItem): Why {
  const total = item.amount;
  return {
    title: item.grams === undefined ? item.name : `${item.grams} g of ${item.name}`,
    sentences: [
      "The plan chose these grams so that the day's and the meal's protein, carbohydrate and fat miss their targets least, counted in kilocalories of mistake.",
      ...(total ? [nutrientSentence(total)] : ['What it holds is not known to this journal.']),
      ...unknownSentences(total),
    ],
    formula: 'nutrient = nutrient per 100 g × grams / 100',
  };
}

/** Why so much is left. */
export function leftWhy(sheet: DaySheet, macro: 'proteinG' | 'carbohydrateG' | 'fatG', name: string): Why {
  const target = sheet.targets?.data[macro] ?? 0;
  const eaten = sheet.total.nutrients[macro];
  const spread = sheet.total.spread[macro];
  return {
    title: `${name} left today`,
    sentences: [
      `The target is ${roundTo(target, 0)} g; ${roundTo(eaten, 0)} g are eaten in ${sheet.eaten.length} ${sheet.eaten.length === 1 ? 'meal' : 'meals'}.`,
      sheet.targets?.data.basis === 'course'
        ? 'The target was set by the course.'
        : 'The target was entered by hand.',
    ],
    formula: 'left = target - eaten',
    inputs: sheet.eaten.map((meal) => ({
      name: meal.items.map((item) => item.name).join(', '),
      value: `${roundTo(meal.total.nutrients[macro], 1)} g`,
    })),
    ...(spread !== undefined &&
      spread > 0 && {
        uncertainty: `What was eaten is known to ± ${roundTo(spread, 1)} g (one standard deviation).`,
      }),
  };
}

function nutrientSentence({ nutrients }: NutrientTotal): string {
  const { proteinG, carbohydrateG, fatG, energyKcal } = nutrients;
  return `It holds ${roundTo(proteinG, 1)} g of protein, ${roundTo(carbohydrateG, 1)} g of carbohydrate, ${roundTo(fatG, 1)} g of fat and ${roundTo(energyKcal, 0)} kcal.`;
}

const SPOKEN = {
  fibreG: 'fibre',
  sugarsG: 'sugars',
  saturatedFatG: 'saturated fat',
  sodiumMg: 'sodium',
  potassiumMg: 'potassium',
} as const;

function unknownSentences(total: NutrientTotal | undefined): string[] {
  if (!total || total.atLeast.length === 0) return [];
  const names = total.atLeast.map((name) => SPOKEN[name]).join(', ');
  return [`Not known, and not counted as none: ${names}.`];
}

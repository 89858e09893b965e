import type { NutrientTotal } from '#core/kitchen/nutrients.ts';

/** "42 P, 60 C, 9 F, 493 kcal": grams of protein, carbohydrate, fat, as the trade writes macros. */
export function macroWords({ nutrients }: NutrientTotal): string {
  const { proteinG, carbohydrateG, fatG, energyKcal } = nutrients;
  return `${Math.round(proteinG)} P, ${Math.round(carbohydrateG)} C, ${Math.round(fatG)} F, ${Math.round(energyKcal)} kcal`;
}

import type { JSX } from 'preact';
import { nutrientRows } from '#core/kitchen/recipe/recipe-card.ts';
import { nutrientWords, type NutrientName, type NutrientTotal } from '#core/kitchen/nutrients.ts';
import type { Recipe, RecipeNutrients } from '#core/kitchen/recipe-food.ts';
import { roundTo } from '#core/units/rounding.ts';
import { capital } from '#core/units/capital.ts';
import { Figure } from '../../../parts/figure.tsx';
import type { Why } from '../../../parts/why.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import './recipe-figures.css';

const SHOWN: readonly NutrientName[] = ['energyKcal', 'proteinG', 'carbohydrateG', 'fatG'];

/** A slice (or 100 g) in figures, with what the labels leave open, and each one's reasons. */
export function RecipeFigures({
  recipe,
  nutrients,
}: {
  readonly recipe: Recipe;
  readonly nutrients: RecipeNutrients;
}): JSX.Element {
  const { perSlice, per100g, total, sliceG } = nutrients;
  const portion = perSlice ?? per100g ?? total;
  const slice = sliceG === undefined ? 'One slice' : `One slice, ${roundTo(sliceG, 0)} g`;
  return (
    <div class="stack">
      <p class="recipe-portion">{perSlice ? slice : per100g ? '100 g' : 'The whole recipe'}</p>
      <PortionFigures portion={portion} why={(name) => portionWhy(recipe, nutrients, name)} />
      {perSlice && per100g && <p class="soft">{`In 100 g: ${inLine(per100g)}`}</p>}
    </div>
  );
}

export function PortionFigures({
  portion,
  why,
}: {
  readonly portion: NutrientTotal;
  readonly why: (name: NutrientName) => Why;
}): JSX.Element {
  return (
    <div class="recipe-figures">
      {SHOWN.map((name) => {
        const { label, unit } = nutrientWords[name];
        const decimals = unit === 'g' ? 1 : 0;
        const spread = roundTo(portion.spread[name] ?? 0, decimals);
        return (
          <Figure
            key={name}
            label={capital(label)}
            value={portion.nutrients[name]}
            unit={unit}
            decimals={decimals}
            {...(spread > 0 && { plusMinus: spread })}
            why={() => why(name)}
          />
        );
      })}
    </div>
  );
}

function inLine(total: NutrientTotal): string {
  return nutrientRows(total)
    .slice(0, 4)
    .map(({ name, value }) => `${name} ${value}`)
    .join(', ');
}

/** Where a portion's figure comes from, ingredient by ingredient. */
export function portionWhy(recipe: Recipe, { total }: RecipeNutrients, name: NutrientName): Why {
  const { label, unit } = nutrientWords[name];
  const { slices, cookedG } = recipe.yields;
  const spread = total.spread[name] ?? 0;
  const whole = roundTo(total.nutrients[name] ?? 0, 1);
  return {
    title: `${capital(label)} of ${recipe.name}`,
    sentences: [
      `The raw ingredients hold ${whole} ${unit} together; cooking takes water, not this.`,
      slices !== undefined
        ? `It is cut into ${slices} equal slices.`
        : cookedG !== undefined
          ? `It weighs ${roundTo(cookedG, 0)} g cooked.`
          : 'How much it makes is not entered.',
    ],
    formula:
      slices !== undefined
        ? 'per slice = sum of raw ingredients / slices'
        : 'per 100 g = 100 × sum / cooked weight',
    inputs: recipe.ingredients.map(({ food, rawG }) => {
      const known = kitchen.peek().catalogue.food(food);
      const holds = known?.per100g.nutrients[name];
      return {
        name: `${roundTo(rawG, 1)} g ${known?.name ?? food}`,
        value: holds === undefined ? 'not known' : `${roundTo((holds * rawG) / 100, 1)} ${unit}`,
      };
    }),
    ...(spread > 0 && {
      uncertainty: `Rounding of the labels leaves ± ${roundTo(spread, 1)} ${unit} on the whole (one standard deviation).`,
    }),
  };
}

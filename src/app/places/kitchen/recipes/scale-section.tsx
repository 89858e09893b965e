import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { scaleRecipe, type ScaledRecipe, type ScaleWish } from '#core/kitchen/recipe/scale-recipe.ts';
import type { Recipe } from '#core/kitchen/recipe-food.ts';
import { roundTo } from '#core/units/rounding.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { ChoiceField } from '../../../parts/choice-field.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Section } from '../../../parts/section.tsx';
import { WhyButton } from '../../../parts/why-button.tsx';
import { kitchenUnit } from '../../../views/kitchen-units.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { intoThePan } from './into-the-pan.ts';

type By = 'slices' | 'proteinG' | 'carbohydrateG' | 'energyKcal';

const BY: readonly { readonly value: By; readonly label: string; readonly unit: string }[] = [
  { value: 'slices', label: 'number of slices', unit: 'slices' },
  { value: 'proteinG', label: 'protein a slice', unit: 'g' },
  { value: 'carbohydrateG', label: 'carbohydrate a slice', unit: 'g' },
  { value: 'energyKcal', label: 'energy a slice', unit: 'kcal' },
];

/** The recipe larger or smaller, and into the pan with it. */
export function ScaleSection({ recipe }: { readonly recipe: Recipe }): JSX.Element {
  const by = useSignal<By>('slices');
  const wanted = useSignal<number | undefined>(recipe.yields.slices);
  const wish = wishOf(by.value, wanted.value);
  const scaled = wish && scaleRecipe(recipe, wish, (food) => kitchen.value.catalogue.food(food));
  const unit = BY.find((one) => one.value === by.value)?.unit;
  return (
    <Section title="Cook it larger or smaller">
      <div class="stack">
        <ChoiceField
          label="Set by"
          layout="column"
          value={by.value}
          options={BY}
          onValue={(chosen) => {
            by.value = chosen;
            wanted.value = undefined;
          }}
        />
        <NumberField
          label="Wanted"
          {...(unit !== undefined && { unit })}
          decimals={0}
          min={1}
          value={wanted.value}
          onValue={(n) => (wanted.value = n)}
        />
        {scaled && !scaled.ok && <Caution title={scaled.problem.message} words={scaled.problem.remedy} />}
        {scaled?.ok && <Scaled scaled={scaled.value} />}
      </div>
    </Section>
  );
}

function wishOf(by: By, wanted: number | undefined): ScaleWish | undefined {
  if (wanted === undefined || wanted <= 0) return undefined;
  return by === 'slices' ? { by, slices: wanted } : { by: 'macro', macro: by, perSlice: wanted };
}

function Scaled({ scaled }: { readonly scaled: ScaledRecipe }): JSX.Element {
  const { recipe, perSlice, factor, why } = scaled;
  const { energyKcal, proteinG, carbohydrateG, fatG } = perSlice.nutrients;
  return (
    <>
      {factor !== 1 && (
        <List label="Raw weights for this size">
          {recipe.ingredients.map(({ food, rawG }, place) => (
            <ListRow
              key={place}
              title={capital(kitchen.value.nameOfFood(food) ?? food)}
              figure={<strong>{kitchenUnit.value.words(rawG)}</strong>}
            />
          ))}
        </List>
      )}
      <p class="soft">
        {`${recipe.yields.slices ?? 1} slices, each ${Math.round(energyKcal)} kcal, ${roundTo(proteinG, 1)} g protein, ${roundTo(carbohydrateG, 1)} g carbohydrate, ${roundTo(fatG, 1)} g fat`}
      </p>
      <div class="row">
        <Button onPress={() => intoThePan({ ...recipe, portions: recipe.yields.slices ?? 1 })}>
          Cook this
        </Button>
        <WhyButton why={{ title: `${recipe.name}, times ${roundTo(factor, 2)}`, sentences: why }}>
          Why these weights?
        </WhyButton>
      </div>
    </>
  );
}

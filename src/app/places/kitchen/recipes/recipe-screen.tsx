import { signal, useSignal, type Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { yieldWords } from '#core/kitchen/recipe/recipe-card.ts';
import { recipeNutrients, type Recipe, type RecipeNutrients } from '#core/kitchen/recipe-food.ts';
import type { Problem } from '#core/problems/problem.ts';
import { capital } from '#core/units/capital.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Columns } from '../../../parts/columns.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { StepperField } from '../../../parts/stepper-field.tsx';
import { pathTo } from '../../../shell/route.ts';
import { record } from '../../../state/open-journal.ts';
import { sheet } from '../../../views/day-view.ts';
import { kitchenUnit } from '../../../views/kitchen-units.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { planNow } from '../../../views/planner.ts';
import { RecipeFigures } from './recipe-figures.tsx';
import { ScaleSection } from './scale-section.tsx';

const problem = signal<Problem | undefined>(undefined);

/** A recipe: what a slice holds, eaten with one tap, cooked larger or smaller, given away. */
export function RecipeScreen({ id }: { readonly id: string }): JSX.Element {
  const recipe = kitchen.value.catalogue.recipe(id);
  if (!recipe) {
    return (
      <Page title="Recipe" back={pathTo('kitchen', 'recipes')}>
        <EmptyState
          title="This recipe is not in the journal"
          words="It was taken back, or belongs to another journal."
          action={<Button href={pathTo('kitchen', 'recipes')}>All recipes</Button>}
        />
      </Page>
    );
  }
  const nutrients = recipeNutrients(recipe, (food) => kitchen.value.catalogue.food(food));
  return (
    <Page title={recipe.name} detail={yieldWords(recipe)} back={pathTo('kitchen', 'recipes')}>
      {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      {nutrients.ok ? (
        <Whole recipe={recipe} nutrients={nutrients.value} />
      ) : (
        <>
          <Caution title={nutrients.problem.message} words={nutrients.problem.remedy} />
          <Button href={pathTo('kitchen', 'recipe-edit', id)}>Change the recipe</Button>
        </>
      )}
    </Page>
  );
}

function Whole({
  recipe,
  nutrients,
}: {
  readonly recipe: Recipe;
  readonly nutrients: RecipeNutrients;
}): JSX.Element {
  const sliced = recipe.yields.slices !== undefined;
  const amount = useSignal<number | undefined>(sliced ? 1 : undefined);
  return (
    <>
      <Columns wide="even">
        <Section title="What it holds">
          <div class="stack">
            <RecipeFigures recipe={recipe} nutrients={nutrients} />
            <EatField sliced={sliced} amount={amount} />
          </div>
        </Section>
        <Section title="Raw, into the pan">
          <List>
            {recipe.ingredients.map(({ food, rawG }, place) => (
              <ListRow
                key={place}
                title={capital(kitchen.value.nameOfFood(food) ?? food)}
                figure={<strong>{kitchenUnit.value.words(rawG)}</strong>}
              />
            ))}
          </List>
        </Section>
        {recipe.steps.length > 0 && (
          <Section title="Steps">
            <ol class="recipe-steps">
              {recipe.steps.map((step, place) => (
                <li key={place}>{step}</li>
              ))}
            </ol>
          </Section>
        )}
        {recipe.yields.slices !== undefined && <ScaleSection recipe={recipe} />}
      </Columns>
      <div class="row">
        <Button href={pathTo('kitchen', 'recipe-edit', recipe.recipe)}>Change the recipe</Button>
        <Button href={pathTo('kitchen', 'recipe-card', recipe.recipe)}>Card to share</Button>
      </div>
      <EatAction recipe={recipe} sliced={sliced} eaten={amount.value} />
    </>
  );
}

/** By the slice where the recipe is sliced, else by weight. */
function EatField({
  sliced,
  amount,
}: {
  readonly sliced: boolean;
  readonly amount: Signal<number | undefined>;
}): JSX.Element {
  return sliced ? (
    <StepperField
      label="Slices eaten"
      step={0.5}
      decimals={2}
      min={0.5}
      max={50}
      value={amount.value}
      onValue={(n) => (amount.value = n)}
    />
  ) : (
    <NumberField
      label="Weight eaten"
      unit="g"
      decimals={0}
      min={1}
      max={5000}
      value={amount.value}
      onValue={(n) => (amount.value = n)}
    />
  );
}

function EatAction({
  recipe,
  sliced,
  eaten,
}: {
  readonly recipe: Recipe;
  readonly sliced: boolean;
  readonly eaten: number | undefined;
}): JSX.Element {
  return (
    <ActionBar>
      <Button
        kind="next"
        records
        wide
        disabled={eaten === undefined || eaten <= 0}
        onPress={() => {
          if (eaten !== undefined) void logEaten(recipe, eaten, sliced);
        }}
      >
        {sliced ? `Log ${eaten ?? 0} ${eaten === 1 ? 'slice' : 'slices'}` : 'Log this weight'}
      </Button>
    </ActionBar>
  );
}

async function logEaten(recipe: Recipe, amount: number, sliced: boolean): Promise<void> {
  const name = recipe.recipe;
  const item = sliced
    ? ({ source: 'slices', recipe: name, slices: amount } as const)
    : ({ source: 'recipe', recipe: name, grams: amount } as const);
  const says = sliced ? `${amount} ${amount === 1 ? 'slice' : 'slices'}` : `${amount} g`;
  const saved = await record('meal-eaten', { items: [item] }, { says: `${says} of ${recipe.name} logged` });
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
  if (saved.status !== 'refused' && sheet.value.plan) await planNow('eaten differently');
}

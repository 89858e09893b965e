import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { recipeCard, type RecipeCard } from '#core/kitchen/recipe/recipe-card.ts';
import { recipeJsonLd } from '#core/kitchen/recipe/recipe-json-ld.ts';
import type { Recipe } from '#core/kitchen/recipe-food.ts';
import type { Problem } from '#core/problems/problem.ts';
import { capital } from '#core/units/capital.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { Facts } from '../../../parts/facts.tsx';
import { Note } from '../../../parts/note.tsx';
import { Page } from '../../../parts/page.tsx';
import { PrintButton } from '../../../print/print-button.tsx';
import { PrintSheet } from '../../../print/print-sheet.tsx';
import { pathTo } from '../../../shell/route.ts';
import { today } from '../../../state/clock.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { download } from '../../journal/download.ts';
import { cardPicture } from './card-picture.ts';
import './recipe-figures.css';

const problem = signal<Problem | undefined>(undefined);

/** A recipe to give away: picture, paper or file. It says the dish and its figures, nothing of the person. */
export function RecipeCardScreen({ id }: { readonly id: string }): JSX.Element {
  const recipe = kitchen.value.catalogue.recipe(id);
  const card = recipe && recipeCard(recipe, (food) => kitchen.value.catalogue.food(food));
  return (
    <Page title="Card to share" back={pathTo('kitchen', 'recipe', id)}>
      {recipe && card?.ok ? (
        <Card recipe={recipe} card={card.value} />
      ) : (
        <EmptyState
          title={card?.ok === false ? card.problem.message : 'This recipe is not in the journal'}
          words={card?.ok === false ? card.problem.remedy : 'Go back to the recipes.'}
        />
      )}
    </Page>
  );
}

function Card({ recipe, card }: { readonly recipe: Recipe; readonly card: RecipeCard }): JSX.Element {
  return (
    <>
      {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      <PrintSheet title={card.title} date={today.value} version={card.makes}>
        <h3>{`In ${card.portion}`}</h3>
        <Facts items={card.perPortion.map(({ name, value }) => ({ name: capital(name), value }))} />
        <h3>Raw, into the pan</h3>
        <Facts items={card.ingredients.map(({ name, value }) => ({ name: capital(name), value }))} />
        {card.steps.length > 0 && <h3>Steps</h3>}
        <ol class="recipe-steps">
          {card.steps.map((step, place) => (
            <li key={place}>{step}</li>
          ))}
        </ol>
      </PrintSheet>
      <Note>Your name, weights and targets are not on it.</Note>
      <div class="row">
        <PrintButton>Print the card</PrintButton>
        <Button onPress={() => saveFile(recipe)}>Save as a file (JSON-LD)</Button>
      </div>
      <ActionBar>
        <Button kind="next" wide onPress={() => void savePicture(card)}>
          Save as a picture
        </Button>
      </ActionBar>
    </>
  );
}

async function savePicture(card: RecipeCard): Promise<void> {
  const picture = await cardPicture(card);
  problem.value = picture.ok ? undefined : picture.problem;
  if (picture.ok) download(`${fileName(card.title)}.png`, picture.value, 'image/png');
}

function saveFile(recipe: Recipe): void {
  const written = recipeJsonLd(recipe, (food) => kitchen.peek().catalogue.food(food));
  download(
    `${fileName(recipe.name)}.jsonld`,
    `${JSON.stringify(written, undefined, 2)}\n`,
    'application/ld+json',
  );
}

function fileName(title: string): string {
  return (
    title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'recipe'
  );
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { adoptRecipe } from '#core/kitchen/recipe/adopt-recipe.ts';
import { readRecipeJsonLd, type ForeignRecipe } from '#core/kitchen/recipe/read-recipe-json-ld.ts';
import { yieldWords } from '#core/kitchen/recipe/recipe-card.ts';
import { recipeNutrients, type Recipe } from '#core/kitchen/recipe-food.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { FileField } from '../../../parts/file-field.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { Note } from '../../../parts/note.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { go, pathTo } from '../../../shell/route.ts';
import { today } from '../../../state/clock.ts';
import { exportAs } from '../../../state/copies.ts';
import { draft } from '../../../state/drafts.ts';
import { recordAll } from '../../../state/open-journal.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { download } from '../../journal/download.ts';
import { draftOfForeign, emptyRecipe, recipeDraft } from './recipe-draft.ts';
import { NEW_RECIPE_DRAFT } from './recipe-edit-screen.tsx';

const said = signal<{ readonly words?: string; readonly problem?: Problem }>({});

/** Every recipe of one's own, what it makes and what a portion holds. */
export function RecipesScreen(): JSX.Element {
  const recipes = kitchen.value.catalogue.recipes();
  return (
    <Page title="Recipes" back={pathTo('kitchen')}>
      {recipes.length === 0 ? (
        <EmptyState
          title="No recipe yet"
          words="Enter raw weights once; from then on a slice is logged with one tap, and the week can be planned around it."
        />
      ) : (
        <Section title="Yours">
          <List>
            {recipes.map((recipe) => (
              <ListRow
                key={recipe.recipe}
                title={recipe.name}
                detail={`${yieldWords(recipe)}; ${holds(recipe)}`}
                href={pathTo('kitchen', 'recipe', recipe.recipe)}
              />
            ))}
          </List>
        </Section>
      )}
      <Section title="From and to a file" detail="schema.org Recipe, JSON-LD">
        <div class="stack">
          <FileField label="A recipe file" accept=".jsonld,.json" onFile={(file) => void take(file)} />
          <div role="status">
            {said.value.words !== undefined && <Note>{said.value.words}</Note>}
            {said.value.problem && (
              <Caution title={said.value.problem.message} words={said.value.problem.remedy} />
            )}
          </div>
          {recipes.length > 0 && <Button onPress={() => void saveAll()}>Save all recipes as a file</Button>}
        </div>
      </Section>
      <ActionBar>
        <Button kind="next" wide href={pathTo('kitchen', 'recipe-edit', 'new')}>
          New recipe
        </Button>
      </ActionBar>
    </Page>
  );
}

function holds(recipe: Recipe): string {
  const read = recipeNutrients(recipe, (food) => kitchen.value.catalogue.food(food));
  if (!read.ok) return read.problem.message;
  const { perSlice, per100g, total } = read.value;
  const { energyKcal, proteinG, carbohydrateG, fatG } = (perSlice ?? per100g ?? total).nutrients;
  const each = perSlice ? 'a slice' : per100g ? '100 g' : 'in all';
  return `${each}: ${Math.round(energyKcal)} kcal, ${Math.round(proteinG)} P, ${Math.round(carbohydrateG)} C, ${Math.round(fatG)} F`;
}

async function saveAll(): Promise<void> {
  const file = await exportAs('recipe', today.value);
  if (file) download(file.name, file.text, file.mediaType);
}

/** Recipes whose foods are all known go straight in; the first that is not is opened to be completed. */
async function take(file: File): Promise<void> {
  const read = readRecipeJsonLd(await file.text());
  if (!read.ok) {
    said.value = { problem: read.problem };
    return;
  }
  const { catalogue } = kitchen.peek();
  const [known, open]: [Recipe[], ForeignRecipe[]] = [[], []];
  for (const foreign of read.value) {
    const adopted = adoptRecipe(catalogue, foreign);
    if (adopted.ok) known.push(adopted.value);
    else open.push(foreign);
  }
  const words = `${count(known.length)} came in.`;
  if (known.length > 0) {
    const saved = await recordAll(
      known.map((recipe) => ({ kind: 'recipe-defined' as const, data: recipe })),
      { says: words },
    );
    if (saved.status === 'refused') {
      said.value = { problem: saved.problem };
      return;
    }
  }
  const [first] = open;
  if (!first) {
    said.value = { words };
    return;
  }
  const more =
    open.length > 1
      ? ` ${count(open.length - 1)} more wait in the file; take it in again after this one.`
      : '';
  said.value = { words: `${words}${more}` };
  draft(NEW_RECIPE_DRAFT, recipeDraft, emptyRecipe).value = draftOfForeign(first, catalogue);
  go(pathTo('kitchen', 'recipe-edit', 'new'));
}

function count(recipes: number): string {
  return `${recipes} ${recipes === 1 ? 'recipe' : 'recipes'}`;
}

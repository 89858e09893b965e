import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { recipeNutrients } from '#core/kitchen/recipe-food.ts';
import { FoodChooser } from '../../../chooser/food-chooser.tsx';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Columns } from '../../../parts/columns.tsx';
import { Form } from '../../../parts/form.tsx';
import { Note } from '../../../parts/note.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { TextField } from '../../../parts/text-field.tsx';
import { go, pathTo } from '../../../shell/route.ts';
import { clearDraft, draft } from '../../../state/drafts.ts';
import { record } from '../../../state/open-journal.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { problemAt } from '../../../views/problem-at.ts';
import { IngredientLines } from '../ingredient-fields.tsx';
import { newId } from '../../../views/new-id.ts';
import { readRecipeDraft, recipeDraft, recipeDraftOf, type RecipeDraft } from './recipe-draft.ts';
import { RecipeFigures } from './recipe-figures.tsx';

export const NEW_RECIPE_DRAFT = 'kitchen/recipe/new';
const problems = signal<readonly Problem[]>([]);

interface FieldsProps {
  readonly typed: RecipeDraft;
  readonly change: (part: Partial<RecipeDraft>) => void;
}

/** A recipe from its raw weights; what it comes to is shown while it is typed. */
export function RecipeEditScreen({ id }: { readonly id: string }): JSX.Element {
  const fresh = id === 'new';
  const key = fresh ? NEW_RECIPE_DRAFT : `kitchen/recipe/${id}`;
  const known = fresh ? undefined : kitchen.value.catalogue.recipe(id);
  const typed = draft(key, recipeDraft, recipeDraftOf(known));
  const props: FieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
  };
  return (
    <Page
      title={known ? `Change: ${known.name}` : 'New recipe'}
      back={known ? pathTo('kitchen', 'recipe', id) : pathTo('kitchen', 'recipes')}
    >
      <Form
        onSubmit={() => void keep(typed.value, fresh ? newId('recipe') : id, key)}
        problems={problems.value}
      >
        <TextField
          label="What the dish is called"
          value={typed.value.name}
          onValue={(name) => props.change({ name })}
          problem={problemAt(problems.value, 'name')}
        />
        <Columns wide="even">
          <Section title="Raw, into the pan">
            <div class="stack">
              <OpenIngredients {...props} />
              <IngredientLines
                lines={typed.value.lines}
                onLines={(lines) => props.change({ lines: [...lines] })}
                problemAt={(path) => problemAt(problems.value, path)}
              />
            </div>
          </Section>
          <Section title="What it makes">
            <YieldFields {...props} />
            <Preview typed={typed.value} />
          </Section>
        </Columns>
        <TextField
          label="Steps"
          hint="One step a line"
          lines={6}
          value={typed.value.steps}
          onValue={(steps) => props.change({ steps })}
          optional
        />
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the recipe
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

/** What a file says that is no food here: to be chosen, with its words in sight. */
function OpenIngredients({ typed, change }: FieldsProps): JSX.Element | null {
  const [first, ...rest] = typed.open;
  if (!first) return null;
  return (
    <div class="stack">
      <Note>{`The file says "${first.text}". ${rest.length > 0 ? `${rest.length} more to choose after it.` : ''}`}</Note>
      <FoodChooser
        label="Which food is that"
        onChoose={(food) =>
          change({
            open: rest,
            lines: [
              ...typed.lines,
              { food, unit: 'g', ...(first.grams !== undefined && { amount: first.grams }) },
            ],
          })
        }
      />
      <Button onPress={() => change({ open: rest })}>{`Leave "${first.text}" out`}</Button>
    </div>
  );
}

function YieldFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <NumberField
        label="Slices"
        hint="Slices, pieces or portions of equal size"
        decimals={0}
        min={1}
        max={500}
        value={typed.slices}
        onValue={(slices) => change({ slices })}
        problem={problemAt(problems.value, 'slices')}
        optional
      />
      <NumberField
        label="Cooked weight of the whole"
        hint="Without the pan. Empty while it was never weighed; a slice is logged without it."
        unit="g"
        decimals={0}
        min={1}
        max={100_000}
        value={typed.cookedG}
        onValue={(cookedG) => change({ cookedG })}
        optional
      />
    </div>
  );
}

function Preview({ typed }: { readonly typed: RecipeDraft }): JSX.Element | null {
  const recipe = readRecipeDraft({ ...typed, name: typed.name || 'Recipe', open: [] }, 'preview');
  if (!recipe.ok) return null;
  const read = recipeNutrients(recipe.value, (food) => kitchen.value.catalogue.food(food));
  return read.ok ? (
    <RecipeFigures recipe={recipe.value} nutrients={read.value} />
  ) : (
    <Note>{read.problem.message}</Note>
  );
}

async function keep(typed: RecipeDraft, id: string, key: string): Promise<void> {
  const reading = readRecipeDraft(typed, id);
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const saved = await record('recipe-defined', reading.value, { says: `${reading.value.name} is kept` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('kitchen', 'recipe', id));
}

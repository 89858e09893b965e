import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { now } from '../../state/clock.ts';
import { problemAt } from '../../views/problem-at.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { recordAll } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { cookDraft, emptyCook, readCook, type CookDraft } from './cook-draft.ts';
import { IngredientFields } from './ingredient-fields.tsx';
import { newId } from '../../views/new-id.ts';
import { PanFields } from './pan-fields.tsx';
import { PanResult } from './pan-result.tsx';
import { PortionFields } from './portion-fields.tsx';

export const COOK_DRAFT = 'kitchen/cook';
const problems = signal<readonly Problem[]>([]);

export interface CookFieldsProps {
  readonly typed: CookDraft;
  readonly change: (part: Partial<CookDraft>) => void;
  readonly problemAt: (path: string) => string | undefined;
}

/** A batch from raw weights to packed portions; what is typed survives until it is kept. */
export function CookScreen(): JSX.Element {
  const typed = draft(COOK_DRAFT, cookDraft, emptyCook);
  const props: CookFieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
    problemAt: (path) => problemAt(problems.value, path),
  };
  const reading = readCook(typed.value, kitchen.value.catalogue, now.value);
  return (
    <Page title="Cook a batch" back={pathTo('kitchen')} busy>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Raw, into the pan">
            <IngredientFields {...props} />
          </Section>
          <Section title="Cooked, on the scale">
            <PanFields {...props} />
          </Section>
          <Section title="Portions">
            <PortionFields {...props} />
            <PanResult typed={typed.value} reading={reading} />
          </Section>
        </Columns>
        <TextField
          label="What the batch is called"
          value={typed.value.name}
          onValue={(name) => props.change({ name })}
          hint={suggestedName(typed.value)}
          optional
        />
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the batch
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

/** Called after its two heaviest parts until it is given a name. */
function suggestedName(typed: CookDraft): string {
  const names = typed.ingredients.slice(0, 2).map((line) => kitchen.value.nameOfFood(line.food) ?? 'food');
  return names.map((name) => name.split(',')[0] ?? name).join(' with ');
}

async function keep(typed: CookDraft): Promise<void> {
  const reading = readCook(typed, kitchen.value.catalogue, now.value);
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const { pan, batch: weighed } = reading.value;
  const portionsG = weighed.portions.map((portion) => portion.grams);
  const batch = newId('batch');
  const name = typed.name.trim() || suggestedName(typed) || 'Batch';
  const saved = await recordAll(
    [
      {
        kind: 'batch-cooked',
        data: {
          batch,
          name,
          ingredients: pan.ingredients.map(({ food, rawG, form }) => ({
            food,
            rawG,
            ...(form !== undefined && { form }),
          })),
          ...(typed.container !== undefined && { container: typed.container }),
          containerG: pan.containerG,
          cookedGrossG: pan.cookedGrossG,
          ...(pan.drainedFatG !== undefined && { drainedFatG: pan.drainedFatG }),
          fromStock: typed.fromStock,
          ...(typed.recipe !== undefined && { recipe: typed.recipe }),
        },
      },
      ...(portionsG.length > 0
        ? [{ kind: 'batch-portioned' as const, data: { batch, portionsG, place: typed.place } }]
        : []),
    ],
    { says: portionsG.length > 0 ? `${name}: ${portionsG.length} portions packed` : `${name} is in the pan` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(COOK_DRAFT);
  go(pathTo('kitchen', 'batch', batch));
}

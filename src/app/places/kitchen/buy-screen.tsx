import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Problem } from '#core/problems/problem.ts';
import { capital } from '#core/units/capital.ts';
import { FoodChooser } from '../../chooser/food-chooser.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { habitPlace } from './habit-place.ts';

const DRAFT = 'kitchen/buy';
const problems = signal<readonly Problem[]>([]);

const buyDraft = v.strictObject({
  food: v.optional(v.string()),
  grams: v.optional(v.number()),
  place: v.picklist(['fridge', 'freezer', 'cupboard']),
  useBy: v.optional(v.string()),
});
type BuyDraft = v.InferOutput<typeof buyDraft>;

/** Puts bought food in stock, one after the other. */
export function BuyScreen(): JSX.Element {
  const typed = draft(DRAFT, buyDraft, { place: 'fridge' });
  const { food, grams, place, useBy } = typed.value;
  const change = (part: Partial<BuyDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="Put in stock" back={pathTo('kitchen')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Section title={food === undefined ? 'Which food' : capital(kitchen.value.nameOfFood(food) ?? food)}>
          <div class="stack">
            <FoodChooser
              label={food === undefined ? 'Find a food' : 'Another food'}
              onChoose={(id) =>
                change({ food: id, place: habitPlace(kitchen.value.catalogue.food(id)?.storage) })
              }
            />
            {food === undefined ? (
              <>
                <Note>Not in the list, or from a package? Enter its label once, then find it here.</Note>
                <Button href={pathTo('kitchen', 'label')}>Food from a label</Button>
              </>
            ) : (
              <>
                <NumberField
                  label="Amount"
                  unit="g"
                  decimals={0}
                  min={1}
                  big
                  value={grams}
                  onValue={(n) => change({ grams: n })}
                  problem={problemAt(problems.value, 'grams')}
                />
                <ChoiceField
                  label="Kept in the"
                  layout="row"
                  value={place}
                  options={[
                    { value: 'fridge', label: 'fridge' },
                    { value: 'freezer', label: 'freezer' },
                    { value: 'cupboard', label: 'cupboard' },
                  ]}
                  onValue={(chosen) => change({ place: chosen })}
                />
                <DateField
                  label="Use by, as printed"
                  value={useBy ?? ''}
                  onValue={(date) => change({ useBy: date })}
                  optional
                />
              </>
            )}
          </div>
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits disabled={food === undefined}>
            Put in stock
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep(typed: BuyDraft): Promise<void> {
  const { food, grams, place, useBy } = typed;
  if (food === undefined || grams === undefined || grams <= 0) {
    problems.value = [
      {
        code: 'kitchen/no-amount',
        path: 'grams',
        message: 'The amount is missing.',
        remedy: 'Enter the grams on the package, or weigh it.',
      },
    ];
    return;
  }
  const saved = await record(
    'stock-bought',
    { food, grams, place, ...(useBy !== undefined && useBy !== '' && { useBy }) },
    { says: `${capital(kitchen.value.nameOfFood(food) ?? 'food')}: ${grams} g in stock` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status !== 'refused') clearDraft(DRAFT);
}

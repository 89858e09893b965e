import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { amountChoices } from '#core/kitchen/amount-choices.ts';
import { foodIdOf } from '#core/kitchen/item-nutrients.ts';
import type { PlateItem } from '#core/journal/kinds/plate-item.ts';
import type { Problem } from '#core/problems/problem.ts';
import { FoodChooser } from '../../chooser/food-chooser.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { nowClock } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { planNow } from '../../views/planner.ts';
import { eatDraft, eatDraftOf, readEaten, type EatDraft } from './eat-draft.ts';
import { GuessFields } from './guess-fields.tsx';
import { hasSlices, SliceChoices, SlicesField } from './slice-choices.tsx';

const problems = signal<readonly Problem[]>([]);

/** What was really eaten: weighed foods, packed portions, a guess. For a planned meal it starts from the plan. */
export function EatScreen({ slot }: { readonly slot: string | undefined }): JSX.Element {
  const meal = sheet.value.meals.find((candidate) => candidate.slot === slot);
  const key = `day/eat/${slot ?? 'other'}`;
  const typed = draft(key, eatDraft, eatDraftOf(meal));
  const change = (part: Partial<EatDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title={meal ? 'Eaten differently' : 'Ate something else'} back={pathTo('day')}>
      <Form onSubmit={() => void keep(typed.value, slot, key)} problems={problems.value}>
        <Columns wide="even">
          <Section title="On the plate">
            <Plate typed={typed.value} change={change} />
            <FoodChooser
              label="Add a food"
              onChoose={(id) => change({ items: [...typed.value.items, { item: kitchen.value.itemOf(id) }] })}
            />
          </Section>
          <Section title="Packed and ready">
            <Portions
              onChoose={(item) => change({ items: [...typed.value.items, { item, grams: item.grams }] })}
            />
          </Section>
          {hasSlices() && (
            <Section title="By the slice">
              <SliceChoices onChoose={(item) => change({ items: [...typed.value.items, { item }] })} />
            </Section>
          )}
          <Section title="Eaten out, by eye">
            <GuessFields typed={typed.value} change={change} />
          </Section>
        </Columns>
        <ClockField
          label="Eaten at"
          hint="Empty means now"
          value={typed.value.at}
          onValue={(at) => change({ at })}
          optional
        />
        <ActionBar>
          <Button kind="next" records wide submits>
            Log this meal
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface PlateProps {
  readonly typed: EatDraft;
  readonly change: (part: Partial<EatDraft>) => void;
}

function Plate({ typed, change }: PlateProps): JSX.Element {
  if (typed.items.length === 0) return <Note>Nothing yet.</Note>;
  const set = (place: number, grams: number | undefined): void => {
    change({
      items: typed.items.map((line, other) =>
        other === place ? { item: line.item, ...(grams !== undefined && { grams }) } : line,
      ),
    });
  };
  const put = (place: number, item: PlateItem): void => {
    change({ items: typed.items.map((line, other) => (other === place ? { item } : line)) });
  };
  return (
    <div class="stack">
      {typed.items.map(({ item, grams }, place) => (
        <div class="row" key={place}>
          {item.source === 'guess' ? (
            <span>{`${item.name}, ${Math.round(item.nutrients.energyKcal)} kcal ± ${item.spreadPercent} %`}</span>
          ) : item.source === 'slices' ? (
            <SlicesField item={item} label={nameOf(item)} onItem={(changed) => put(place, changed)} />
          ) : (
            <NumberField
              label={nameOf(item)}
              unit="g"
              decimals={0}
              min={0}
              max={5000}
              value={grams}
              onValue={(n) => set(place, n)}
            />
          )}
          {item.source !== 'slices' && <Measures item={item} onGrams={(n) => set(place, n)} />}
          <Button
            kind="quiet"
            label={`Take off ${nameOf(item)}`}
            onPress={() => change({ items: typed.items.filter((_, other) => other !== place) })}
          >
            Take off
          </Button>
        </div>
      ))}
    </div>
  );
}

const MOST_MEASURES = 3;

/** Household measures of a food, one tap each: a large egg, a slice, a scoop. */
function Measures({
  item,
  onGrams,
}: {
  readonly item: PlateItem;
  readonly onGrams: (grams: number) => void;
}): JSX.Element | null {
  const id = foodIdOf(item);
  const food = id === undefined ? undefined : kitchen.value.catalogue.food(id);
  const choices = food ? amountChoices(food).filter((choice) => choice.basis === 'measured') : [];
  if (choices.length === 0) return null;
  return (
    <>
      {choices.slice(0, MOST_MEASURES).map(({ name, grams }) => (
        <Button key={name} kind="quiet" onPress={() => onGrams(Math.round(grams))}>
          {`1 ${name}, ${Math.round(grams)} g`}
        </Button>
      ))}
    </>
  );
}

function Portions({
  onChoose,
}: {
  readonly onChoose: (item: PlateItem & { grams: number }) => void;
}): JSX.Element {
  const portions = kitchen.value.readyPortions;
  if (portions.length === 0) return <Note>No packed portions in the fridge.</Note>;
  return (
    <List>
      {portions.map((portion) => (
        <ListRow
          key={`${portion.batch} ${portion.portion ?? 'pan'}`}
          title={portion.name}
          detail={portion.detail}
          figure={<span>{`${Math.round(portion.grams)} g`}</span>}
          onPress={() =>
            onChoose({
              source: 'batch',
              batch: portion.batch,
              ...(portion.portion !== undefined && { portion: portion.portion }),
              grams: portion.grams,
            })
          }
        />
      ))}
    </List>
  );
}

function nameOf(item: PlateItem): string {
  return kitchen.value.read(item)?.name ?? 'a food';
}

async function keep(typed: EatDraft, slot: string | undefined, key: string): Promise<void> {
  const reading = readEaten(typed);
  problems.value = reading.ok ? [] : reading.problems;
  if (!reading.ok) return;
  const place = typed.place.trim();
  const saved = await record(
    'meal-eaten',
    { ...(slot !== undefined && { slot }), items: reading.items, ...(place !== '' && { place }) },
    { clock: typed.at ?? nowClock.value, says: 'Meal logged' },
  );
  if (saved.status === 'refused') {
    problems.value = [saved.problem];
    return;
  }
  clearDraft(key);
  go(pathTo('day'));
  if (sheet.value.plan) await planNow('eaten differently');
}

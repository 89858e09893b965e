import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { formatClock } from '#core/units/clock.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { FoodChooser } from '../../chooser/food-chooser.tsx';
import { Button } from '../../parts/button.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { planning, planNow } from '../../views/planner.ts';

type Wishes = DataOf<'plan-wished'>;

/** Foods asked for and foods kept off the plates, today only. */
export function WishesScreen(): JSX.Element {
  const wishes: Wishes = sheet.value.wishes?.data ?? {};
  return (
    <Page title="Wishes for today" back={pathTo('day')}>
      <Columns wide="even">
        <WishList
          title="Asked for"
          label="Ask for a food"
          field="asked"
          wishes={wishes}
          none="No food is asked for."
        />
        <WishList
          title="Not today"
          label="Keep a food off the plates"
          field="banned"
          wishes={wishes}
          none="No food is kept off."
        />
        <FixedFoods wishes={wishes} />
      </Columns>
      <ActionBar>
        <Button
          kind="next"
          wide
          records
          disabled={planning.value.status === 'planning'}
          onPress={() => void planNow('wish')}
        >
          Plan again with these wishes
        </Button>
      </ActionBar>
    </Page>
  );
}

interface WishListProps {
  readonly title: string;
  readonly label: string;
  readonly field: 'asked' | 'banned';
  readonly wishes: Wishes;
  readonly none: string;
}

function WishList({ title, label, field, wishes, none }: WishListProps): JSX.Element {
  const ids = wishes[field] ?? [];
  const other = field === 'asked' ? 'banned' : 'asked';
  const set = (next: readonly string[]): void => {
    // A food cannot be asked for and kept off at once: the later wish counts.
    const rest = (wishes[other] ?? []).filter((id) => !next.includes(id));
    void record('plan-wished', { ...wishes, [field]: [...next], [other]: rest }, { says: 'Wish kept' });
  };
  return (
    <Section title={title}>
      {ids.length === 0 ? (
        <Note>{none}</Note>
      ) : (
        <List>
          {ids.map((id) => (
            <ListRow
              key={id}
              title={kitchen.value.nameOfFood(id) ?? id}
              detail="Tap to take the wish back"
              onPress={() => set(ids.filter((kept) => kept !== id))}
            />
          ))}
        </List>
      )}
      <FoodChooser label={label} onChoose={(id) => set([...new Set([...ids, id])])} />
    </Section>
  );
}

/** A food fixed in a meal: the meal nearest to its time carries it, in these grams. */
function FixedFoods({ wishes }: { readonly wishes: Wishes }): JSX.Element {
  const food = useSignal<string | undefined>(undefined);
  const at = useSignal<number | undefined>(undefined);
  const grams = useSignal<number | undefined>(undefined);
  const fixed = wishes.fixed ?? [];
  const keep = (next: NonNullable<Wishes['fixed']>): void => {
    void record('plan-wished', { ...wishes, fixed: next }, { says: 'Wish kept' });
  };
  return (
    <Section title="Fixed in a meal">
      <List>
        {fixed.map((wish, place) => (
          <ListRow
            key={`${wish.food} ${wish.at}`}
            title={`${wish.grams} g ${kitchen.value.nameOfFood(wish.food) ?? wish.food}`}
            detail={`in the meal nearest to ${wish.at}; tap to take the wish back`}
            onPress={() => keep(fixed.filter((_kept, other) => other !== place))}
          />
        ))}
      </List>
      <div class="stack">
        <FoodChooser
          label={food.value === undefined ? 'Fix a food' : 'Another food'}
          onChoose={(id) => (food.value = id)}
        />
        {food.value !== undefined && (
          <>
            <NumberField
              label={kitchen.value.nameOfFood(food.value) ?? 'Amount'}
              unit="g"
              decimals={0}
              min={1}
              max={5000}
              value={grams.value}
              onValue={(n) => (grams.value = n)}
            />
            <ClockField
              label="In the meal at about"
              value={at.value}
              onValue={(minutes) => (at.value = minutes)}
            />
            <Button
              disabled={grams.value === undefined || at.value === undefined}
              onPress={() => {
                if (food.value === undefined || grams.value === undefined || at.value === undefined) return;
                keep([...fixed, { at: formatClock(at.value), food: food.value, grams: grams.value }]);
                food.value = undefined;
                grams.value = undefined;
              }}
            >
              Fix it
            </Button>
          </>
        )}
      </div>
    </Section>
  );
}

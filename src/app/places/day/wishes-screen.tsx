import type { JSX } from 'preact';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { FoodChooser } from '../../chooser/food-chooser.tsx';
import { Button } from '../../parts/button.tsx';
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

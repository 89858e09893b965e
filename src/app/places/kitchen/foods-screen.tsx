import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { kitchen } from '../../views/kitchen-view.ts';

/** Every food that can be eaten or cooked: in stock and favourites first. */
export function FoodsScreen(): JSX.Element {
  const typed = useSignal('');
  const hits = kitchen.value.search(typed.value);
  return (
    <Page title="Foods" back={pathTo('kitchen')}>
      <div class="row">
        <Button href={pathTo('kitchen', 'label')}>Food from a label</Button>
      </div>
      <TextField
        label="Find a food"
        hint="Words in any order; small slips are forgiven"
        value={typed.value}
        onValue={(text) => (typed.value = text)}
      />
      {hits.length === 0 ? (
        <Note>No food by that name. Copy its label to add it.</Note>
      ) : (
        <List>
          {hits.map((hit) => (
            <ListRow
              key={hit.id}
              title={hit.title}
              detail={hit.detail}
              href={pathTo('kitchen', 'food', hit.id)}
            />
          ))}
        </List>
      )}
    </Page>
  );
}

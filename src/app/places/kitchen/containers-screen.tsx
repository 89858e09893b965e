import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { newId } from '../../views/new-id.ts';

/** Pans and boxes put on the scale once, empty, and remembered. */
export function ContainersScreen(): JSX.Element {
  const name = useSignal('');
  const emptyG = useSignal<number | undefined>(undefined);
  const { containers } = kitchen.value;
  return (
    <Page title="Containers" back={pathTo('kitchen')}>
      <Section title="Weighed empty">
        {containers.length === 0 ? (
          <Note>No pan or box is known yet.</Note>
        ) : (
          <List>
            {containers.map((one) => (
              <ListRow key={one.container} title={one.name} figure={<strong>{`${one.emptyG} g`}</strong>} />
            ))}
          </List>
        )}
      </Section>
      <Form
        onSubmit={() => {
          if (emptyG.value === undefined || name.value.trim() === '') return;
          void record(
            'container-weighed',
            { container: newId('container'), name: name.value.trim(), emptyG: emptyG.value },
            { says: `${name.value.trim()} is remembered` },
          );
          name.value = '';
          emptyG.value = undefined;
        }}
        problems={[]}
      >
        <Section title="Another one">
          <div class="stack">
            <TextField
              label="What it is"
              hint="large pan, blue box"
              value={name.value}
              onValue={(text) => (name.value = text)}
            />
            <NumberField
              label="Weight empty, without lid"
              unit="g"
              decimals={0}
              min={0}
              max={20000}
              value={emptyG.value}
              onValue={(n) => (emptyG.value = n)}
            />
            <Button
              kind="next"
              records
              submits
              disabled={emptyG.value === undefined || name.value.trim() === ''}
            >
              Remember it
            </Button>
          </div>
        </Section>
      </Form>
    </Page>
  );
}

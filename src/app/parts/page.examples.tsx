import type { Example } from '../gallery/example.ts';
import { ActionBar } from './action-bar.tsx';
import { Button } from './button.tsx';
import { Columns } from './columns.tsx';
import { Note } from './note.tsx';
import { Page } from './page.tsx';
import { Section } from './section.tsx';

export const examples: readonly Example[] = [
  {
    name: 'a subpage with columns and main actions',
    show: () => (
      <Page title="Cook a batch" detail="Step 2 of 4" back="#/kitchen" backWords="Kitchen">
        <Columns wide="first">
          <Section title="Into the pan" detail="830 g raw">
            <Note>Beef, onions and the oil of the pan, each with its own weight.</Note>
          </Section>
          <Section title="Containers" action={<Button href="#/kitchen/containers">Weigh one</Button>}>
            <Note>The scale remembers each container.</Note>
          </Section>
        </Columns>
        <ActionBar>
          <Button>Back to raw</Button>
          <Button kind="next" wide records>
            On to the cooked weight
          </Button>
        </ActionBar>
      </Page>
    ),
  },
];

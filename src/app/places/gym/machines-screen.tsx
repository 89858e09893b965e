import type { JSX } from 'preact';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { machines } from '../../views/gym-view.ts';
import { geometryWords } from './machine-words.ts';

/** Machines by their pegs, rails and stacks. */
export function MachinesScreen(): JSX.Element {
  return (
    <Page title="Machines" back={pathTo('gym')}>
      {machines.value.length === 0 ? (
        <EmptyState
          title="No machine is described yet"
          words="Described once, with a tape and the phone’s level, a machine shows where it is hard, and sets on other pegs compare."
        />
      ) : (
        <Section title="Described">
          <List>
            {machines.value.map(({ machine, name, place, geometry }) => (
              <ListRow
                key={machine}
                title={name}
                detail={`${geometryWords(geometry)}${place === undefined ? '' : `; ${place}`}`}
                href={pathTo('gym', 'machine', machine)}
              />
            ))}
          </List>
        </Section>
      )}
      <ActionBar>
        <Button kind="next" wide href={pathTo('gym', 'describe')}>
          Describe a machine
        </Button>
      </ActionBar>
    </Page>
  );
}

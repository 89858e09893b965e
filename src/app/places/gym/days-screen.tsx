import type { JSX } from 'preact';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { training } from '../../views/training-view.ts';

/** The training days, each with its exercises and sets. */
export function DaysScreen(): JSX.Element {
  const { templates } = training.value;
  return (
    <Page title="Training days" back={pathTo('gym')}>
      {templates.length === 0 ? (
        <EmptyState
          title="No training day yet"
          words="A day is a name and its exercises with their sets; it is begun from the Gym and can change as you go."
        />
      ) : (
        <Section title="Planned">
          <List>
            {templates.map(({ data, lastDay }) => {
              const count = data.blocks.flatMap(({ slots }) => slots).length;
              return (
                <ListRow
                  key={data.template}
                  title={data.name}
                  detail={`${count} ${count === 1 ? 'exercise' : 'exercises'}${lastDay === undefined ? '' : `; last on ${dateWords(lastDay)}`}`}
                  href={pathTo('gym', 'template', data.template)}
                />
              );
            })}
          </List>
        </Section>
      )}
      <ActionBar>
        <Button kind="next" wide href={pathTo('gym', 'template', 'new')}>
          Put a day together
        </Button>
      </ActionBar>
    </Page>
  );
}

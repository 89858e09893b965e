import type { JSX } from 'preact';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';

/** The gym's front: today's session, and what it is made of. */
export function GymScreen(): JSX.Element {
  return (
    <Page title="Gym">
      <Section title="At hand">
        <List>
          <ListRow title="Cardio" detail="log it; what it cost" href={pathTo('gym', 'cardio')} />
          <ListRow
            title="Warm-up and plates"
            detail="sets up to a top set, as plates"
            href={pathTo('gym', 'loads')}
          />
          <ListRow
            title="Bars, plates, dumbbells"
            detail="what the place has"
            href={pathTo('gym', 'weights')}
          />
        </List>
      </Section>
    </Page>
  );
}

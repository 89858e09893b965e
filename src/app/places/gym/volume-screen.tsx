import type { JSX } from 'preact';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { pathTo } from '../../shell/route.ts';
import { volumeRows } from './tells-section.tsx';

/** Hard sets by muscle in plain words: this week against the four before. */
export function VolumeScreen(): JSX.Element {
  const rows = volumeRows();
  return (
    <Page title="Sets by muscle" detail="the last seven days" back={pathTo('gym')}>
      {rows.length === 0 ? (
        <EmptyState title="No set is logged yet" words="Hard sets of a week are counted here by muscle." />
      ) : (
        <Section title="Hard sets">
          <Table
            caption="Hard sets by muscle"
            captionHidden
            columns={[
              { key: 'muscle', label: 'Muscle' },
              { key: 'sets', label: 'This week', numeric: true },
              { key: 'usual', label: 'Usual week', numeric: true },
              { key: 'trend', label: 'Change' },
            ]}
            rows={rows}
          />
          <Note>
            A set counts whole for the muscles that move it and half for those that assist; left and right
            together are one. Sets with more than four repetitions in reserve and warm-ups do not count
            (common practice).
          </Note>
        </Section>
      )}
    </Page>
  );
}

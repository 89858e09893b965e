import type { JSX } from 'preact';
import { roundTo } from '#core/units/rounding.ts';
import { capital } from '#core/units/capital.ts';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { pathTo } from '../../shell/route.ts';
import { training } from '../../views/training-view.ts';

/** Hard sets by muscle in plain words: this week, a usual one, and through the preparation. */
export function VolumeScreen(): JSX.Element {
  const { volume, volumeWeeks } = training.value;
  const trends = new Map(volumeWeeks.map(({ muscle, trend }) => [muscle, trend]));
  return (
    <Page title="Sets by muscle" detail="the last seven days" back={pathTo('gym')}>
      {volume.length === 0 ? (
        <EmptyState
          title="No hard set is logged yet"
          words="They are counted here by muscle, week by week."
        />
      ) : (
        <Section title="Hard sets">
          <Table
            caption="Hard sets by muscle"
            captionHidden
            columns={[
              { key: 'muscle', label: 'Muscle' },
              { key: 'sets', label: 'This week', numeric: true },
              { key: 'usual', label: 'Usual week', numeric: true },
              { key: 'trend', label: 'Through the preparation' },
            ]}
            rows={volume.map(({ muscle, words, sets, usual }) => ({
              muscle: capital(words),
              sets: String(roundTo(sets, 1)),
              usual: usual === undefined ? 'unknown' : String(roundTo(usual, 1)),
              trend: trends.get(muscle) ?? 'not trained before',
            }))}
          />
          <Note>
            A set counts whole for the muscles that move it and half for those that assist; left and right
            together are one. Warm-ups, and sets with more than four repetitions in reserve, do not count
            (common practice).
          </Note>
        </Section>
      )}
    </Page>
  );
}

import type { JSX } from 'preact';
import { lastComparable } from '#core/gym/beat/best-set.ts';
import { kg } from '#core/gym/session/set-words.ts';
import { sessionWalk, type SessionWalk } from '#core/gym/session/session-walk.ts';
import type { SetDone } from '#core/gym/session/counted-sets.ts';
import { seriesOf } from '#core/gym/strength/series-of-step.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { ledger } from '../../state/open-journal.ts';
import { say } from '../../views/say.ts';
import { gym } from '../../views/training-view.ts';
import { setWords } from './gym-words.ts';

/** A session that was done, each exercise beside the time before. */
export function DoneScreen({ session }: { readonly session: string }): JSX.Element {
  const walk = sessionWalk({ ledger: ledger.value, session });
  if (!walk.ok)
    return (
      <Page title="Session" back={pathTo('gym')}>
        <EmptyState title={walk.problem.message} words={walk.problem.remedy} />
      </Page>
    );
  const { title, session: found, sets } = walk.value;
  const hard = sets.filter(({ data }) => data.set !== 'warm-up');
  const exercises = [...new Set(hard.map(({ data }) => data.exercise))];
  return (
    <Page
      title={title}
      detail={`${dateWords(found.day)}, ${hard.length} hard sets${lasted(walk.value)}`}
      back={pathTo('gym')}
    >
      {exercises.length === 0 && (
        <EmptyState
          title="No hard set is logged"
          words="Warm-ups and sets left out are kept in the Journal."
        />
      )}
      {exercises.map((exercise) => (
        <Exercise
          key={exercise}
          exercise={exercise}
          sets={hard.filter(({ data }) => data.exercise === exercise)}
        />
      ))}
      {found.endedMs === undefined && (
        <ActionBar>
          <Button kind="next" wide href={pathTo('gym', 'session', session)}>
            Go on with it
          </Button>
        </ActionBar>
      )}
    </Page>
  );
}

function lasted({ session: { begunMs, endedMs } }: SessionWalk): string {
  if (begunMs === undefined || endedMs === undefined) return '';
  return `, ${Math.round((endedMs - begunMs) / 60_000)} min`;
}

function Exercise({
  exercise,
  sets,
}: {
  readonly exercise: string;
  readonly sets: readonly SetDone[];
}): JSX.Element {
  const { log } = gym.value;
  return (
    <Section title={log.book.exercise(exercise).name}>
      <List>
        {sets.map((set) => (
          <ListRow
            key={set.entry.id}
            title={setWords(set.data)}
            detail={beside(set)}
            href={pathTo('journal', 'entry', set.entry.id)}
          />
        ))}
      </List>
    </Section>
  );
}

/** "last time 100 kg x 8: 2 more". */
function beside(set: SetDone): string {
  const { data } = set;
  const series = seriesOf(gym.value.log, { exercise: data.exercise, side: data.side });
  const earlier = series?.sets.filter(({ fact }) => fact.epochMs < set.epochMs) ?? [];
  const mine = series?.sets.find(({ fact }) => fact.entry.id === set.entry.id);
  const before = lastComparable(earlier, data.session, data.set, data.number ?? 1);
  if (!before) return 'nothing to hold it against yet';
  const reps = data.reps - before.reps;
  const load = mine ? mine.loadKg - before.loadKg : 0;
  const moved = [
    ...(Math.abs(load) >= 0.05 ? [`${kg(Math.abs(load))} ${load > 0 ? 'heavier' : 'lighter'}`] : []),
    ...(reps === 0 ? [] : [`${Math.abs(reps)} ${reps > 0 ? 'more' : 'fewer'}`]),
  ];
  return `last time ${setWords(before.fact.data)}: ${say(moved.join(', ')) || 'as much'}`;
}

import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { dateWords } from '#core/words/dates.ts';
import { sessionWalk } from '#core/gym/session/session-walk.ts';
import { trainingSessions } from '#core/gym/session/training-sessions.ts';
import { pathTo } from '../../shell/route.ts';
import { ledger } from '../../state/open-journal.ts';
import { Note } from '../../parts/note.tsx';
import { loadWords } from './gym-words.ts';
import { summaryOf, type ExerciseSummary } from './session-summary.ts';

/** A session that was done, each exercise beside the last time. */
export function DoneScreen({ session }: { readonly session: string }): JSX.Element {
  const walk = sessionWalk({ ledger: ledger.value, session });
  if (!walk.ok) {
    return (
      <Page title="Session" back={pathTo('gym')}>
        <EmptyState title={walk.problem.message} words={walk.problem.remedy} />
      </Page>
    );
  }
  const { title, session: found, sets } = walk.value;
  const summary = summaryOf(walk.value, ledger.value, trainingSessions(ledger.value));
  const minutes =
    found.endedMs && found.begunMs ? Math.round((found.endedMs - found.begunMs) / 60_000) : undefined;
  return (
    <Page title={title} detail={dateWords(found.day)} back={pathTo('gym')}>
      <Section title="In all">
        <Facts
          items={[
            { name: 'Hard sets', value: String(sets.filter(({ data }) => data.set !== 'warm-up').length) },
            { name: 'Time', value: minutes === undefined ? 'unknown' : `${minutes} min` },
            {
              name: 'Exercises with more than last time',
              value: `${summary.filter(({ verdict }) => verdict === 'more').length} of ${summary.length}`,
            },
          ]}
        />
      </Section>
      {summary.length === 0 && <Note>No hard set was logged in this session.</Note>}
      {summary.map((one) => (
        <Exercise key={one.exercise} one={one} />
      ))}
      <ActionBar>
        <Button href={pathTo('gym')}>To the Gym</Button>
      </ActionBar>
    </Page>
  );
}

const VERDICTS: Readonly<Record<ExerciseSummary['verdict'], string>> = {
  more: 'more than last time',
  same: 'as last time',
  less: 'less than last time',
  'another load': 'another load than last time',
  first: 'first time',
};

function Exercise({ one }: { readonly one: ExerciseSummary }): JSX.Element {
  return (
    <Section title={one.name} detail={VERDICTS[one.verdict]}>
      <Facts
        items={[
          { name: 'This time', value: setsWords(one.sets) },
          ...(one.before
            ? [{ name: `Last time, ${dateWords(one.before.day)}`, value: setsWords(one.before.sets) }]
            : []),
        ]}
      />
    </Section>
  );
}

function setsWords(sets: ExerciseSummary['sets']): string {
  return sets
    .map(
      ({ data }) => `${loadWords(data.load)} × ${data.reps}${data.side === undefined ? '' : ` ${data.side}`}`,
    )
    .join('; ');
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { sessionNow, stepNow } from '#core/cycle/gym-now.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { gym, gymDay, push } from '../../views/gym-view.ts';
import { endSession } from './end-session.ts';
import { stepWords } from './gym-words.ts';
import { NextSet } from './next-set.tsx';
import { RestClock } from './rest-clock.tsx';
import { SessionList } from './session-list.tsx';
import { numbered, oneMoreOf } from './set-draft.ts';
import './session-screen.css';

/** An exercise taken out of turn, until its set is logged. */
const chosen = signal<string | undefined>(undefined);

/** The session under way, worked out from its entries: what is next stands first. */
export function SessionScreen(): JSX.Element {
  const { open } = gymDay.value;
  const ask = open && {
    ledger: ledger.value,
    gym: gym.value,
    session: open.session,
    today: today.value,
    push: push.value.push,
  };
  const now = ask && sessionNow(ask);
  if (!ask || !now?.ok) {
    return (
      <Page title="Session" back={pathTo('gym')}>
        <EmptyState
          title="No session is under way"
          words="Begin one from the Gym; after a break it goes on from here."
          action={
            <Button kind="next" href={pathTo('gym')}>
              To the Gym
            </Button>
          }
        />
      </Page>
    );
  }
  const { walk } = now.value;
  const step = chosenStep(walk) ?? now.value.next?.step;
  const done = walk.steps.filter(({ state }) => state !== 'to come').length;
  return (
    <Page
      title={step?.exercise.name ?? walk.title}
      detail={`${step ? `${stepWords(step, walk.steps)}; ` : ''}${walk.title}, ${done} of ${walk.steps.length} sets done`}
      back={pathTo('gym')}
      backWords="Gym"
      busy
    >
      <RestClock walk={walk} next={step} />
      <Columns wide="first">
        {step ? (
          <NextSet walk={walk} now={stepNow(ask, walk, step)} onLogged={() => (chosen.value = undefined)} />
        ) : (
          <AllDone walk={walk} />
        )}
        <div class="stack">
          <SessionList walk={walk} next={step} onChoose={(slot) => (chosen.value = slot)} />
          <Notes walk={walk} />
        </div>
      </Columns>
    </Page>
  );
}

/** The first open set of the exercise taken out of turn, or one more of it. */
function chosenStep(walk: SessionWalk): WalkedStep | undefined {
  const slot = chosen.value;
  if (slot === undefined) return undefined;
  const open = walk.steps.find((step) => step.slot === slot && step.state === 'to come');
  const more = oneMoreOf(walk.steps, slot);
  return open ?? (more && numbered(more, walk));
}

function AllDone({ walk }: { readonly walk: SessionWalk }): JSX.Element {
  return (
    <Section title={walk.steps.length === 0 ? 'No exercise yet' : 'Every set is done'}>
      <Note>
        {walk.steps.length === 0
          ? 'Add an exercise below.'
          : 'Press an exercise for one more set of it, add another, or end the session.'}
      </Note>
      {walk.sets.length > 0 && (
        <ActionBar>
          <Button kind="next" records wide onPress={() => void endSession(walk)}>
            End this session
          </Button>
        </ActionBar>
      )}
    </Section>
  );
}

/** Sets logged twice or out of order: said, never changed. */
function Notes({ walk }: { readonly walk: SessionWalk }): JSX.Element | null {
  if (walk.notes.length === 0) return null;
  return (
    <Section title="About the log">
      {walk.notes.map(({ words }) => (
        <Note key={words}>{words}</Note>
      ))}
    </Section>
  );
}

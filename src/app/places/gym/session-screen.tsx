import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { type SessionNow, sessionNow, stepNow } from '#core/cycle/gym-now.ts';
import type { SessionWalk, WalkedStep } from '#core/gym/session/session-walk.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { gym, push } from '../../views/training-view.ts';
import { SessionSteps } from './session-steps.tsx';
import { oneMore } from './set-draft.ts';
import { SetEntry } from './set-entry.tsx';

/** A step taken out of its turn, until it is done. */
const chosen = signal<{ readonly session: string; readonly key: string } | undefined>(undefined);

export function stepKey({ slot, set, number, side }: WalkedStep): string {
  return `${slot} ${set} ${number} ${side ?? ''}`;
}

/** The session under way: the next set with what it is to beat, then all of them. */
export function SessionScreen({ session }: { readonly session: string }): JSX.Element {
  const ask = { ledger: ledger.value, gym: gym.value, session, today: today.value, push: push.value.push };
  const now = sessionNow(ask);
  if (!now.ok)
    return (
      <Page title="Session" back={pathTo('gym')}>
        <EmptyState
          title={now.problem.message}
          words={now.problem.remedy}
          action={<Button href={pathTo('gym')}>To the gym</Button>}
        />
      </Page>
    );
  const { walk } = now.value;
  const asked = chosen.value?.session === session ? askedStep(walk, chosen.value.key) : undefined;
  const at = asked ? stepNow(ask, walk, asked) : now.value.next;
  const done = walk.steps.filter(({ state }) => state !== 'to come').length;
  return (
    <Page title={walk.title} detail={`${done} of ${walk.steps.length} sets`} back={pathTo('gym')} busy>
      <Columns wide="first">
        <div class="set-sheet">
          {at ? (
            <SetEntry
              key={`${session} ${stepKey(at.step)} ${at.step.exercise.exercise}`}
              now={at}
              walk={walk}
            />
          ) : (
            <AllDone now={now.value} />
          )}
        </div>
        <div class="stack">
          {walk.notes.length > 0 && (
            <Caution title="About the log" words={walk.notes.map(({ words }) => words)} />
          )}
          {walk.steps.length > 0 && (
            <Section title="The session">
              <SessionSteps
                walk={walk}
                current={at?.step}
                onGo={(step) => {
                  chosen.value = { session, key: stepKey(step) };
                  window.scrollTo({ top: 0 });
                }}
              />
            </Section>
          )}
          <Section title="Change or note">
            <div class="row">
              <Button href={pathTo('gym', 'change', session)}>Change the session</Button>
              <Button href={pathTo('gym', 'pain', at?.step.exercise.exercise ?? '')}>Note pain</Button>
              <Button records onPress={() => void end(session)}>
                End the session
              </Button>
            </div>
          </Section>
        </div>
      </Columns>
    </Page>
  );
}

/** The open step of a key: a planned one, or one more set of an exercise. */
function askedStep(walk: SessionWalk, key: string): WalkedStep | undefined {
  const open = walk.steps.find((step) => step.state === 'to come' && stepKey(step) === key);
  if (open) return open;
  const more = [...new Set(walk.steps.map(({ slot }) => slot))].map((slot) => oneMore(walk, slot));
  return more.find((step) => step !== undefined && stepKey(step) === key);
}

function AllDone({ now: { walk } }: { readonly now: SessionNow }): JSX.Element {
  return (
    <>
      <EmptyState
        title={walk.steps.length === 0 ? 'Nothing is planned in this session' : 'Every set is done'}
        words={
          walk.steps.length === 0
            ? 'Add exercises as you go; each is walked set by set.'
            : 'End the session to see it beside the last one.'
        }
      />
      <ActionBar>
        {walk.steps.length === 0 ? (
          <Button kind="next" wide href={pathTo('gym', 'change', walk.session.session)}>
            Add an exercise
          </Button>
        ) : (
          <Button kind="next" records wide onPress={() => void end(walk.session.session)}>
            End the session
          </Button>
        )}
      </ActionBar>
    </>
  );
}

async function end(session: string): Promise<void> {
  const saved = await record('session-ended', { session }, { says: 'Session ended' });
  if (saved.status !== 'refused') go(pathTo('gym', 'done', session));
}

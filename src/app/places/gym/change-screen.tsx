import type { JSX } from 'preact';
import { sessionWalk, type SessionWalk } from '#core/gym/session/session-walk.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { book, gym, gymDay } from '../../views/gym-view.ts';
import { ExerciseSearch } from './exercise-search.tsx';
import { standIns } from './find-exercises.ts';
import { stepWords } from './gym-words.ts';
import { putOff } from './session-rows.ts';

const SESSION = pathTo('gym', 'session');

/** The open session walked; undefined where none is under way. */
export function openWalk(): SessionWalk | undefined {
  const { open } = gymDay.value;
  const walk = open && sessionWalk({ ledger: ledger.value, session: open.session });
  return walk?.ok === true ? walk.value : undefined;
}

/** One exercise of the session under way: another in its place, later, without this set, no more of it, or pain noted. */
export function ChangeScreen({ slot }: { readonly slot: string }): JSX.Element {
  const walk = openWalk();
  const steps = walk?.steps.filter((step) => step.slot === slot) ?? [];
  const step = steps.find(({ state }) => state === 'to come') ?? steps.at(-1);
  if (!walk || !step) {
    return (
      <Page title="Exercise" back={SESSION}>
        <EmptyState title="This exercise is in no session under way" words="Go back to the session." />
      </Page>
    );
  }
  const { session } = walk.session;
  const { exercise } = step;
  const done = new Set(gym.value.log.hardSets.map(({ data }) => data.exercise));
  const substitute = async (other: string): Promise<void> => {
    const { name, machine, implement } = book.value.exercise(other);
    const saved = await record(
      'exercise-substituted',
      {
        session,
        slot,
        exercise: other,
        ...(machine !== undefined && { machine }),
        ...(implement !== undefined && { implement }),
      },
      { says: `${name} instead of ${exercise.name}` },
    );
    if (saved.status !== 'refused') go(SESSION);
  };
  return (
    <Page title={exercise.name} back={SESSION} backWords="Session" busy>
      <Section title="Another in its place" detail="for this session">
        <ExerciseSearch
          label="Instead"
          near={standIns(book.value.exercises(), exercise, done)}
          onChoose={(other) => void substitute(other)}
        />
      </Section>
      <Doing walk={walk} slot={slot} />
      <Section title="Joint or pain">
        <List>
          <ListRow
            title="Note pain"
            detail="shown the next time this exercise comes up"
            href={pathTo('gym', 'pain', exercise.exercise)}
          />
          <ListRow
            title="Caution of this exercise"
            detail="a joint to protect: load, repetitions, tempo"
            href={pathTo('gym', 'exercise', exercise.exercise)}
          />
        </List>
      </Section>
    </Page>
  );
}

function Doing({ walk, slot }: { readonly walk: SessionWalk; readonly slot: string }): JSX.Element | null {
  const open = walk.steps.filter((step) => step.slot === slot && step.state === 'to come');
  const [step] = open;
  if (!step) return null;
  const { session } = walk.session;
  const { name } = step.exercise;
  const after = async (saving: ReturnType<typeof record>): Promise<void> => {
    if ((await saving).status !== 'refused') go(SESSION);
  };
  const skip = (): void =>
    void after(
      record(
        'set-skipped',
        {
          session,
          slot,
          set: step.set,
          number: step.number,
          ...(step.side !== undefined && { side: step.side }),
        },
        { says: `${name}: ${stepWords(step, walk.steps)} left out` },
      ),
    );
  return (
    <Section title="Not now">
      <div class="row">
        <Button records onPress={skip}>
          {`Leave out: ${stepWords(step, walk.steps).toLowerCase()}`}
        </Button>
        <Button
          records
          onPress={() =>
            void after(
              record(
                'session-reordered',
                { session, blocks: [...putOff(walk, step.block)] },
                { says: `${name} comes last` },
              ),
            )
          }
        >
          Put it off to the end
        </Button>
        <Button
          records
          onPress={() =>
            void after(record('exercise-dropped', { session, slot }, { says: `No more ${name} today` }))
          }
        >
          No more of it today
        </Button>
      </div>
    </Section>
  );
}

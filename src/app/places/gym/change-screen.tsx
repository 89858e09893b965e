import type { JSX } from 'preact';
import { signal } from '@preact/signals';
import { sessionWalk, type SessionWalk } from '#core/gym/session/session-walk.ts';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { wordsOfMuscle } from '#core/tables/muscles.ts';
import { Button } from '../../parts/button.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { gym } from '../../views/training-view.ts';
import { newId } from '../../views/new-id.ts';
import { findExercises, standIns } from './find-exercises.ts';

/** The slot another exercise is looked for; undefined: one is added. */
const replacing = signal<string | undefined>(undefined);
const query = signal('');

/** Another order, another exercise, one more, one less: of this session only. */
export function ChangeScreen({ session }: { readonly session: string }): JSX.Element {
  const walk = sessionWalk({ ledger: ledger.value, session });
  const back = pathTo('gym', 'session', session);
  if (!walk.ok)
    return (
      <Page title="Change the session" back={pathTo('gym')}>
        <EmptyState title={walk.problem.message} words={walk.problem.remedy} />
      </Page>
    );
  return (
    <Page title="Change the session" detail={walk.value.title} back={back} busy>
      <Note>Changes are for this session alone; the training day stays as it is planned.</Note>
      <Blocks walk={walk.value} />
      <Find walk={walk.value} />
    </Page>
  );
}

function Blocks({ walk }: { readonly walk: SessionWalk }): JSX.Element {
  const blocks = [...new Set(walk.steps.map(({ block }) => block))];
  return (
    <Section title="Order and exercises">
      {blocks.map((block, place) => {
        const open = walk.steps.filter((step) => step.block === block && step.state === 'to come');
        const slots = [
          ...new Map(walk.steps.filter((step) => step.block === block).map((step) => [step.slot, step])),
        ];
        return (
          <List key={block}>
            {slots.map(([slot, step]) => (
              <ListRow
                key={slot}
                title={step.exercise.name}
                detail={open.some((each) => each.slot === slot) ? 'sets to come' : 'done or left out'}
                figure={
                  open.some((each) => each.slot === slot) && (
                    <span class="row">
                      <Button
                        label={`Another exercise for ${step.exercise.name}`}
                        onPress={() => {
                          replacing.value = slot;
                          document.getElementById('find-exercise')?.scrollIntoView();
                        }}
                      >
                        Another
                      </Button>
                      <Button
                        records
                        label={`Leave out ${step.exercise.name}`}
                        onPress={() => void drop(walk, slot)}
                      >
                        Leave out
                      </Button>
                    </span>
                  )
                }
              />
            ))}
            {place > 0 && open.length > 0 && (
              <ListRow
                title=""
                figure={
                  <Button
                    records
                    label={`Do this first: ${slots.map(([, step]) => step.exercise.name).join(' and ')}`}
                    onPress={() => void doFirst(walk, block, blocks)}
                  >
                    Do this first
                  </Button>
                }
              />
            )}
          </List>
        );
      })}
    </Section>
  );
}

function Find({ walk }: { readonly walk: SessionWalk }): JSX.Element {
  const step = walk.steps.find(({ slot }) => slot === replacing.value);
  const all = gym.value.log.book.exercises();
  const done = new Set(gym.value.log.hardSets.map(({ data }) => data.exercise));
  const near = step ? standIns(all, step.exercise, done) : [];
  const found = query.value.trim() === '' ? near : findExercises(all, query.value);
  return (
    <div id="find-exercise">
      <Section
        title={step ? `Instead of ${step.exercise.name}` : 'One more exercise'}
        {...(step && {
          action: <Button onPress={() => (replacing.value = undefined)}>Add one more instead</Button>,
        })}
      >
        <SearchField
          label="Find an exercise"
          query={query.value}
          onQuery={(text) => (query.value = text)}
          results={found.map(({ exercise, name, prime }) => ({
            id: exercise,
            title: name,
            detail: prime.map(wordsOfMuscle).join(', '),
          }))}
          onChoose={(exercise) => void choose(walk, exercise)}
          nothing="No exercise by that name. Describe it under Exercises first."
        />
      </Section>
    </div>
  );
}

async function choose({ session }: SessionWalk, exercise: string): Promise<void> {
  const slot = replacing.peek();
  const known: Exercise = gym.peek().log.book.exercise(exercise);
  const saved =
    slot === undefined
      ? await record(
          'exercise-added',
          {
            session: session.session,
            slot: { slot: newId('slot'), exercise, sets: [{ set: 'working', count: 3 }] },
          },
          { says: `${known.name} added` },
        )
      : await record(
          'exercise-substituted',
          { session: session.session, slot, exercise },
          { says: `${known.name} instead` },
        );
  if (saved.status === 'refused') return;
  replacing.value = undefined;
  query.value = '';
  go(pathTo('gym', 'session', session.session));
}

async function drop({ session }: SessionWalk, slot: string): Promise<void> {
  await record('exercise-dropped', { session: session.session, slot }, { says: 'Exercise left out' });
}

async function doFirst({ session }: SessionWalk, block: string, blocks: readonly string[]): Promise<void> {
  const order = [block, ...blocks.filter((other) => other !== block)];
  const saved = await record(
    'session-reordered',
    { session: session.session, blocks: order },
    { says: 'Order changed' },
  );
  if (saved.status !== 'refused') go(pathTo('gym', 'session', session.session));
}

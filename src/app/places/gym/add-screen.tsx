import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import type { SessionWalk } from '#core/gym/session/session-walk.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { book, gym } from '../../views/gym-view.ts';
import { newId } from '../../views/new-id.ts';
import { openWalk } from './change-screen.tsx';
import { ExerciseSearch } from './exercise-search.tsx';

const SESSION = pathTo('gym', 'session');
const RECENT = 8;
type Sides = 'together' | 'one at a time';

/** An exercise that the plan of the day does not have. */
export function AddScreen(): JSX.Element {
  const exercise = useSignal<string | undefined>(undefined);
  const sets = useSignal<number | undefined>(3);
  const sides = useSignal<Sides>('together');
  const walk = openWalk();
  if (!walk) {
    return (
      <Page title="Add an exercise" back={pathTo('gym')}>
        <EmptyState title="No session is under way" words="Begin one from the Gym, then add to it." />
      </Page>
    );
  }
  const chosen = exercise.value === undefined ? undefined : book.value.exercise(exercise.value);
  const known = [...new Set(gym.value.log.hardSets.toReversed().map(({ data }) => data.exercise))];
  return (
    <Page title="Add an exercise" back={SESSION} backWords="Session" busy>
      <Section title={chosen?.name ?? 'Which one'}>
        <ExerciseSearch
          label={chosen ? 'Another one' : 'Exercise'}
          near={chosen ? [] : known.slice(0, RECENT).map((key) => book.value.exercise(key))}
          onChoose={(key) => {
            exercise.value = key;
            sides.value = book.value.exercise(key).oneSide ? 'one at a time' : 'together';
          }}
        />
        {chosen && (
          <HowMany
            sets={sets.value}
            onSets={(n) => (sets.value = n)}
            sides={sides.value}
            onSides={(value) => (sides.value = value)}
          />
        )}
      </Section>
      <ActionBar>
        <Button
          kind="next"
          records
          wide
          disabled={chosen === undefined || sets.value === undefined}
          onPress={() =>
            chosen && sets.value !== undefined && void add(walk, chosen, sets.value, sides.value)
          }
        >
          {chosen ? `Add ${chosen.name}` : 'Choose an exercise'}
        </Button>
      </ActionBar>
    </Page>
  );
}

interface HowManyProps {
  readonly sets: number | undefined;
  readonly onSets: (sets: number | undefined) => void;
  readonly sides: Sides;
  readonly onSides: (sides: Sides) => void;
}

function HowMany({ sets, onSets, sides, onSides }: HowManyProps): JSX.Element {
  return (
    <>
      <StepperField label="Sets" step={1} min={1} max={20} value={sets} onValue={onSets} />
      <ChoiceField
        label="Sides"
        layout="row"
        value={sides}
        options={[
          { value: 'together', label: 'both together' },
          { value: 'one at a time', label: 'one at a time' },
        ]}
        onValue={onSides}
      />
    </>
  );
}

async function add(walk: SessionWalk, chosen: Exercise, count: number, sides: Sides): Promise<void> {
  const { exercise, machine, implement, name } = chosen;
  const saved = await record(
    'exercise-added',
    {
      session: walk.session.session,
      slot: {
        slot: newId('slot'),
        exercise,
        sides,
        ...(machine !== undefined && { machine }),
        ...(implement !== undefined && { implement }),
        sets: [{ set: 'working', count }],
      },
    },
    { says: `${name} is added` },
  );
  if (saved.status !== 'refused') go(SESSION);
}

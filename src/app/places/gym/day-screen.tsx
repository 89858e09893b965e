import { signal, type Signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { book, training } from '../../views/training-view.ts';
import { newId } from '../../views/new-id.ts';
import { problemAt } from '../../views/problem-at.ts';
import {
  dayDraft,
  draftOfDay,
  earlier,
  emptyDay,
  joined,
  parted,
  readDay,
  withExercise,
} from './day-draft.ts';
import type { DayDraft } from './day-draft.ts';
import { ExerciseSearch } from './exercise-search.tsx';
import { schemeWords } from './scheme-words.ts';

const problems = signal<readonly Problem[]>([]);

/** The draft of a training day; the screens of its exercises change the same one. */
export function draftOf(id: string): Signal<DayDraft> {
  const known = training.peek().templates.find(({ data }) => data.template === id);
  const start = known ? draftOfDay(known.data, (key) => book.peek().exercise(key).oneSide) : emptyDay;
  return draft(keyOf(id), dayDraft, start);
}

function keyOf(id: string): string {
  return `gym/day/${id}`;
}

/** A training day: exercises in order, alone or walked together. */
export function DayScreen({ id }: { readonly id: string }): JSX.Element {
  const typed = draftOf(id);
  const known = training.value.templates.find(({ data }) => data.template === id);
  return (
    <Page title={known?.data.name ?? 'A training day'} back={pathTo('gym', 'templates')}>
      <Form onSubmit={() => void keep(typed.value, id)} problems={problems.value}>
        <Section title="The day">
          <TextField
            label="Name"
            hint="legs, push, upper"
            value={typed.value.name}
            onValue={(name) => (typed.value = { ...typed.value, name })}
            problem={problemAt(problems.value, 'name')}
          />
        </Section>
        {typed.value.blocks.map((_, place) => (
          <Block key={place} id={id} typed={typed} place={place} />
        ))}
        <Section title="Another exercise">
          <ExerciseSearch
            label="Exercise"
            onChoose={(key) =>
              (typed.value = withExercise(typed.value, book.value.exercise(key), newId('slot')))
            }
          />
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this day
          </Button>
          {known && (
            <Button records onPress={() => void putAway(known.data)}>
              Put away
            </Button>
          )}
        </ActionBar>
      </Form>
    </Page>
  );
}

interface BlockProps {
  readonly id: string;
  readonly typed: Signal<DayDraft>;
  readonly place: number;
}

const TOGETHER = ['', 'alone', 'superset', 'giant set'] as const;

function Block({ id, typed, place }: BlockProps): JSX.Element | null {
  const block = typed.value.blocks[place];
  if (!block) return null;
  const { slots } = block;
  return (
    <Section title={`${place + 1}`} detail={TOGETHER[Math.min(3, slots.length)]}>
      <List>
        {slots.map(({ slot, exercise, sides, sets }) => (
          <ListRow
            key={slot}
            title={book.value.exercise(exercise).name}
            detail={`${sets.map(schemeWords).join('; ')}${sides === 'one at a time' ? '; one side at a time' : ''}`}
            href={pathTo('gym', 'template', id, slot)}
          />
        ))}
      </List>
      <div class="row">
        {place > 0 && (
          <>
            <Button
              label={`Earlier: exercise ${place + 1}`}
              onPress={() => (typed.value = earlier(typed.value, place))}
            >
              Earlier
            </Button>
            <Button
              label={`Together with the one before: exercise ${place + 1}`}
              onPress={() => (typed.value = joined(typed.value, place))}
            >
              Together with the one before
            </Button>
          </>
        )}
        {slots.length > 1 && (
          <Button
            label={`Each alone: exercise ${place + 1}`}
            onPress={() => (typed.value = parted(typed.value, place))}
          >
            Each alone
          </Button>
        )}
      </div>
      {slots.length > 1 && <Note>A round is one set of each.</Note>}
    </Section>
  );
}

async function keep(typed: DayDraft, id: string): Promise<void> {
  const read = readDay(typed, id === 'new' ? newId('day') : id, (key) => book.value.exercise(key).name);
  problems.value = read.ok ? [] : [read.problem];
  if (!read.ok) return;
  const saved = await record('session-planned', read.value, { says: `${read.value.name} is planned` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(keyOf(id));
  go(pathTo('gym', 'templates'));
}

async function putAway(day: (typeof training.value.templates)[number]['data']): Promise<void> {
  const saved = await record(
    'session-planned',
    { ...day, retired: true },
    { says: `${day.name} is put away` },
  );
  if (saved.status !== 'refused') go(pathTo('gym', 'templates'));
}

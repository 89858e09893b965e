import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { book, gym } from '../../views/training-view.ts';
import { newId } from '../../views/new-id.ts';
import { draftOfExercise, exerciseDraft, readExercise, type ExerciseDraft } from './exercise-draft.ts';
import { ExpectedSection } from './expected-section.tsx';
import { CautionFields, WhatFields, type ExerciseFieldsProps } from './exercise-fields.tsx';
import { setWords } from './gym-words.ts';

const problems = signal<readonly Problem[]>([]);

function keyOf(id: string): string {
  return `gym/exercise/${id}`;
}

/** An exercise: what it moves and how it is loaded, what it has to protect, and its last sets. */
export function ExerciseScreen({ id }: { readonly id: string }): JSX.Element {
  const known = id === 'new' ? undefined : book.value.exercise(id);
  const typed = draft(keyOf(id), exerciseDraft, draftOfExercise(known));
  const props: ExerciseFieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
    problems: problems.value,
  };
  return (
    <Page title={known?.name ?? 'An exercise of your own'} back={pathTo('gym', 'exercises')}>
      <Form onSubmit={() => void keep(typed.value, id)} problems={problems.value}>
        <Columns wide="even">
          <div class="stack">
            <Section title="To protect">
              <CautionFields {...props} />
            </Section>
            <ExpectedSection exercise={id} />
            <LastSets exercise={id} />
          </div>
          <Section title="What it is">
            <WhatFields {...props} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this exercise
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

const SHOWN = 6;

function LastSets({ exercise }: { readonly exercise: string }): JSX.Element | null {
  const sets = gym.value.log.hardSets.filter(({ data }) => data.exercise === exercise).slice(-SHOWN);
  if (sets.length === 0) return null;
  return (
    <Section title="Last sets">
      <List>
        {sets.toReversed().map(({ entry, day, data }) => (
          <ListRow
            key={entry.id}
            title={setWords(data)}
            detail={dateWords(day)}
            href={pathTo('journal', 'entry', entry.id)}
          />
        ))}
      </List>
      <div class="row">
        <Button href={pathTo('gym', 'pain', exercise)}>Note pain at it</Button>
      </div>
    </Section>
  );
}

async function keep(typed: ExerciseDraft, id: string): Promise<void> {
  const read = readExercise(typed, id === 'new' ? newId('exercise') : id);
  problems.value = read.ok ? [] : [read.problem];
  if (!read.ok) return;
  const saved = await record('exercise-described', read.value, { says: `${read.value.name} is kept` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(keyOf(id));
  go(pathTo('gym', 'exercises'));
}

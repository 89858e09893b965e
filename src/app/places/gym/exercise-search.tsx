import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Exercise } from '#core/gym/book/exercise-book.ts';
import { wordsOfMuscle } from '#core/tables/muscles.ts';
import { SearchField } from '../../parts/search-field.tsx';
import { book } from '../../views/training-view.ts';
import { findExercises } from './find-exercises.ts';

interface ExerciseSearchProps {
  readonly label: string;
  /** Offered before anything is typed. */
  readonly near?: readonly Exercise[] | undefined;
  readonly onChoose: (exercise: string) => void;
}

/** An exercise by its name or by the muscle it moves. */
export function ExerciseSearch({ label, near = [], onChoose }: ExerciseSearchProps): JSX.Element {
  const query = useSignal('');
  const found = query.value.trim() === '' ? near : findExercises(book.value.exercises(), query.value);
  return (
    <SearchField
      label={label}
      hint="a name, or a muscle in plain words"
      query={query.value}
      onQuery={(typed) => (query.value = typed)}
      results={found.map(({ exercise, name, prime }) => ({
        id: exercise,
        title: name,
        detail: prime.map(wordsOfMuscle).join(', '),
      }))}
      onChoose={(exercise) => {
        query.value = '';
        onChoose(exercise);
      }}
      nothing="No exercise by that name. Describe it under Exercises."
    />
  );
}

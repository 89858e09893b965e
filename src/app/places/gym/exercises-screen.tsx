import type { JSX } from 'preact';
import { wordsOfMuscle } from '#core/tables/muscles.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Tag } from '../../parts/tag.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { book, gym } from '../../views/training-view.ts';
import { ExerciseSearch } from './exercise-search.tsx';

/** Exercises: those trained and described first; every other one by its name or muscle. */
export function ExercisesScreen(): JSX.Element {
  const trained = new Set(gym.value.log.hardSets.map(({ data }) => data.exercise));
  const shown = book.value
    .exercises()
    .filter(({ exercise, known }) => known === 'described' || trained.has(exercise))
    .toSorted((a, b) => (a.name < b.name ? -1 : 1));
  return (
    <Page title="Exercises" back={pathTo('gym')}>
      <Section title="Find one">
        <ExerciseSearch label="Exercise" onChoose={(key) => go(pathTo('gym', 'exercise', key))} />
      </Section>
      {shown.length > 0 && (
        <Section title="Yours">
          <List>
            {shown.map(({ exercise, name, prime, caution }) => (
              <ListRow
                key={exercise}
                title={name}
                detail={prime.map(wordsOfMuscle).join(', ')}
                figure={caution ? <Tag kind="caution">{caution.joint}</Tag> : undefined}
                href={pathTo('gym', 'exercise', exercise)}
              />
            ))}
          </List>
        </Section>
      )}
      <ActionBar>
        <Button kind="next" wide href={pathTo('gym', 'exercise', 'new')}>
          Describe one of your own
        </Button>
      </ActionBar>
    </Page>
  );
}

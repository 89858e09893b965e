import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Fact } from '#core/journal/ledger.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { FileField } from '../../parts/file-field.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { keepPhoto } from '../../state/photos.ts';
import { PhotoPair } from './photo-pair.tsx';

type View = DataOf<'photo-taken'>['view'];
const VIEWS: readonly View[] = ['front', 'side left', 'side right', 'back'];

const view = signal<View>('front');
const problem = signal<Problem | undefined>(undefined);
const compared = signal<{ readonly earlier?: string; readonly later?: string }>({});

/** Photographs kept on this device only, compared side by side at equal scale. */
export function PhotosScreen(): JSX.Element {
  const taken = ledger.value.of('photo-taken').filter((fact) => fact.data.view === view.value);
  return (
    <Page title="Photographs" back={pathTo('body')}>
      <Section title="Which view">
        <ChoiceField
          label="View"
          layout="row"
          value={view.value}
          options={VIEWS.map((value) => ({ value, label: value }))}
          onValue={(chosen) => {
            view.value = chosen;
            compared.value = {};
          }}
        />
        <FileField label="Add a photograph" accept="image/*" onFile={(file) => void take(file)} />
        {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
        <Note>
          Same place, same light, same distance, relaxed. The picture stays in this browser; copies of the
          journal hold only its date and size.
        </Note>
      </Section>
      <Compare taken={taken} />
    </Page>
  );
}

function Compare({ taken }: { readonly taken: readonly Fact<'photo-taken'>[] }): JSX.Element {
  const [first, last] = [taken[0], taken.at(-1)];
  if (!first || !last) {
    return (
      <EmptyState
        title="No photograph of this view yet"
        words="One now and one every second week is enough to see what the scale hides."
      />
    );
  }
  const options = taken.map((fact) => ({ value: fact.entry.id, label: dateWords(fact.day) }));
  const earlier = taken.find((fact) => fact.entry.id === compared.value.earlier) ?? first;
  const later = taken.find((fact) => fact.entry.id === compared.value.later) ?? last;
  return (
    <Section title="Side by side" detail="crown and soles brought to the same height">
      <PhotoPair earlier={earlier} later={later} />
      {taken.length > 2 && (
        <>
          <ChoiceField
            label="Left"
            layout="row"
            value={earlier.entry.id}
            options={options}
            onValue={(id) => (compared.value = { ...compared.value, earlier: id })}
          />
          <ChoiceField
            label="Right"
            layout="row"
            value={later.entry.id}
            options={options}
            onValue={(id) => (compared.value = { ...compared.value, later: id })}
          />
        </>
      )}
    </Section>
  );
}

async function take(file: File): Promise<void> {
  const size = await sizeOf(file);
  if (!size) {
    problem.value = {
      code: 'body/not-a-picture',
      path: 'photo',
      message: 'This file is no picture this browser can read.',
      remedy: 'Choose a JPEG or PNG photograph.',
    };
    return;
  }
  const kept = await keepPhoto(file);
  if (!kept.ok) {
    problem.value = kept.problem;
    return;
  }
  const saved = await record(
    'photo-taken',
    { photo: kept.value, view: view.value, ...size },
    { says: 'Photograph kept on this device' },
  );
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
}

async function sizeOf(file: File): Promise<{ widthPx: number; heightPx: number } | undefined> {
  try {
    const picture = await createImageBitmap(file);
    const size = { widthPx: picture.width, heightPx: picture.height };
    picture.close();
    return size;
  } catch (fault) {
    // A file that is no picture is answered with a sentence; anything else is a fault of ours.
    if (fault instanceof DOMException) return undefined;
    throw fault;
  }
}

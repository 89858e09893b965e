import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { book } from '../../views/training-view.ts';
import { newScheme, withoutSlot, withSlot, type SchemeDraft, type SlotDraft } from './day-draft.ts';
import { draftOf } from './day-screen.tsx';
import { SchemeFields } from './scheme-fields.tsx';

const MOST_SCHEMES = 20;
/** A warm-up has no mark to reach and no rest to keep: both follow from the set it leads to. */
const warmUps: SchemeDraft = { set: 'warm-up', count: 3, tempo: '' };

/** One exercise of a training day: its sets, kind by kind, and its sides. */
export function SlotScreen({ id, slot }: { readonly id: string; readonly slot: string }): JSX.Element {
  const typed = draftOf(id);
  const back = pathTo('gym', 'template', id);
  const mine = typed.value.blocks.flatMap(({ slots }) => slots).find((one) => one.slot === slot);
  if (!mine) {
    return (
      <Page title="Exercise" back={back}>
        <EmptyState title="This exercise is not in the day" words="Go back and choose one, or add it." />
      </Page>
    );
  }
  const change = (part: Partial<SlotDraft>): void => {
    typed.value = withSlot(typed.value, slot, part);
  };
  const setScheme = (place: number, part: Partial<SchemeDraft>): void =>
    change({ sets: mine.sets.map((scheme, i) => (i === place ? { ...scheme, ...part } : scheme)) });
  return (
    <Page title={book.value.exercise(mine.exercise).name} back={back} backWords="The day">
      {mine.sets.map((scheme, place) => (
        <Section key={place} title={`Sets, part ${place + 1}`}>
          <SchemeFields scheme={scheme} change={(part) => setScheme(place, part)} />
          {mine.sets.length > 1 && (
            <div class="row">
              <Button
                kind="quiet"
                label={`Without part ${place + 1}`}
                onPress={() => change({ sets: mine.sets.toSpliced(place, 1) })}
              >
                {`Without part ${place + 1}`}
              </Button>
            </div>
          )}
        </Section>
      ))}
      <More
        mine={mine}
        change={change}
        onOut={() => {
          typed.value = withoutSlot(typed.value, slot);
          go(back);
        }}
      />
      <ActionBar>
        <Button kind="next" wide href={back}>
          Back to the day
        </Button>
      </ActionBar>
    </Page>
  );
}

interface MoreProps {
  readonly mine: SlotDraft;
  readonly change: (part: Partial<SlotDraft>) => void;
  readonly onOut: () => void;
}

function More({ mine, change, onOut }: MoreProps): JSX.Element {
  return (
    <Section title="More of it">
      <div class="row">
        <Button
          disabled={mine.sets.length >= MOST_SCHEMES}
          onPress={() => change({ sets: [warmUps, ...mine.sets] })}
        >
          Warm-ups before
        </Button>
        <Button
          disabled={mine.sets.length >= MOST_SCHEMES}
          onPress={() => change({ sets: [...mine.sets, { ...newScheme, count: 1 }] })}
        >
          More sets after
        </Button>
      </div>
      <ChoiceField
        label="Sides"
        layout="row"
        value={mine.sides}
        options={[
          { value: 'together', label: 'both together' },
          { value: 'one at a time', label: 'one at a time' },
        ]}
        onValue={(sides) => change({ sides })}
      />
      <div class="row">
        <Button kind="quiet" onPress={onOut}>
          Take it out of the day
        </Button>
      </div>
    </Section>
  );
}

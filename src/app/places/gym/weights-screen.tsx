import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { weights } from '../../views/gym-view.ts';
import { AddDumbbells, AddPlate } from './add-weights.tsx';
import { BarsSection } from './bars-section.tsx';
import { draftOfCount, readCount, weightsDraft, type WeightsDraft } from './weights-draft.ts';

const DRAFT = 'gym/weights';
const problems = signal<readonly Problem[]>([]);

/** What the place has: bars, loose plates of either unit, dumbbells. Counted once, corrected when it changes. */
export function WeightsScreen(): JSX.Element {
  const typed = draft(DRAFT, weightsDraft, draftOfCount(weights.value));
  const change = (next: WeightsDraft): void => {
    typed.value = next;
  };
  return (
    <Page title="Bars, plates, dumbbells" back={pathTo('gym')}>
      <Columns wide="even">
        <BarsSection />
        <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
          <Section title="Plates" detail="all there are, both sides together">
            <TextField
              label="Place"
              hint="where they are; each place has its own count"
              value={typed.value.place}
              onValue={(place) => change({ ...typed.value, place })}
              optional
            />
            <Plates typed={typed.value} change={change} />
            <AddPlate typed={typed.value} change={change} />
          </Section>
          <Section title="Dumbbells" detail="in pairs">
            <Dumbbells typed={typed.value} change={change} />
            <AddDumbbells typed={typed.value} change={change} />
          </Section>
          <ActionBar>
            <Button kind="next" records wide submits>
              Keep this count
            </Button>
          </ActionBar>
        </Form>
      </Columns>
    </Page>
  );
}

export interface WeightsProps {
  readonly typed: WeightsDraft;
  readonly change: (next: WeightsDraft) => void;
}

function Plates({ typed, change }: WeightsProps): JSX.Element {
  if (typed.plates.length === 0) return <Note>No plate is listed yet.</Note>;
  return (
    <div class="stack">
      {typed.plates.map((plate, place) => (
        <StepperField
          key={`${plate.mass} ${plate.unit}`}
          label={`${plate.mass} ${plate.unit} plates`}
          step={2}
          min={0}
          max={200}
          value={plate.count}
          onValue={(count) =>
            change({
              ...typed,
              plates: typed.plates.map((other, i) => (i === place ? { ...other, count } : other)),
            })
          }
        />
      ))}
    </div>
  );
}

function Dumbbells({ typed, change }: WeightsProps): JSX.Element {
  const { dumbbellPairs } = typed;
  if (dumbbellPairs.length === 0) return <Note>No pair is listed yet.</Note>;
  const without = (place: number) => dumbbellPairs.filter((_, i) => i !== place);
  return (
    <>
      <Note>Press a pair that is not there to take it off the list.</Note>
      <div class="row">
        {dumbbellPairs.map(({ mass, unit }, place) => (
          <Button
            key={`${mass} ${unit}`}
            label={`${mass} ${unit}: take off the list`}
            onPress={() => change({ ...typed, dumbbellPairs: without(place) })}
          >
            {`${mass} ${unit}`}
          </Button>
        ))}
      </div>
    </>
  );
}

async function keep(typed: WeightsDraft): Promise<void> {
  const read = readCount(typed);
  problems.value = read.ok ? [] : [read.problem];
  if (!read.ok) return;
  const saved = await record('weights-counted', read.value, { says: 'The count is kept' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status !== 'refused') clearDraft(DRAFT);
}

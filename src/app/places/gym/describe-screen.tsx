import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { FileField } from '../../parts/file-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { keepPhoto } from '../../state/photos.ts';
import { machines } from '../../views/gym-view.ts';
import { newId } from '../../views/new-id.ts';
import { problemAt } from '../../views/problem-at.ts';
import { KeptPhoto } from './kept-photo.tsx';
import { draftOfMachine, emptyMachine, machineDraft, readGeometry, readMachine } from './machine-draft.ts';
import type { MachineDraft, MachineKind } from './machine-draft.ts';
import { MachineDrawing } from './machine-drawing.tsx';
import { MeasureFields, type MeasureFieldsProps } from './measure-fields.tsx';

const problems = signal<readonly Problem[]>([]);

/** A machine described once: by tape and level, by its rails, by its stack, or only by the names of its pegs. */
export function DescribeScreen({ id }: { readonly id: string }): JSX.Element {
  const known = machines.value.find(({ machine }) => machine === id);
  const typed = draft(keyOf(id), machineDraft, known ? draftOfMachine(known) : emptyMachine);
  const props: MeasureFieldsProps = {
    typed: typed.value,
    change: (part) => {
      typed.value = { ...typed.value, ...part };
    },
    problems: problems.value,
  };
  const geometry = readGeometry(typed.value);
  return (
    <Page
      title={known ? `Describe ${known.name} anew` : 'Describe a machine'}
      back={known ? pathTo('gym', 'machine', id) : pathTo('gym', 'machines')}
    >
      <Form onSubmit={() => void keep(typed.value, id)} problems={problems.value}>
        <Columns wide="even">
          <Section title="What it is">
            <WhatFields {...props} />
          </Section>
          <Section title="Its measures">
            <div class="stack">
              <MeasureFields {...props} />
              {geometry.ok && geometry.value.of === 'lever' && (
                <MachineDrawing machine={geometry.value} pegs={[]} />
              )}
            </div>
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this machine
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function keyOf(id: string): string {
  return id === '' ? 'gym/machine' : `gym/machine/${id}`;
}

const KINDS: readonly { readonly value: MachineKind; readonly label: string; readonly detail: string }[] = [
  { value: 'lever', label: 'Lever with pegs', detail: 'measured with a tape and the phone’s level' },
  {
    value: 'unknown',
    label: 'Pegs, not measured',
    detail: 'sets compare only at the same division of plates',
  },
  { value: 'sled', label: 'Sled on rails', detail: 'its weight and the angle of the rails' },
  { value: 'stack', label: 'Stack with a pin', detail: 'first and last plate, step, half holes, add-ons' },
];

function WhatFields({ typed, change }: MeasureFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <TextField
        label="Name"
        value={typed.name}
        onValue={(name) => change({ name })}
        problem={problemAt(problems.value, 'name')}
      />
      <TextField
        label="Where it stands"
        value={typed.place}
        onValue={(place) => change({ place })}
        optional
      />
      <ChoiceField label="Kind" value={typed.of} options={KINDS} onValue={(of) => change({ of })} />
      <FileField
        label="Photograph"
        hint="kept on this device only; it helps to find the pegs again"
        accept="image/*"
        onFile={(file) => void takePhoto(file, change)}
        problem={problemAt(problems.value, 'photo')}
      />
      {typed.photo !== undefined && <KeptPhoto photo={typed.photo} words="The machine" />}
    </div>
  );
}

async function takePhoto(file: File, change: (part: Partial<MachineDraft>) => void): Promise<void> {
  const kept = await keepPhoto(file);
  problems.value = kept.ok ? [] : [{ ...kept.problem, path: 'photo' }];
  if (kept.ok) change({ photo: kept.value });
}

async function keep(typed: MachineDraft, id: string): Promise<void> {
  const machine = id === '' ? newId('machine') : id;
  const read = readMachine(typed, machine);
  problems.value = read.ok ? [] : [read.problem];
  if (!read.ok) return;
  const saved = await record('machine-described', read.value, { says: `${read.value.name} is described` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(keyOf(id));
  go(pathTo('gym', 'machine', machine));
}

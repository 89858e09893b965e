import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { record } from '../../state/open-journal.ts';
import { implementsAtHand, type Implement } from '../../views/gym-view.ts';
import { loadUnit } from '../../views/load-units.ts';
import { newId } from '../../views/new-id.ts';
import { UnitField } from './add-weights.tsx';

/** Bars and whatever else plates go on, each with its weight empty. */
export function BarsSection(): JSX.Element {
  const bars = implementsAtHand.value;
  return (
    <Section title="Bars" detail="and whatever else plates go on">
      {bars.length === 0 ? (
        <Note>
          None is described yet. Bars differ by kilograms: weigh yours once, on a scale if there is one.
        </Note>
      ) : (
        <List>
          {bars.map((bar) => (
            <ListRow
              key={bar.implement}
              title={bar.name}
              detail={bar.sides === 2 ? 'plates on both sides' : 'plates on one side'}
              figure={
                <>
                  <strong>{`${bar.empty.mass} ${bar.empty.unit}`}</strong>
                  <Button
                    kind="quiet"
                    records
                    label={`Put away ${bar.name}`}
                    onPress={() =>
                      void record(
                        'implement-described',
                        { ...bar, retired: true },
                        { says: `${bar.name} is put away` },
                      )
                    }
                  >
                    Put away
                  </Button>
                </>
              }
            />
          ))}
        </List>
      )}
      <AddBar />
    </Section>
  );
}

function AddBar(): JSX.Element {
  const name = useSignal('');
  const mass = useSignal<number | undefined>(undefined);
  const unit = useSignal<'kg' | 'lb'>(loadUnit.value.unit);
  const sides = useSignal<Implement['sides']>(2);
  const ready = mass.value !== undefined && name.value.trim() !== '';
  const keep = (): void => {
    if (mass.value === undefined || name.value.trim() === '') return;
    void record(
      'implement-described',
      {
        implement: newId('bar'),
        name: name.value.trim(),
        empty: { mass: mass.value, unit: unit.value },
        sides: sides.value,
      },
      { says: `${name.value.trim()} is remembered` },
    );
    name.value = '';
    mass.value = undefined;
  };
  return (
    <Form onSubmit={keep} problems={[]}>
      <TextField
        label="Another one"
        hint="straight bar, curl bar, loading pin"
        value={name.value}
        onValue={(text) => (name.value = text)}
      />
      <UnitField value={unit.value} onValue={(chosen) => (unit.value = chosen)} />
      <NumberField
        label="Weighs, empty"
        unit={unit.value}
        decimals={2}
        min={0}
        max={600}
        value={mass.value}
        onValue={(n) => (mass.value = n)}
      />
      <ChoiceField
        label="Plates go on"
        layout="row"
        value={sides.value === 2 ? 'both' : 'one'}
        options={[
          { value: 'both', label: 'both sides' },
          { value: 'one', label: 'one side' },
        ]}
        onValue={(side) => (sides.value = side === 'both' ? 2 : 1)}
      />
      <div class="row">
        <Button records submits disabled={!ready}>
          Remember it
        </Button>
      </div>
    </Form>
  );
}

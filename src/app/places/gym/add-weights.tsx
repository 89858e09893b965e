import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { loadUnit } from '../../views/load-units.ts';
import { withDumbbells, withPlate } from './weights-draft.ts';
import type { WeightsProps } from './weights-screen.tsx';

type Unit = 'kg' | 'lb';

export function UnitField({
  value,
  onValue,
}: {
  readonly value: Unit;
  readonly onValue: (unit: Unit) => void;
}): JSX.Element {
  return (
    <ChoiceField
      label="Stamped in"
      layout="row"
      value={value}
      options={[
        { value: 'kg', label: 'kg' },
        { value: 'lb', label: 'lb' },
      ]}
      onValue={onValue}
    />
  );
}

/** Another kind of plate, in the unit that stands on it. */
export function AddPlate({ typed, change }: WeightsProps): JSX.Element {
  const mass = useSignal<number | undefined>(undefined);
  const unit = useSignal<Unit>(loadUnit.value.unit);
  return (
    <div class="stack">
      <UnitField value={unit.value} onValue={(chosen) => (unit.value = chosen)} />
      <NumberField
        label="Another plate weighs"
        unit={unit.value}
        decimals={3}
        min={0.05}
        max={600}
        value={mass.value}
        onValue={(n) => (mass.value = n)}
      />
      <div class="row">
        <Button
          disabled={mass.value === undefined}
          onPress={() => {
            if (mass.value === undefined) return;
            change(withPlate(typed, { mass: mass.value, unit: unit.value }));
            mass.value = undefined;
          }}
        >
          Add this plate
        </Button>
      </div>
    </div>
  );
}

/** One pair, or a rack by its ends and its step. */
export function AddDumbbells({ typed, change }: WeightsProps): JSX.Element {
  const run = useSignal<{ from?: number | undefined; to?: number | undefined; step?: number | undefined }>(
    {},
  );
  const unit = useSignal<Unit>(loadUnit.value.unit);
  const problem = useSignal<{ path: string; words: string } | undefined>(undefined);
  const fields = [
    { key: 'from', label: 'Lightest pair, each', optional: false },
    { key: 'to', label: 'Heaviest pair, each', optional: true },
    { key: 'step', label: 'Step from pair to pair', optional: true },
  ] as const;
  const add = (): void => {
    const { from, to, step } = run.value;
    const read = withDumbbells(typed, { from, to, step, unit: unit.value });
    problem.value = read.ok
      ? undefined
      : { path: read.problem.path, words: `${read.problem.message} ${read.problem.remedy}` };
    if (!read.ok) return;
    change(read.value);
    run.value = {};
  };
  return (
    <div class="stack">
      <UnitField value={unit.value} onValue={(chosen) => (unit.value = chosen)} />
      {fields.map(({ key, label, optional }) => (
        <NumberField
          key={key}
          label={label}
          unit={unit.value}
          decimals={2}
          min={0.1}
          max={150}
          value={run.value[key]}
          onValue={(n) => (run.value = { ...run.value, [key]: n })}
          problem={problem.value?.path === key ? problem.value.words : undefined}
          optional={optional}
        />
      ))}
      <div class="row">
        <Button onPress={add}>Add these pairs</Button>
      </div>
    </div>
  );
}

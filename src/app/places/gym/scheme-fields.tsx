import type { JSX } from 'preact';
import { setKinds } from '#core/journal/kinds/gym-scheme.ts';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { loadUnit } from '../../views/load-units.ts';
import type { SchemeDraft } from './day-draft.ts';
import { SET_KINDS } from './gym-words.ts';

interface SchemeFieldsProps {
  readonly scheme: SchemeDraft;
  readonly change: (part: Partial<SchemeDraft>) => void;
}

/** So many sets of a kind; what a kind does not need is not asked. */
export function SchemeFields({ scheme, change }: SchemeFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="Kind of set"
        layout="row"
        value={scheme.set}
        options={setKinds.map((value) => ({ value, label: SET_KINDS[value] }))}
        onValue={(set) => change({ set })}
      />
      <StepperField
        label="How many"
        step={1}
        min={1}
        max={20}
        value={scheme.count}
        onValue={(count) => change({ count })}
      />
      {scheme.set !== 'warm-up' && <HardFields scheme={scheme} change={change} />}
    </div>
  );
}

function HardFields({ scheme, change }: SchemeFieldsProps): JSX.Element {
  return (
    <>
      <StepperField
        label="Repetitions, fewest"
        step={1}
        min={1}
        max={100}
        value={scheme.min}
        onValue={(min) => change({ min })}
      />
      <StepperField
        label="Repetitions, most"
        step={1}
        min={1}
        max={100}
        value={scheme.max}
        onValue={(max) => change({ max })}
      />
      <StepperField
        label="Left in reserve"
        step={1}
        min={0}
        max={10}
        decimals={1}
        value={scheme.rir}
        onValue={(rir) => change({ rir })}
        optional
      />
      <StepperField
        label="Rest before it"
        unit="s"
        step={15}
        min={0}
        max={3600}
        value={scheme.restSeconds}
        onValue={(restSeconds) => change({ restSeconds })}
        optional
      />
      <LoadHints scheme={scheme} change={change} />
      <TextField
        label="Tempo"
        hint="seconds of lowering, pause, lifting, pause: 3-1-1-0"
        value={scheme.tempo}
        onValue={(tempo) => change({ tempo })}
        optional
      />
    </>
  );
}

function LoadHints({ scheme, change }: SchemeFieldsProps): JSX.Element {
  const { unit, shown, read } = loadUnit.value;
  const hangs = scheme.set === 'back-off' || scheme.set === 'drop';
  return (
    <>
      {hangs && (
        <NumberField
          label="Share of the top set"
          unit="%"
          min={10}
          max={100}
          value={scheme.sharePercent}
          onValue={(sharePercent) => change({ sharePercent })}
          optional
        />
      )}
      <NumberField
        label="Load"
        hint="stands each time; empty: by what was lifted last"
        unit={unit}
        decimals={2}
        min={0}
        value={scheme.loadKg === undefined ? undefined : shown(scheme.loadKg)}
        onValue={(typed) => change({ loadKg: typed === undefined ? undefined : read(typed) })}
        optional
      />
    </>
  );
}

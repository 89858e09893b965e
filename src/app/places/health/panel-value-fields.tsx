import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import { acceptedUnits } from '#core/health/panel/convert-lab-value.ts';
import { analyteByName } from '#core/health/panel/find-analyte.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { intervalWords, unitSign } from './lab-words.ts';
import { lineFault, withUnit, type LineFault, type ValueDraft } from './panel-draft.ts';
import './panel-value-fields.css';

export interface ValueFieldsProps {
  readonly line: ValueDraft;
  readonly place: number;
  readonly sex: 'female' | 'male';
  /** How the laboratory printed it last. */
  readonly last?: LabValue | undefined;
  readonly set: (part: Partial<ValueDraft>) => void;
  readonly drop: () => void;
}

/**
 * One line of the report: the value is typed, unit and interval stand folded where the laboratory printed them before. What
 * cannot be is asked at once.
 */
export function PanelValueFields({ line, place, sex, last, set, drop }: ValueFieldsProps): JSX.Element {
  const known = analyteByName(line.name)?.analyte;
  const name = known?.name ?? line.name;
  const fault = lineFault(line, place, sex);
  const printed = line.unit !== '' && (line.low !== undefined || line.high !== undefined);
  const open = useSignal(!printed);
  const toUnit = (unit: string): void => set(withUnit(line, unit, last));
  return (
    <fieldset class="lab-line">
      <legend>{name}</legend>
      {!known && (
        <p class="soft">
          Not in the table here: it is kept and shown, and held against the laboratory's interval alone.
        </p>
      )}
      <div class="lab-line-value">
        <TextField
          label={line.unit === '' ? `${name}, value` : `${name} in ${unitSign(line.unit)}`}
          value={line.text}
          onValue={(text) => set({ text, unitConfirmed: false })}
          problem={fault && !fault.asks ? `${fault.message} ${fault.remedy}` : undefined}
        />
        <Button
          kind="quiet"
          pressed={open.value}
          onPress={() => (open.value = !open.value)}
          label={`${foldWords(line)}, of ${name}`}
        >
          {foldWords(line)}
        </Button>
      </div>
      {fault && <Asked line={line} fault={fault} toUnit={toUnit} set={set} />}
      {open.value && <Details line={line} name={name} toUnit={toUnit} set={set} drop={drop} />}
    </fieldset>
  );
}

function foldWords({ low, high }: ValueDraft): string {
  if (low === undefined && high === undefined) return 'Unit and interval';
  return `Interval ${intervalWords({ ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }) })}`;
}

interface DetailsProps extends Pick<ValueFieldsProps, 'line' | 'set' | 'drop'> {
  readonly name: string;
  readonly toUnit: (unit: string) => void;
}

function Details({ line, name, toUnit, set, drop }: DetailsProps): JSX.Element {
  return (
    <>
      <Units line={line} toUnit={toUnit} set={set} />
      <div class="lab-line-interval">
        <NumberField
          label="Interval from"
          decimals={3}
          min={0}
          value={line.low}
          onValue={(low) => set({ low })}
          optional
        />
        <NumberField
          label="Interval to"
          decimals={3}
          min={0}
          value={line.high}
          onValue={(high) => set({ high })}
          optional
        />
      </div>
      <Button kind="quiet" onPress={drop} label={`Take ${name} off the list`}>
        {`Take ${name} off the list`}
      </Button>
    </>
  );
}

function Units({ line, toUnit, set }: Pick<DetailsProps, 'line' | 'toUnit' | 'set'>): JSX.Element {
  const known = analyteByName(line.name)?.analyte;
  if (!known)
    return <TextField label={`${line.name}, unit`} value={line.unit} onValue={(unit) => set({ unit })} />;
  const offered = acceptedUnits(known);
  const units = offered.includes(line.unit) || line.unit === '' ? offered : [line.unit, ...offered];
  return (
    <ChoiceField
      label={`${known.name}, unit`}
      layout="row"
      value={line.unit}
      options={units.map((value) => ({ value, label: unitSign(value) || 'no unit' }))}
      onValue={toUnit}
    />
  );
}

/** A number that is odd in its unit: which unit does the report print? Whatever is answered is kept as answered. */
function Asked({
  line,
  fault,
  toUnit,
  set,
}: Pick<DetailsProps, 'line' | 'toUnit' | 'set'> & { readonly fault: LineFault }): JSX.Element | null {
  if (!fault.asks && fault.units.length === 0) return null;
  return (
    <Caution title="Which unit does the report print?" words={`${fault.message} ${fault.remedy}`}>
      <div class="row">
        {fault.units.map((unit) => (
          <Button key={unit} onPress={() => toUnit(unit)}>
            {`It is ${line.text} ${unitSign(unit)}`}
          </Button>
        ))}
        {fault.asks && (
          <Button kind="quiet" onPress={() => set({ unitConfirmed: true })}>
            {`The report prints ${line.text} ${unitSign(line.unit)}`}
          </Button>
        )}
      </div>
    </Caution>
  );
}

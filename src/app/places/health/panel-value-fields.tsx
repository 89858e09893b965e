import type { JSX } from 'preact';
import { acceptedUnits } from '#core/health/panel/convert-lab-value.ts';
import { analyteByName } from '#core/health/panel/find-analyte.ts';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { unitSign } from './lab-words.ts';
import { lineFault, type LineFault, type ValueDraft } from './panel-draft.ts';
import './panel-value-fields.css';

export interface ValueFieldsProps {
  readonly line: ValueDraft;
  readonly place: number;
  readonly sex: 'female' | 'male';
  readonly set: (part: Partial<ValueDraft>) => void;
  readonly drop: () => void;
}

/** One line of the report: value, unit, the laboratory's own interval. What cannot be is asked at once. */
export function PanelValueFields({ line, place, sex, set, drop }: ValueFieldsProps): JSX.Element {
  const known = analyteByName(line.name)?.analyte;
  const fault = lineFault(line, place, sex);
  return (
    <fieldset class="lab-line">
      <legend>{known?.name ?? line.name}</legend>
      {!known && (
        <p class="soft">
          Not in the table here: it is kept and shown, and held against the laboratory's interval alone.
        </p>
      )}
      <div class="lab-line-fields">
        <TextField
          label={`${known?.name ?? line.name}, value`}
          value={line.text}
          onValue={(text) => set({ text, unitConfirmed: false })}
          problem={fault && !fault.asks ? `${fault.message} ${fault.remedy}` : undefined}
        />
        <Units line={line} set={set} />
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
      {fault && <Asked line={line} fault={fault} set={set} />}
      <Button kind="quiet" onPress={drop} label={`Take ${line.name} off the list`}>
        {`Take ${line.name} off the list`}
      </Button>
    </fieldset>
  );
}

function Units({ line, set }: Pick<ValueFieldsProps, 'line' | 'set'>): JSX.Element {
  const known = analyteByName(line.name)?.analyte;
  const change = (unit: string): void => set({ unit, unitConfirmed: false });
  if (!known) return <TextField label={`${line.name}, unit`} value={line.unit} onValue={change} />;
  const offered = acceptedUnits(known);
  const units = offered.includes(line.unit) || line.unit === '' ? offered : [line.unit, ...offered];
  return (
    <ChoiceField
      label={`${known.name}, unit`}
      layout="row"
      value={line.unit}
      options={units.map((value) => ({ value, label: unitSign(value) || 'no unit' }))}
      onValue={change}
    />
  );
}

/** A number that is odd in its unit: which unit does the report print? Whatever is answered is kept as answered. */
function Asked({
  line,
  fault,
  set,
}: {
  readonly line: ValueDraft;
  readonly fault: LineFault;
  readonly set: ValueFieldsProps['set'];
}): JSX.Element | null {
  if (!fault.asks && fault.units.length === 0) return null;
  return (
    <Caution title="Which unit does the report print?" words={`${fault.message} ${fault.remedy}`}>
      <div class="row">
        {fault.units.map((unit) => (
          <Button key={unit} onPress={() => set({ unit, unitConfirmed: false })}>
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

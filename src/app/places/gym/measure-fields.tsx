import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { problemAt } from '../../views/problem-at.ts';
import type { MachineDraft } from './machine-draft.ts';

export interface MeasureFieldsProps {
  readonly typed: MachineDraft;
  readonly change: (part: Partial<MachineDraft>) => void;
  readonly problems: readonly Problem[];
}

type NumberKey = Exclude<
  {
    [Key in keyof MachineDraft]: MachineDraft[Key] extends number | undefined ? Key : never;
  }[keyof MachineDraft],
  undefined | 'sides'
>;

interface Measure {
  readonly key: NumberKey;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly hint?: string;
  readonly optional?: boolean;
}

const LEVER: readonly Measure[] = [
  {
    key: 'fromDeg',
    label: 'Lever at the start',
    unit: '°',
    min: -180,
    max: 180,
    hint: 'phone laid on the lever; below level is minus',
  },
  {
    key: 'toDeg',
    label: 'Lever at the end',
    unit: '°',
    min: -180,
    max: 360,
    hint: 'counted in the direction of the lift',
  },
  { key: 'padCm', label: 'Pivot to pad or handle', unit: 'cm', min: 1, max: 300 },
  {
    key: 'leverKg',
    label: 'Weight of the lever',
    unit: 'kg',
    min: 0,
    max: 300,
    optional: true,
    hint: 'read from the machine; empty counts as none',
  },
  {
    key: 'leverCm',
    label: 'Pivot to its centre of mass',
    unit: 'cm',
    min: 0,
    max: 300,
    optional: true,
    hint: 'about the middle of the lever',
  },
];

const SLED: readonly Measure[] = [
  { key: 'sledKg', label: 'Sled, empty', unit: 'kg', min: 0, max: 300 },
  { key: 'railsDeg', label: 'Rails from level', unit: '°', min: 1, max: 90 },
];

const STACK: readonly Measure[] = [
  { key: 'firstKg', label: 'First plate', unit: 'kg', min: 0, max: 200 },
  { key: 'stepKg', label: 'Each further plate', unit: 'kg', min: 0.1, max: 100 },
  { key: 'lastKg', label: 'All of the stack', unit: 'kg', min: 0, max: 800 },
  { key: 'halfPinKg', label: 'Half hole or sliding weight', unit: 'kg', min: 0.05, max: 50, optional: true },
];

/** The measures of a machine's kind, each with how to take it. */
export function MeasureFields(props: MeasureFieldsProps): JSX.Element {
  switch (props.typed.of) {
    case 'lever':
      return (
        <>
          <Note>
            Distances with a tape from the pivot, angles with the phone’s level and the lever where the
            movement starts.
          </Note>
          <Measures {...props} measures={LEVER} />
          <SidesField {...props} />
          <Pegs {...props} measured />
        </>
      );
    case 'unknown':
      return <Pegs {...props} measured={false} />;
    case 'sled':
      return (
        <>
          <Measures {...props} measures={SLED} />
          <SidesField {...props} />
        </>
      );
    case 'stack':
      return (
        <>
          <Measures {...props} measures={STACK} />
          <TextField
            label="Weights to lay on top"
            hint="kilograms with blanks between: 1.25 2.5"
            value={props.typed.addOns}
            onValue={(addOns) => props.change({ addOns })}
            problem={problemAt(props.problems, 'addOns')}
            optional
          />
        </>
      );
  }
}

function Measures({
  typed,
  change,
  problems,
  measures,
}: MeasureFieldsProps & { readonly measures: readonly Measure[] }): JSX.Element {
  return (
    <>
      {measures.map(({ key, ...words }) => (
        <NumberField
          key={key}
          {...words}
          decimals={2}
          value={typed[key]}
          onValue={(value) => change({ [key]: value })}
          problem={problemAt(problems, key)}
        />
      ))}
    </>
  );
}

function SidesField({ typed, change }: MeasureFieldsProps): JSX.Element {
  return (
    <ChoiceField
      label="Plates go on"
      layout="row"
      value={typed.sides === 2 ? 'both' : 'one'}
      options={[
        { value: 'one', label: 'one side' },
        { value: 'both', label: 'both sides' },
      ]}
      onValue={(side) => change({ sides: side === 'both' ? 2 : 1 })}
    />
  );
}

const MOST_PEGS = 12;

function Pegs({
  typed,
  change,
  problems,
  measured,
}: MeasureFieldsProps & { readonly measured: boolean }): JSX.Element {
  const set = (place: number, part: Partial<MachineDraft['pegs'][number]>): void =>
    change({ pegs: typed.pegs.map((peg, i) => (i === place ? { ...peg, ...part } : peg)) });
  return (
    <>
      {typed.pegs.map((peg, place) => (
        <fieldset class="stack peg" key={place}>
          <legend class="field-label">{`Peg ${place + 1}`}</legend>
          <TextField
            label="Its name"
            hint="low, middle, far"
            value={peg.name}
            onValue={(name) => set(place, { name })}
            problem={problemAt(problems, `pegs.${place}.name`)}
          />
          {measured && (
            <>
              <NumberField
                label="Pivot to the peg"
                unit="cm"
                decimals={1}
                min={0}
                max={300}
                value={peg.cm}
                onValue={(cm) => set(place, { cm })}
                problem={problemAt(problems, `pegs.${place}.cm`)}
              />
              <NumberField
                label="From level, at the start"
                unit="°"
                decimals={1}
                min={-180}
                max={180}
                value={peg.deg}
                onValue={(deg) => set(place, { deg })}
                hint="a straight edge from pivot to peg; empty: in line with the lever"
                optional
              />
            </>
          )}
        </fieldset>
      ))}
      <div class="row">
        <Button
          disabled={typed.pegs.length >= MOST_PEGS}
          onPress={() => change({ pegs: [...typed.pegs, { name: '' }] })}
        >
          Another peg
        </Button>
        {typed.pegs.length > 1 && (
          <Button kind="quiet" onPress={() => change({ pegs: typed.pegs.slice(0, -1) })}>
            Without the last
          </Button>
        )}
      </div>
    </>
  );
}

import type { JSX } from 'preact';
import { NumberField } from '../../parts/number-field.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { loadUnit } from '../../views/load-units.ts';
import type { LoadDraft } from './load-draft.ts';

interface LoadFieldsProps {
  readonly load: LoadDraft;
  readonly change: (part: Partial<LoadDraft>) => void;
  /** The least change the place's weights allow, kg. */
  readonly stepKg: number;
  readonly problem: string | undefined;
}

/** The load of a set, as the thing is loaded: in all, each of a pair, by pegs, by the pin, on the belt. */
export function LoadFields(props: LoadFieldsProps): JSX.Element {
  const { load, change } = props;
  switch (load.of) {
    case 'kg':
      return <MassField {...props} label="Load, all of it" kg={load.kg} onKg={(kg) => change({ kg })} />;
    case 'each':
      return (
        <MassField {...props} label="Each dumbbell" kg={load.kgEach} onKg={(kgEach) => change({ kgEach })} />
      );
    case 'stack':
      return (
        <>
          <MassField {...props} label="Pin at" kg={load.pinKg} onKg={(pinKg) => change({ pinKg })} />
          <MassField
            {...props}
            problem={undefined}
            label="Laid on top"
            kg={load.addOnKg ?? 0}
            stepKg={Math.min(props.stepKg, 2.5)}
            onKg={(addOnKg) => change({ addOnKg })}
          />
        </>
      );
    case 'pegs':
      return <PegFields {...props} />;
    case 'body':
      return <BodyFields {...props} />;
    case 'band':
      return <BandFields {...props} />;
  }
}

function PegFields(props: LoadFieldsProps): JSX.Element {
  const { load, change } = props;
  return (
    <>
      {load.pegs.map(({ peg, kg }) => (
        <MassField
          key={peg}
          {...props}
          label={`Peg "${peg}", all plates`}
          kg={kg ?? 0}
          onKg={(mass) =>
            change({ pegs: load.pegs.map((other) => (other.peg === peg ? { peg, kg: mass } : other)) })
          }
        />
      ))}
    </>
  );
}

function BodyFields(props: LoadFieldsProps): JSX.Element {
  const { load, change } = props;
  return (
    <>
      <MassField {...props} label="On the belt" kg={load.beltKg ?? 0} onKg={(beltKg) => change({ beltKg })} />
      <MassField
        {...props}
        problem={undefined}
        label="Help taken off"
        kg={load.assistKg ?? 0}
        onKg={(assistKg) => change({ assistKg })}
      />
    </>
  );
}

function BandFields(props: LoadFieldsProps): JSX.Element {
  const { load, change } = props;
  return (
    <>
      <TextField
        label="Band"
        hint="a band is noted, never turned into kilograms"
        value={load.band}
        onValue={(band) => change({ band })}
        problem={props.problem}
      />
      <NumberField
        label="Weight beside it"
        unit={loadUnit.value.unit}
        decimals={2}
        min={0}
        value={load.kg === undefined ? undefined : loadUnit.value.shown(load.kg)}
        onValue={(typed) => change({ kg: typed === undefined ? undefined : loadUnit.value.read(typed) })}
        optional
      />
    </>
  );
}

interface MassFieldProps {
  readonly label: string;
  readonly kg: number | undefined;
  readonly onKg: (kg: number | undefined) => void;
  readonly stepKg: number;
  readonly problem: string | undefined;
}

const HEAVIEST_KG = 800;

function MassField({ label, kg, onKg, stepKg, problem }: MassFieldProps): JSX.Element {
  const { unit, shown, read } = loadUnit.value;
  return (
    <StepperField
      label={label}
      unit={unit}
      decimals={2}
      step={shown(stepKg)}
      min={0}
      max={shown(HEAVIEST_KG)}
      value={kg === undefined ? undefined : shown(kg)}
      onValue={(typed) => onKg(typed === undefined ? undefined : read(typed))}
      problem={problem}
    />
  );
}

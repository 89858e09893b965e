import type { JSX } from 'preact';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { roundTo } from '#core/units/rounding.ts';
import { TextField } from '../../parts/text-field.tsx';
import { loadUnit } from '../../views/load-units.ts';
import { SetNumber, type SetNumberProps } from './set-number.tsx';

interface LoadFieldsProps {
  readonly load: SetLoad;
  /** One tap changes the load by so much, kg. */
  readonly stepKg: number;
  readonly onLoad: (load: SetLoad) => void;
  readonly onUnread: SetNumberProps['onUnread'];
}

/** What is on the implement, in the form it is loaded in. */
export function LoadFields({ load, stepKg, onLoad, onUnread }: LoadFieldsProps): JSX.Element {
  const field = (label: string, kg: number, next: (kg: number) => SetLoad, hint?: string): JSX.Element => (
    <MassStepper
      key={label}
      label={label}
      kg={kg}
      stepKg={stepKg}
      hint={hint}
      onKg={(to) => onLoad(next(to))}
      onUnread={onUnread}
    />
  );
  switch (load.of) {
    case 'kg':
      return field('Load', load.kg, (kg) => ({ ...load, kg }), 'all of it, bar or sled counted');
    case 'each':
      return field('Each dumbbell', load.kgEach, (kgEach) => ({ ...load, kgEach }));
    case 'stack':
      return (
        <>
          {field('Pin', load.pinKg, (pinKg) => ({ ...load, pinKg }))}
          {field('Laid on top', load.addOnKg ?? 0, (kg) => withAddOn(load, kg))}
        </>
      );
    case 'pegs':
      return (
        <>
          {load.pegs.map(({ peg, kg }, place) =>
            field(`Peg ${peg}, all plates`, kg, (to) => ({
              ...load,
              pegs: load.pegs.with(place, { peg, kg: to }),
            })),
          )}
        </>
      );
    case 'body':
      return <BodyFields load={load} field={field} />;
    case 'band':
      return (
        <TextField
          label="Band"
          value={load.band}
          onValue={(band) => onLoad({ ...load, band: band === '' ? 'band' : band })}
        />
      );
  }
}

type StackLoad = Extract<SetLoad, { of: 'stack' }>;

/** Nothing laid on top is no add-on. */
function withAddOn({ addOnKg: _before, ...load }: StackLoad, kg: number): SetLoad {
  return kg > 0 ? { ...load, addOnKg: kg } : load;
}

type BodyLoad = Extract<SetLoad, { of: 'body' }>;

interface BodyFieldsProps {
  readonly load: BodyLoad;
  readonly field: (label: string, kg: number, next: (kg: number) => SetLoad) => JSX.Element;
}

function BodyFields({ load, field }: BodyFieldsProps): JSX.Element {
  const { beltKg = 0, assistKg = 0 } = load;
  return (
    <>
      {field('On the belt', beltKg, (kg) => (kg > 0 ? { of: 'body', beltKg: kg } : { of: 'body' }))}
      {field('Help', assistKg, (kg) => (kg > 0 ? { of: 'body', assistKg: kg } : { of: 'body' }))}
    </>
  );
}

interface MassStepperProps {
  readonly label: string;
  readonly kg: number;
  readonly stepKg: number;
  readonly hint: string | undefined;
  readonly onKg: (kg: number) => void;
  readonly onUnread: SetNumberProps['onUnread'];
}

function MassStepper({ label, kg, stepKg, hint, onKg, onUnread }: MassStepperProps): JSX.Element {
  const { unit, shown, read } = loadUnit.value;
  return (
    <SetNumber
      label={label}
      hint={hint}
      unit={unit}
      value={roundTo(shown(kg), 2)}
      step={roundTo(shown(stepKg), 1)}
      decimals={2}
      min={0}
      max={roundTo(shown(800), 0)}
      onNumber={(value) => onKg(read(value))}
      onUnread={onUnread}
    />
  );
}

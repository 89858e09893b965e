import type { JSX } from 'preact';
import { roundTo } from '#core/units/rounding.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { NumberInput, useNumberText } from './number-field.tsx';
import type { NumberFieldProps } from './number-field.tsx';

export interface StepperFieldProps extends NumberFieldProps {
  readonly step: number;
}

/** A number changed by single taps, or typed. The step lands on multiples of itself: 174 with step 5 goes to 175. */
export function StepperField(props: StepperFieldProps): JSX.Element {
  const typing = useNumberText(props);
  const { step, label, unit, decimals = 0, min, max, value } = props;
  const move = (direction: 1 | -1): void => {
    const next = stepped(value ?? 0, step * direction, decimals);
    typing.type(String(Math.min(max ?? next, Math.max(min ?? next, next))));
  };
  const by = `${step}${unit === undefined ? '' : ` ${unit}`}`;
  return (
    <Field {...props} problem={props.problem ?? typing.problem}>
      {(ties) => (
        <div class="stepper">
          <Button
            label={`${label}: ${by} less`}
            disabled={value !== undefined && value === min}
            onPress={() => move(-1)}
          >
            −
          </Button>
          <span class="field-joined">
            <NumberInput {...ties} typing={typing} decimals={decimals} unit={unit} />
          </span>
          <Button
            label={`${label}: ${by} more`}
            disabled={value !== undefined && value === max}
            onPress={() => move(1)}
          >
            +
          </Button>
        </div>
      )}
    </Field>
  );
}

/** The next multiple of the step in its direction. */
export function stepped(value: number, step: number, decimals: number): number {
  const steps = roundTo(value / Math.abs(step), 9);
  const next = step > 0 ? Math.floor(steps) + 1 : Math.ceil(steps) - 1;
  return roundTo(next * Math.abs(step), decimals);
}

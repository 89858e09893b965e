import type { Example } from '../gallery/example.ts';
import { Kept } from '../gallery/kept.tsx';
import { CheckField } from './check-field.tsx';
import { ChoiceField } from './choice-field.tsx';
import { ClockField } from './clock-field.tsx';
import { DateField } from './date-field.tsx';
import { FileField } from './file-field.tsx';
import { NumberField } from './number-field.tsx';
import { StepperField } from './stepper-field.tsx';
import { TextField } from './text-field.tsx';

const ROOMS = [
  { value: 'fridge', label: 'Fridge', detail: '3 days' },
  { value: 'freezer', label: 'Freezer', detail: '3 months' },
] as const;

export const examples: readonly Example[] = [
  {
    name: 'a number with its unit',
    show: () => (
      <Kept<number | undefined> first={680}>
        {(value, keep) => (
          <NumberField label="Raw weight" unit="g" value={value} onValue={keep} max={20000} />
        )}
      </Kept>
    ),
  },
  {
    name: 'a number, wrong',
    show: () => (
      <NumberField
        label="Pan, cooked"
        unit="g"
        value={1900}
        onValue={() => undefined}
        hint="With everything in it, on the scale."
        problem="Pan, cooked: 1900 g is more than went in. Check the raw weights or the container."
      />
    ),
  },
  {
    name: 'text, one line and several',
    show: () => (
      <Kept first="Beef and onions">
        {(value, keep) => <TextField label="Name of the batch" value={value} onValue={keep} />}
      </Kept>
    ),
  },
  {
    name: 'text of several lines',
    show: () => (
      <Kept first="">
        {(value, keep) => <TextField label="Note" value={value} onValue={keep} lines={3} optional />}
      </Kept>
    ),
  },
  {
    name: 'a clock time',
    show: () => (
      <Kept<number | undefined> first={450}>
        {(value, keep) => (
          <ClockField
            label="Training starts"
            value={value}
            onValue={keep}
            hint="24:30 is half past midnight."
          />
        )}
      </Kept>
    ),
  },
  {
    name: 'a date',
    show: () => (
      <Kept first="2027-03-01">
        {(value, keep) => <DateField label="Show" value={value} onValue={keep} />}
      </Kept>
    ),
  },
  {
    name: 'one of a few',
    show: () => (
      <Kept<'fridge' | 'freezer' | undefined> first="fridge">
        {(value, keep) => <ChoiceField label="Goes into" value={value} options={ROOMS} onValue={keep} />}
      </Kept>
    ),
  },
  {
    name: 'one of a few, side by side',
    show: () => (
      <Kept<'g' | 'oz' | 'lb'> first="g">
        {(value, keep) => (
          <ChoiceField
            label="Unit"
            layout="row"
            value={value}
            options={[
              { value: 'g', label: 'g' },
              { value: 'oz', label: 'oz' },
              { value: 'lb', label: 'lb' },
            ]}
            onValue={keep}
          />
        )}
      </Kept>
    ),
  },
  {
    name: 'so or not',
    show: () => (
      <Kept first={true}>
        {(value, keep) => (
          <CheckField
            label="Rice: strict rule"
            detail="Eaten within a day"
            checked={value}
            onChecked={keep}
          />
        )}
      </Kept>
    ),
  },
  {
    name: 'stepped by single taps',
    show: () => (
      <Kept<number | undefined> first={174}>
        {(value, keep) => (
          <StepperField label="Rice" unit="g" step={5} value={value} onValue={keep} min={0} />
        )}
      </Kept>
    ),
  },
  {
    name: 'a file',
    show: () => <FileField label="A copy of a journal" accept=".jsonl" onFile={() => undefined} />,
  },
];

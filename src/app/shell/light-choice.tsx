import type { JSX } from 'preact';
import { ChoiceField } from '../parts/choice-field.tsx';
import { chooseLight, light } from './light.ts';

/** Day, night, or as the device says. */
export function LightChoice(): JSX.Element {
  return (
    <ChoiceField
      label="Light"
      layout="row"
      value={light.value}
      options={[
        { value: 'system', label: 'As the device' },
        { value: 'day', label: 'Day' },
        { value: 'night', label: 'Night' },
      ]}
      onValue={chooseLight}
    />
  );
}

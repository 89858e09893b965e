import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { splitEqually } from '#core/kitchen/split-portions.ts';
import { Button } from '../../parts/button.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { record } from '../../state/open-journal.ts';

/** Packs what is still in the pan into equal portions. */
export function PackRest({ batch, restG }: { readonly batch: string; readonly restG: number }): JSX.Element {
  const count = useSignal(2);
  const split = splitEqually(restG, count.value, 1);
  return (
    <div class="row">
      <StepperField
        label="Portions to pack"
        value={count.value}
        step={1}
        min={1}
        max={40}
        onValue={(n) => {
          if (n !== undefined) count.value = n;
        }}
      />
      <Button
        records
        disabled={!split.ok}
        onPress={() => {
          if (!split.ok) return;
          void record(
            'batch-portioned',
            { batch, portionsG: [...split.value.portionsG], place: 'fridge' },
            { says: `${count.value} portions packed` },
          );
        }}
      >
        {split.ok ? `Pack ${count.value} of ${split.value.portionsG[0] ?? 0} g` : 'Too little to pack'}
      </Button>
    </div>
  );
}

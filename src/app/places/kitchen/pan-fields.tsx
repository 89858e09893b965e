import type { JSX } from 'preact';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { kitchen } from '../../views/kitchen-view.ts';
import type { CookFieldsProps } from './cook-screen.tsx';

const OTHER = 'other';

/** The container once weighed is remembered; then only the full pan goes on the scale. */
export function PanFields({ typed, change, problemAt }: CookFieldsProps): JSX.Element {
  const containers = kitchen.value.containers;
  return (
    <div class="stack">
      {containers.length > 0 && (
        <ChoiceField
          label="Container"
          layout="column"
          value={typed.container ?? OTHER}
          options={[
            ...containers.map(({ container, name, emptyG }) => ({
              value: container,
              label: name,
              detail: `${emptyG} g empty`,
            })),
            { value: OTHER, label: 'Another one' },
          ]}
          onValue={(chosen) => {
            const known = containers.find((one) => one.container === chosen);
            change(
              known
                ? { container: known.container, containerG: known.emptyG }
                : { container: undefined, containerG: undefined },
            );
          }}
        />
      )}
      {typed.container === undefined && (
        <NumberField
          label="Container, empty"
          hint="0 when the scale was tared with it"
          unit="g"
          decimals={0}
          min={0}
          value={typed.containerG}
          onValue={(containerG) => change({ containerG })}
          problem={problemAt('containerG')}
          optional
        />
      )}
      <NumberField
        label="Container, full"
        unit="g"
        decimals={0}
        min={0}
        big
        value={typed.cookedGrossG}
        onValue={(cookedGrossG) => change({ cookedGrossG })}
        problem={problemAt('cookedGrossG')}
      />
      <NumberField
        label="Fat poured off"
        hint="Weigh it: with fatty mince it is the largest error of the pan"
        unit="g"
        decimals={0}
        min={0}
        value={typed.drainedFatG}
        onValue={(drainedFatG) => change({ drainedFatG })}
        problem={problemAt('drainedFatG')}
        optional
      />
    </div>
  );
}

import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import type { CookFieldsProps } from './cook-screen.tsx';

/** Equal portions, portions of given weights, or none yet. */
export function PortionFields({ typed, change, problemAt }: CookFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="Divide it"
        layout="row"
        value={typed.split}
        options={[
          { value: 'equal', label: 'equally' },
          { value: 'given', label: 'by weight' },
          { value: 'none', label: 'later' },
        ]}
        onValue={(split) => change({ split })}
      />
      {typed.split === 'equal' && (
        <StepperField
          label="Portions"
          value={typed.count}
          step={1}
          min={1}
          max={40}
          onValue={(n) => change(n === undefined ? {} : { count: n })}
          problem={problemAt('portions')}
        />
      )}
      {typed.split === 'given' && <GivenWeights typed={typed} change={change} problemAt={problemAt} />}
      {typed.split !== 'none' && (
        <ChoiceField
          label="Put them in the"
          layout="row"
          value={typed.place}
          options={[
            { value: 'fridge', label: 'fridge' },
            { value: 'freezer', label: 'freezer' },
          ]}
          onValue={(place) => change({ place })}
        />
      )}
    </div>
  );
}

function GivenWeights({ typed, change, problemAt }: CookFieldsProps): JSX.Element {
  return (
    <>
      {typed.weightsG.map((grams, place) => (
        <div class="row" key={place}>
          <NumberField
            label={`Portion ${place + 1}`}
            unit="g"
            decimals={0}
            min={1}
            value={grams}
            onValue={(n) => {
              if (n !== undefined)
                change({ weightsG: typed.weightsG.map((kept, other) => (other === place ? n : kept)) });
            }}
            {...(place === 0 && { problem: problemAt('portions') })}
          />
          <Button
            kind="quiet"
            label={`Leave out portion ${place + 1}`}
            onPress={() => change({ weightsG: typed.weightsG.filter((_, other) => other !== place) })}
          >
            Leave out
          </Button>
        </div>
      ))}
      <Button onPress={() => change({ weightsG: [...typed.weightsG, typed.weightsG.at(-1) ?? 150] })}>
        Another portion
      </Button>
    </>
  );
}

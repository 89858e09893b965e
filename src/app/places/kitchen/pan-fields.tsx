import type { JSX } from 'preact';
import { safeTemperature } from '#core/tables/safe-temperatures.ts';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { sourceWords } from '../../views/source-words.ts';
import type { CookDraft } from './cook-draft.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import type { CookFieldsProps } from './cook-screen.tsx';

const OTHER = 'other';

/** The container once weighed is remembered; then only the full pan goes on the scale. */
export function PanFields({ typed, change, problemAt }: CookFieldsProps): JSX.Element {
  const containers = kitchen.value.containers;
  return (
    <div class="stack">
      <CookTo typed={typed} />
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

/** The highest temperature that any of the ingredients asks for. */
function CookTo({ typed }: { readonly typed: CookDraft }): JSX.Element | null {
  const asked = typed.ingredients.flatMap(({ food }) => {
    const storage = kitchen.value.catalogue.food(food)?.storage;
    const temperature = storage && safeTemperature(storage);
    return temperature ? [temperature] : [];
  });
  const hottest = asked.sort((a, b) => (b.minimumC ?? 0) - (a.minimumC ?? 0))[0];
  if (!hottest) return null;
  const degrees = hottest.minimumC === undefined ? '' : `Cook it to ${hottest.minimumC} °C in the middle`;
  const rest = hottest.restMinutes > 0 ? `, and let it rest ${hottest.restMinutes} minutes` : '';
  const words = [degrees + rest, hottest.sign ?? ''].filter((part) => part !== '').join(' ');
  return (
    <p class="row">
      <span>{`${words}.`}</span>
      <WhyButton
        why={{
          title: 'How hot',
          sentences: ['The least that food-safety agencies ask for; the ingredient that asks most decides.'],
          source: sourceWords(hottest.source),
        }}
      >
        Who says so
      </WhyButton>
    </p>
  );
}

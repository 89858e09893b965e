import type { JSX } from 'preact';
import { yieldRowsFor } from '#core/tables/yields.ts';
import { fromGrams, toGrams } from '#core/units/mass.ts';
import { roundTo } from '#core/units/rounding.ts';
import { capital } from '#core/units/capital.ts';
import { FoodChooser } from '../../chooser/food-chooser.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { athlete } from '../../views/athlete-view.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import type { CookDraft } from './cook-draft.ts';
import type { CookFieldsProps } from './cook-screen.tsx';

type Line = CookDraft['ingredients'][number];

/** Everything that goes in raw: oil, onions and water count too. */
export function IngredientFields({ typed, change, problemAt }: CookFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <IngredientLines
        lines={typed.ingredients}
        onLines={(ingredients) => change({ ingredients: [...ingredients] })}
        problemAt={problemAt}
      />
      <CheckField
        label="Take the raw weights off the stock"
        checked={typed.fromStock}
        onChecked={(fromStock) => change({ fromStock })}
      />
    </div>
  );
}

export interface IngredientLinesProps {
  readonly lines: readonly Line[];
  readonly onLines: (lines: readonly Line[]) => void;
  readonly problemAt: (path: string) => string | undefined;
}

/** Raw foods with their weights, for a pan or for a recipe. */
export function IngredientLines({ lines, onLines, problemAt }: IngredientLinesProps): JSX.Element {
  const set = (place: number, line: Line): void => {
    onLines(lines.map((kept, other) => (other === place ? line : kept)));
  };
  return (
    <>
      {lines.length === 0 && <Note>Nothing in the pan yet. Oil, onions and water that stays count too.</Note>}
      {lines.map((line, place) => (
        <div class="ingredient" key={place}>
          <NumberField
            label={capital(kitchen.value.nameOfFood(line.food) ?? line.food)}
            unit={line.unit}
            decimals={line.unit === 'g' ? 0 : 2}
            min={0}
            value={line.amount}
            onValue={(amount) => set(place, { ...line, amount })}
            problem={problemAt(`ingredients.${place}.amount`)}
            {...(line.unit !== 'g' &&
              line.amount !== undefined && { hint: `${roundTo(toGrams(line.amount, line.unit), 0)} g` })}
          />
          <ChoiceField
            label="Unit"
            layout="row"
            value={line.unit}
            options={[
              { value: 'g', label: 'g' },
              { value: 'oz', label: 'oz' },
              { value: 'lb', label: 'lb' },
            ]}
            onValue={(unit) => set(place, inUnit(line, unit))}
          />
          <CookedHow line={line} onLine={(next) => set(place, next)} />
          <Button
            kind="quiet"
            label={`Take out ${kitchen.value.nameOfFood(line.food) ?? 'it'}`}
            onPress={() => onLines(lines.filter((_, other) => other !== place))}
          >
            Take out
          </Button>
        </div>
      ))}
      <FoodChooser
        label="Add an ingredient"
        onChoose={(food) => onLines([...lines, { food, unit: athlete.value?.units.kitchen ?? 'g' }])}
      />
    </>
  );
}

const NOT_SAID = 'not said';

/** How it is cooked, where the yield table knows this food: the pan is then held against that row. */
function CookedHow({
  line,
  onLine,
}: {
  readonly line: Line;
  readonly onLine: (line: Line) => void;
}): JSX.Element | null {
  const rows = yieldRowsFor(line.food);
  if (rows.length === 0) return null;
  return (
    <ChoiceField
      label="How it is cooked"
      layout="column"
      value={line.form ?? NOT_SAID}
      options={[
        ...rows
          .slice(0, MOST_FORMS)
          .map((row) => ({ value: row.form, label: capital(row.name), detail: `${row.percent} % of raw` })),
        { value: NOT_SAID, label: 'not said' },
      ]}
      onValue={(form) => onLine({ ...line, form: form === NOT_SAID ? undefined : form })}
    />
  );
}

/** Rows offered; the weighed ones come first. */
const MOST_FORMS = 4;

/** The same weight in another unit: nothing typed is lost. */
function inUnit(line: Line, unit: Line['unit']): Line {
  if (line.amount === undefined) return { ...line, unit };
  return {
    ...line,
    unit,
    amount: roundTo(fromGrams(toGrams(line.amount, line.unit), unit), unit === 'g' ? 0 : 3),
  };
}

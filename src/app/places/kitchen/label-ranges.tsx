import type { JSX } from 'preact';
import type { LabelAnswer, LabelRequest } from '#core/kitchen/label-request.ts';
import { labelFaults } from '#core/kitchen/read-label.ts';
import { carbohydrateBothWays } from '#core/kitchen/label-spread.ts';
import { nutrientNames, nutrientWords } from '#core/kitchen/nutrients.ts';
import { roundTo } from '#core/units/rounding.ts';
import { capital } from '#core/units/capital.ts';
import { Caution } from '../../parts/caution.tsx';
import { Note } from '../../parts/note.tsx';
import { Table } from '../../parts/table.tsx';
import { WhyButton } from '../../parts/why-button.tsx';

export interface LabelRangesProps {
  readonly label: LabelRequest;
  readonly reading: LabelAnswer;
  readonly why: readonly string[];
}

/** A label as printed beside what its rounding allows, whether it adds up, and its carbohydrate by both rules. */
export function LabelRanges({ label, reading, why }: LabelRangesProps): JSX.Element {
  const known = nutrientNames.filter((name) => label.nutrients[name] !== undefined);
  return (
    <div class="stack">
      {reading.consistent ? (
        <Note>The label adds up: its energy agrees with its macros.</Note>
      ) : (
        <Caution
          title="The label does not add up"
          words={[
            ...labelFaults(label),
            'Compare it with the package. It is kept as printed, with what rounding leaves open.',
          ]}
        />
      )}
      <Table
        caption={`What the label of ${label.servingG} g may stand for`}
        captionHidden
        columns={[
          { key: 'name', label: 'Nutrient' },
          { key: 'printed', label: 'Printed', numeric: true },
          { key: 'range', label: 'May be', numeric: true },
          { key: 'per100g', label: 'In 100 g', numeric: true },
        ]}
        rows={known.map((name) => {
          const { label: word, unit } = nutrientWords[name];
          const [low, high] = reading.range[name] ?? [0, 0];
          return {
            name: `${capital(word)}, ${unit}`,
            printed: String(roundTo(label.nutrients[name] ?? 0, 2)),
            range: `${roundTo(low, 2)}–${roundTo(high, 2)}`,
            per100g: String(roundTo(reading.per100g[name] ?? 0, 1)),
          };
        })}
      />
      <Note>{bothWays(label)}</Note>
      <WhyButton why={{ title: 'What this label really says', sentences: why }}>Why these ranges?</WhyButton>
    </div>
  );
}

function bothWays(label: LabelRequest): string {
  const { withFibreG, withoutFibreG } = carbohydrateBothWays(label);
  if (withFibreG === undefined || withoutFibreG === undefined) {
    return 'Fibre is not printed, so the carbohydrate is known by this label’s own rule only.';
  }
  return `Carbohydrate with its fibre (American labels, food tables) ${roundTo(withFibreG, 1)} g; without it (European labels) ${roundTo(withoutFibreG, 1)} g.`;
}

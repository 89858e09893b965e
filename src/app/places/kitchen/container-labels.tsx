import type { JSX } from 'preact';
import { containerLabel, type ContainerLabel } from '#core/kitchen/container-label.ts';
import type { BatchStock } from '#core/kitchen/stock.ts';
import { Facts } from '../../parts/facts.tsx';
import { Section } from '../../parts/section.tsx';
import { PrintButton } from '../../print/print-button.tsx';
import { PrintSheet } from '../../print/print-sheet.tsx';
import { now, offsetMinutesAt, today } from '../../state/clock.ts';
import { version } from '../../shell/version.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import './container-labels.css';
import { clockedDate } from './shelf-words.ts';

/** A label for each container, to read here or to print and stick on. */
export function ContainerLabels({ stock }: { readonly stock: BatchStock }): JSX.Element {
  const { batch, containers } = stock;
  const labels = containers.flatMap(({ portion }) => {
    const label = containerLabel(kitchen.value.stock, batch.batch, portion, offsetMinutesAt(now.value));
    return label.ok ? [label.value] : [];
  });
  return (
    <Section title="Labels" action={<PrintButton>Print the labels</PrintButton>}>
      <PrintSheet title={batch.name} date={today.value} version={version}>
        <div class="container-labels">
          {labels.map((label) => (
            <Label key={label.portion} label={label} />
          ))}
        </div>
      </PrintSheet>
    </Section>
  );
}

const SHOWN = ['proteinG', 'carbohydrateG', 'fatG', 'energyKcal'];

function Label({ label }: { readonly label: ContainerLabel }): JSX.Element {
  const macros = label.nutrients
    .filter((line) => SHOWN.includes(line.nutrient))
    .map((line) => ({
      name: line.label,
      value: `${line.atLeast ? 'at least ' : ''}${line.amount} ${line.unit}`,
    }));
  return (
    <article class="container-label">
      <h3>{label.portion === 0 ? label.name : `${label.name}, portion ${label.portion}`}</h3>
      <p class="container-label-grams">{`${Math.round(label.grams)} g`}</p>
      <Facts
        items={[
          ...macros,
          { name: 'Raw', value: label.raw.map(({ name, grams }) => `${grams} g ${name}`).join(', ') },
          { name: 'Cooked', value: clockedDate(label.cookedAt) },
        ]}
      />
      <p>
        <strong>{label.useBy === undefined ? label.state : `Use by ${clockedDate(label.useBy)}`}</strong>
      </p>
    </article>
  );
}

import type { JSX } from 'preact';
import { percentFigure } from '#core/kitchen/figure.ts';
import type { WeighedPortion } from '#core/kitchen/weigh-batch.ts';
import type { Outcome } from '#core/problems/problem.ts';
import { Caution } from '../../parts/caution.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { Table } from '../../parts/table.tsx';
import { sourceWords } from '../../views/source-words.ts';
import type { CookDraft, CookReading } from './cook-draft.ts';

export interface PanResultProps {
  readonly typed: CookDraft;
  readonly reading: Outcome<CookReading>;
}

/** What the pan comes to while it is typed: cooked weight, yield, and what a portion holds. */
export function PanResult({ typed, reading }: PanResultProps): JSX.Element {
  if (!reading.ok) {
    return typed.cookedGrossG === undefined || typed.ingredients.length === 0 ? (
      <Note>{reading.problem.remedy}</Note>
    ) : (
      <Caution title={reading.problem.message} words={reading.problem.remedy} />
    );
  }
  const { batch } = reading.value;
  const { balance, portions } = batch;
  const why = { title: 'What the pan comes to', sentences: batch.why, formula: 'yield = cooked / raw' };
  const odd = balance.checks.filter((check) => !check.ok);
  return (
    <div class="stack" aria-live="polite">
      <div class="row">
        <Figure value={balance.cookedG} unit="g" size="large" label="Cooked" why={why} />
        <Figure value={balance.yield * 100} unit="%" decimals={1} label="Yield" why={why} />
      </div>
      {odd.map((check) => (
        <Caution
          key={check.kind}
          title="Weigh again?"
          words={`${check.kind === 'joint-yield' ? `A yield of ${percentFigure(check.found)}` : `${Math.round(check.found)} g`} is unusual for these ingredients. It is kept as weighed.`}
          source={sourceWords(check.source)}
        />
      ))}
      {portions.length > 0 && <PortionTable portions={portions} />}
      {portions[0] && <RawBehind portion={portions[0]} />}
      {batch.panG > 0 && portions.length > 0 && <Note>{`${Math.round(batch.panG)} g stay in the pan.`}</Note>}
    </div>
  );
}

function PortionTable({ portions }: { readonly portions: readonly WeighedPortion[] }): JSX.Element {
  return (
    <Table
      caption="Each portion"
      columns={[
        { key: 'portion', label: 'Portion' },
        { key: 'grams', label: 'Weight', unit: 'g', numeric: true },
        { key: 'protein', label: 'P', unit: 'g', numeric: true },
        { key: 'carbohydrate', label: 'C', unit: 'g', numeric: true },
        { key: 'fat', label: 'F', unit: 'g', numeric: true },
        { key: 'energy', label: 'Energy', unit: 'kcal', numeric: true },
      ]}
      rows={portions.map(({ grams, nutrients: { nutrients } }, place) => ({
        portion: String(place + 1),
        grams: String(grams),
        protein: nutrients.proteinG.toFixed(1),
        carbohydrate: nutrients.carbohydrateG.toFixed(1),
        fat: nutrients.fatG.toFixed(1),
        energy: nutrients.energyKcal.toFixed(0),
      }))}
    />
  );
}

/** The raw equivalent in a portion, which a logbook kept in raw weights asks for. */
function RawBehind({ portion }: { readonly portion: WeighedPortion }): JSX.Element {
  return (
    <Note>{`Raw in portion 1: ${portion.raw.map(({ name, grams }) => `${grams.toFixed(1)} g ${name}`).join(', ')}.`}</Note>
  );
}

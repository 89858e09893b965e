import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CookedBatch } from '#core/kitchen/cooked-batch.ts';
import { scaleTotal, type NutrientTotal } from '#core/kitchen/nutrients.ts';
import type { BatchStock, ContainerStock } from '#core/kitchen/stock.ts';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Facts } from '../../parts/facts.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { WhyButton } from '../../parts/why-button.tsx';
import { pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { ContainerLabels } from './container-labels.tsx';
import { PackRest } from './pack-rest.tsx';
import { momentWords, shelfWhy, shelfWords } from './shelf-words.ts';

/** One batch: what is left of it, what a gram holds, its labels. */
export function BatchScreen({ id }: { readonly id: string }): JSX.Element {
  const cooked = kitchen.value.catalogue.batch(id);
  const stock = kitchen.value.stock.batches.find((one) => one.batch.batch === id);
  if (!cooked) {
    const problem = kitchen.value.catalogue.problems[0];
    return (
      <Page title="Batch" back={pathTo('kitchen')}>
        <EmptyState
          title="This batch cannot be read"
          words={
            problem
              ? `${problem.message} ${problem.remedy}`
              : 'It was removed, or is in a journal not on this device.'
          }
        />
      </Page>
    );
  }
  const { balance } = cooked;
  return (
    <Page
      title={cooked.name}
      detail={`cooked ${momentWords(cooked.cookedAtMs)}`}
      back={pathTo('kitchen')}
      busy
    >
      <Columns wide="even">
        <Section title="What is left">
          {stock ? (
            <Containers stock={stock} />
          ) : (
            <EmptyState title="All gone" words="Every gram of it is eaten or binned." />
          )}
        </Section>
        <Section title="What it holds">
          <div class="row">
            <Figure
              value={balance.cookedG}
              unit="g"
              label="Cooked"
              why={{ title: 'Cooked weight', sentences: balance.why }}
            />
            <Figure
              value={balance.yield * 100}
              decimals={1}
              unit="%"
              label="Yield"
              why={{ title: 'Yield', sentences: balance.why, formula: 'cooked / raw' }}
            />
          </div>
          <Facts items={macroFacts(balance.per100gCooked)} />
          <Facts
            items={cooked.ingredients.map(({ name, rawG }) => ({ name, value: `${Math.round(rawG)} g raw` }))}
          />
          <StorageHints hints={cooked.storage.hints} />
        </Section>
      </Columns>
      {stock && <ContainerLabels stock={stock} />}
    </Page>
  );
}

/** How it is cooled, kept and warmed, with who says so one tap away. */
function StorageHints({ hints }: { readonly hints: CookedBatch['storage']['hints'] }): JSX.Element {
  const why = {
    title: 'Keeping a batch safe',
    sentences: hints.map((hint) => hint.text),
    source: [...new Set(hints.map((hint) => sourceWords(hint.source)))].join(' '),
  };
  return (
    <>
      {hints.slice(0, 2).map((hint) => (
        <Note key={hint.text}>{hint.text}</Note>
      ))}
      <WhyButton why={why}>Who says so, and the rest</WhyButton>
    </>
  );
}

function macroFacts(per100g: NutrientTotal): { name: string; value: string }[] {
  const { nutrients } = per100g;
  return [
    { name: 'Energy in 100 g', value: `${nutrients.energyKcal.toFixed(0)} kcal` },
    { name: 'Protein', value: `${nutrients.proteinG.toFixed(1)} g` },
    { name: 'Carbohydrate', value: `${nutrients.carbohydrateG.toFixed(1)} g` },
    { name: 'Fat', value: `${nutrients.fatG.toFixed(1)} g` },
  ];
}

function Containers({ stock }: { readonly stock: BatchStock }): JSX.Element {
  return (
    <div class="stack">
      {stock.containers.map((container) => (
        <ContainerRow key={container.portion} stock={stock} container={container} />
      ))}
    </div>
  );
}

function ContainerRow({
  stock,
  container,
}: {
  readonly stock: BatchStock;
  readonly container: ContainerStock;
}): JSX.Element {
  const weighing = useSignal(false);
  const { batch } = stock;
  const name = container.portion === 0 ? 'In the pan' : `Portion ${container.portion}`;
  const protein = scaleTotal(batch.balance.per100gCooked, (container.grams / 100) * container.strength)
    .nutrients.proteinG;
  const portion = container.portion === 0 ? {} : { portion: container.portion };
  const move = (to: 'fridge' | 'freezer' | 'room' | 'bin', says: string): void => {
    void record('portion-moved', { batch: batch.batch, ...portion, to }, { says: `${name}: ${says}` });
  };
  return (
    <article class="container-row">
      <Figure
        value={container.grams}
        unit="g"
        size="large"
        label={name}
        why={shelfWhy(name, container.reading, batch.storage.limit.source)}
      />
      <p class="soft">
        {[`${protein.toFixed(0)} g protein`, shelfWords(container.reading)]
          .filter((words) => words !== '')
          .join(', ')}
      </p>
      <div class="row">
        {container.place === 'freezer' ? (
          <Button records onPress={() => move('fridge', 'thawing in the fridge')}>
            Thaw
          </Button>
        ) : (
          <Button records onPress={() => move('freezer', 'in the freezer')}>
            Freeze
          </Button>
        )}
        {container.place === 'fridge' && (
          <Button kind="quiet" records onPress={() => move('room', 'taken out')}>
            Take along
          </Button>
        )}
        {container.place === 'room' && (
          <Button records onPress={() => move('fridge', 'back in the fridge')}>
            Back in the fridge
          </Button>
        )}
        <Button kind="quiet" onPress={() => (weighing.value = true)}>
          Weigh again
        </Button>
        <Button kind="caution" records onPress={() => move('bin', 'thrown away')}>
          Bin
        </Button>
      </div>
      {container.portion === 0 && <PackRest batch={batch.batch} restG={container.grams} />}
      <Reweigh
        name={name}
        open={weighing.value}
        onClose={() => (weighing.value = false)}
        batch={batch.batch}
        portion={portion}
      />
    </article>
  );
}

interface ReweighProps {
  readonly name: string;
  readonly open: boolean;
  readonly onClose: () => void;
  readonly batch: string;
  readonly portion: { readonly portion?: number };
}

/** What is left put on the scale again: it replaces the computed rest. */
function Reweigh({ name, open, onClose, batch, portion }: ReweighProps): JSX.Element {
  const leftG = useSignal<number | undefined>(undefined);
  return (
    <Sheet
      open={open}
      title={`${name}, weighed again`}
      onClose={onClose}
      actions={
        <Button
          kind="next"
          wide
          records
          disabled={leftG.value === undefined}
          onPress={() => {
            if (leftG.value === undefined) return;
            void record(
              'batch-reweighed',
              { batch, ...portion, leftG: leftG.value },
              { says: `${name}: ${leftG.value} g` },
            );
            onClose();
          }}
        >
          Keep this weight
        </Button>
      }
    >
      <NumberField
        label="Food left, without the container"
        unit="g"
        decimals={0}
        min={0}
        big
        value={leftG.value}
        onValue={(n) => (leftG.value = n)}
      />
    </Sheet>
  );
}

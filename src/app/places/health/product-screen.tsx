import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { ProductNow } from '#core/cycle/supplements-now.ts';
import { refuseDose } from '#core/health/supplements/refuse-dose.ts';
import { readLabel } from '#core/health/supplements/read-label.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Figure } from '../../parts/figure.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { writeNumber } from '../../parts/write-number.ts';
import { go, pathTo } from '../../shell/route.ts';
import { record } from '../../state/open-journal.ts';
import { unitsWords } from '../../views/dose-words.ts';
import { health } from '../../views/health-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';
import { LiabilityFacts } from './liability-facts.tsx';
import { regimenWords } from './product-rows.tsx';

/** One product: when it is taken, how long it lasts, what its label says. */
export function ProductScreen({ supplement }: { readonly supplement: string }): JSX.Element {
  const found = health.value.products.find(({ product }) => product.supplement === supplement);
  if (!found)
    return (
      <Page title="Supplement" back={pathTo('health', 'supplements')}>
        <EmptyState
          title="This product is not in the cupboard."
          words="It was put away, or belongs to another journal."
        />
      </Page>
    );
  const { product } = found;
  return (
    <Page title={product.name} back={pathTo('health', 'supplements')}>
      <Columns wide="first">
        <div class="stack">
          <Regimens now={found} />
          <Stock now={found} />
        </div>
        <div class="stack">
          <Label now={found} />
          <LiabilityFacts />
        </div>
      </Columns>
      <ActionBar>
        <Button
          kind={found.regimens.length === 0 ? 'next' : 'plain'}
          wide
          href={pathTo('health', 'regimen', supplement, 'new')}
        >
          {found.regimens.length === 0 ? 'Say when it is taken' : 'Another time of day'}
        </Button>
      </ActionBar>
    </Page>
  );
}

function Regimens({ now: { product, regimens } }: { readonly now: ProductNow }): JSX.Element {
  const never = refuseDose(product, 1);
  return (
    <Section title="When it is taken">
      {regimens.length === 0 && <Note>It has no regimen, so the run sheet does not name it.</Note>}
      {regimens.length === 0 && never && (
        <Caution
          title="No dose of it would be planned"
          words={never.words}
          source={sourceWords(never.source)}
        />
      )}
      <List label="Regimens">
        {regimens.map((one) => (
          <ListRow
            key={one.regimen.regimen}
            title={regimenWords(one, product.unit)}
            detail={pauseWords(one.regimen.pauses)}
            href={pathTo('health', 'regimen', product.supplement, one.regimen.regimen)}
          />
        ))}
      </List>
      {regimens.map(
        ({ refusal, regimen }) =>
          refusal && (
            <Caution
              key={regimen.regimen}
              title="Never planned"
              words={refusal.words}
              source={sourceWords(refusal.source)}
            />
          ),
      )}
    </Section>
  );
}

function pauseWords(pauses: ProductNow['regimens'][number]['regimen']['pauses']): string | undefined {
  const last = pauses?.at(-1);
  if (!last) return undefined;
  const until = last.until === undefined ? 'on' : `to ${dateWords(last.until)}`;
  return `paused from ${dateWords(last.from)} ${until}${last.reason === undefined ? '' : `, ${last.reason}`}`;
}

function Stock({ now: { product, stock } }: { readonly now: ProductNow }): JSX.Element {
  const counted = useSignal<number | undefined>(undefined);
  const { supplement, unit } = product;
  const count = async (units: number): Promise<void> => {
    const saved = await record(
      'supplement-counted',
      { supplement, units },
      { says: `${product.name}: ${unitsWords(units, unit)} counted` },
    );
    if (saved.status !== 'refused') counted.value = undefined;
  };
  const bought = (units: number): Promise<unknown> =>
    record(
      'supplement-bought',
      { supplement, units },
      { says: `${product.name}: ${unitsWords(units, unit)} bought` },
    );
  const pack = product.packUnits;
  return (
    <Section title="In the cupboard">
      {stock?.left !== undefined && (
        <Figure
          value={stock?.left}
          unit={unit === 'gram' ? 'g' : unit === 'millilitre' ? 'mL' : `${unit}s`}
          size="large"
          label="Left"
          labelHidden
          why={{
            title: `What is left of ${product.name}`,
            sentences: [
              stock ? say(stock.words) : 'Not counted yet.',
              'The last count, plus what was bought since, less what was taken since. The day it runs out follows from the regimens as they stand, pauses kept.',
            ],
            inputs: [
              ...(stock?.countedOn === undefined
                ? []
                : [{ name: 'Counted on', value: dateWords(stock.countedOn) }]),
              { name: 'Used a day', value: `${stock?.usedPerDay ?? 0} over the next four weeks` },
            ],
          }}
        />
      )}
      {stock && <p>{say(stock.words)}</p>}
      <div class="row">
        {pack !== undefined && (
          <Button records onPress={() => void bought(pack)}>
            {`Bought a pack, ${unitsWords(pack, unit)}`}
          </Button>
        )}
      </div>
      <NumberField
        label="Counted now"
        unit={unit}
        decimals={1}
        min={0}
        value={counted.value}
        onValue={(n) => (counted.value = n)}
        optional
      />
      <Button
        records
        disabled={counted.value === undefined}
        onPress={() => counted.value !== undefined && void count(counted.value)}
      >
        Keep this count
      </Button>
    </Section>
  );
}

function Label({ now: { product } }: { readonly now: ProductNow }): JSX.Element {
  const away = async (): Promise<void> => {
    const saved = await record(
      'supplement-defined',
      { ...product, retired: true },
      { says: `${product.name} put away` },
    );
    if (saved.status !== 'refused') go(pathTo('health', 'supplements'));
  };
  return (
    <Section
      title="Its label"
      detail={`for ${unitsWords(product.perUnits, product.unit)}`}
      action={
        <Button kind="quiet" href={pathTo('health', 'label', product.supplement)}>
          Correct it
        </Button>
      }
    >
      <List label="Contents">
        {readLabel(product).map((part, place) => {
          const line = product.contents[place];
          return (
            <ListRow
              key={part.printed}
              title={
                part.form === undefined || part.printed === part.form
                  ? part.printed
                  : `${part.printed}, ${part.form}`
              }
              detail={part.key === undefined ? 'not in the tables: shown, not summed' : part.note}
              figure={
                line?.amount === undefined
                  ? 'not said'
                  : `${writeNumber(line.amount, 2, false).replace(/\.?0+$/, '')} ${unitSigns[line.unit ?? 'mg']}`
              }
            />
          );
        })}
      </List>
      {product.batchTested === true ? (
        <Note>You looked this batch up as tested. That lowers the risk; it does not end it.</Note>
      ) : (
        <Note>No batch test is noted.</Note>
      )}
      <Button kind="quiet" records onPress={() => void away()}>
        Put it away for good
      </Button>
    </Section>
  );
}

const unitSigns = { g: 'g', mg: 'mg', ug: 'µg', '[IU]': 'IU' } as const;

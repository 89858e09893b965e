import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CatalogueFood } from '#core/kitchen/catalogue-food.ts';
import { readLabel } from '#core/kitchen/read-label.ts';
import { nutrientNames, nutrientWords } from '#core/kitchen/nutrients.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { pathTo } from '../../shell/route.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { LabelRanges } from './label-ranges.tsx';
import { FoodStockRows } from './food-stock-rows.tsx';

/** One food: what is in stock of it, how it is used, what it holds and who says so. */
export function FoodScreen({ id }: { readonly id: string }): JSX.Element {
  const food = kitchen.value.catalogue.food(id);
  if (!food) {
    return (
      <Page title="Food" back={pathTo('kitchen', 'foods')}>
        <EmptyState
          title="This food is not known here"
          words="It may be in a journal that was not brought in yet."
        />
      </Page>
    );
  }
  return (
    <Page
      title={capital(food.name)}
      detail={food.state === 'as-is' ? 'ready' : food.state}
      back={pathTo('kitchen')}
    >
      <Columns wide="even">
        <Section title="In stock">
          <FoodStockRows food={food} />
        </Section>
        <Section title="How it is used">
          <Preference food={food} />
        </Section>
        <Section title="In 100 g">
          <Composition food={food} />
        </Section>
        <AsPrinted id={id} />
      </Columns>
    </Page>
  );
}

/** The label it was entered from, with what rounding leaves open. */
function AsPrinted({ id }: { readonly id: string }): JSX.Element | null {
  const label = ledger.value.of('food-defined').findLast(({ data }) => data.food === id)?.data.label;
  const reading = label && readLabel(label);
  if (!label || !reading?.ok) return null;
  return (
    <Section
      title="Its label"
      detail={`${label.servingG} g, ${label.rules === 'us' ? 'American' : 'European'} rules`}
    >
      <LabelRanges label={label} reading={reading.value} why={reading.value.why} />
    </Section>
  );
}

function Composition({ food }: { readonly food: CatalogueFood }): JSX.Element {
  const { nutrients, spread, atLeast } = food.per100g;
  return (
    <>
      <Table
        caption={`What 100 g of ${food.name} hold`}
        captionHidden
        columns={[
          { key: 'name', label: 'Nutrient' },
          { key: 'amount', label: 'Amount', numeric: true },
        ]}
        rows={nutrientNames.map((name) => {
          const { label, unit } = nutrientWords[name];
          const amount = nutrients[name];
          const sd = spread[name];
          const bound = atLeast.some((other) => other === name) ? 'at least ' : '';
          const plusMinus = sd !== undefined && sd > 0.05 ? ` ± ${sd.toFixed(1)}` : '';
          return {
            name: label,
            amount: amount === undefined ? 'unknown' : `${bound}${amount.toFixed(1)}${plusMinus} ${unit}`,
          };
        })}
      />
      <Note>{`Source: ${sourceWords(food.basis)}`}</Note>
    </>
  );
}

function Preference({ food }: { readonly food: CatalogueFood }): JSX.Element {
  const before = kitchen.value.catalogue.preference(food.id);
  const minG = useSignal<number | undefined>(food.serving.minG);
  const maxG = useSignal<number | undefined>(food.serving.maxG);
  const keep = (part: Partial<DataOf<'food-preferred'>>): void => {
    void record(
      'food-preferred',
      { ...(before ?? { food: food.id, favourite: false }), ...part },
      { says: 'Kept' },
    );
  };
  return (
    <div class="stack">
      <CheckField
        label="Favourite"
        checked={before?.favourite ?? false}
        onChecked={(favourite) => keep({ favourite })}
      />
      <CheckField
        label="Plan it without counting stock"
        detail="Always at hand, like oil or salt, or weighed raw for one meal"
        checked={before?.planFreely ?? false}
        onChecked={(planFreely) => keep({ planFreely })}
      />
      <NumberField
        label="Least on a plate"
        unit="g"
        decimals={0}
        min={1}
        value={minG.value}
        onValue={(n) => (minG.value = n)}
      />
      <NumberField
        label="Most on a plate"
        unit="g"
        decimals={0}
        min={1}
        value={maxG.value}
        onValue={(n) => (maxG.value = n)}
      />
      <Button
        records
        onPress={() => {
          const [least, most] = [minG.value, maxG.value];
          if (least !== undefined && most !== undefined && least <= most) keep({ minG: least, maxG: most });
        }}
      >
        Keep these servings
      </Button>
    </div>
  );
}

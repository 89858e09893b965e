import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CatalogueFood } from '#core/kitchen/catalogue-food.ts';
import type { StockPlace } from '#core/kitchen/shelf-life.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { planNow } from '../../views/planner.ts';
import { habitPlace } from './habit-place.ts';
import { shelfWhy, shelfWords } from './shelf-words.ts';

const PLACES: readonly StockPlace[] = ['fridge', 'freezer', 'cupboard'];

/** What is there of one food: count it, say it ran out, move it, throw it away. */
export function FoodStockRows({ food }: { readonly food: CatalogueFood }): JSX.Element {
  const lots = kitchen.value.stock.foods.filter((lot) => lot.food === food.id);
  return (
    <div class="stack">
      {lots.length === 0 && <Note>None counted.</Note>}
      {lots.map((lot) => (
        <div key={`${lot.place} ${lot.cameAtMs}`} class="stack">
          <Figure
            value={lot.grams}
            unit="g"
            size="large"
            label={`In the ${lot.place}`}
            why={shelfWhy(food.name, lot.reading, 'cold-storage-chart')}
          />
          <p class="soft">{shelfWords(lot.reading)}</p>
          <div class="row">
            {lot.place !== 'cupboard' && (
              <Button
                records
                onPress={() =>
                  void record(
                    'stock-moved',
                    {
                      food: food.id,
                      grams: lot.grams,
                      from: lot.place,
                      to: lot.place === 'freezer' ? 'fridge' : 'freezer',
                    },
                    { says: lot.place === 'freezer' ? 'Thawing in the fridge' : 'In the freezer' },
                  )
                }
              >
                {lot.place === 'freezer' ? 'Thaw' : 'Freeze'}
              </Button>
            )}
            <Button kind="quiet" records onPress={() => void ranOut(food, lot.place)}>
              Ran out
            </Button>
            <Button
              kind="caution"
              records
              onPress={() =>
                void record(
                  'stock-binned',
                  { food: food.id, grams: lot.grams },
                  { says: `${food.name} thrown away` },
                )
              }
            >
              Bin
            </Button>
          </div>
        </div>
      ))}
      <Count food={food} />
    </div>
  );
}

/** What is really there: it corrects the computed figure. */
function Count({ food }: { readonly food: CatalogueFood }): JSX.Element {
  const grams = useSignal<number | undefined>(undefined);
  const place = useSignal<StockPlace>(habitPlace(food.storage));
  return (
    <div class="stack">
      <NumberField
        label="Count: really there"
        unit="g"
        decimals={0}
        min={0}
        value={grams.value}
        onValue={(n) => (grams.value = n)}
        optional
      />
      <ChoiceField
        label="In the"
        layout="row"
        value={place.value}
        options={PLACES.map((value) => ({ value, label: value }))}
        onValue={(chosen) => (place.value = chosen)}
      />
      <Button
        records
        disabled={grams.value === undefined}
        onPress={() => {
          if (grams.value === undefined) return;
          void record(
            'stock-counted',
            { food: food.id, grams: grams.value, place: place.value },
            { says: `${food.name}: ${grams.value} g counted` },
          );
          grams.value = undefined;
        }}
      >
        Keep the count
      </Button>
    </div>
  );
}

/** Sets it to none and, where it was planned, plans the rest of the day without it. */
async function ranOut(food: CatalogueFood, place: StockPlace): Promise<void> {
  const planned = sheet.value.meals.some(
    (meal) =>
      !meal.eaten &&
      !meal.skipped &&
      meal.planned.items.some((item) => item.source === 'food' && item.food === food.id),
  );
  const saved = await record(
    'stock-counted',
    { food: food.id, grams: 0, place },
    { says: `${food.name} ran out` },
  );
  if (saved.status !== 'refused' && planned) await planNow('food ran out');
}

import type { JSX } from 'preact';
import { dateWords } from '#core/words/dates.ts';
import type { BatchStock, FoodStock } from '#core/kitchen/stock.ts';
import type { StockPlace } from '#core/kitchen/shelf-life.ts';
import { capital } from '#core/units/capital.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { kitchen } from '../../views/kitchen-view.ts';
import { withWeeksOut } from '../../views/show-view.ts';
import { week } from '../../views/week-view.ts';
import { weekWatch } from '../../views/week-watch.ts';
import { needsEye, shelfWords } from './shelf-words.ts';

const PLACES: readonly { readonly place: StockPlace; readonly title: string }[] = [
  { place: 'room', title: 'Left out' },
  { place: 'fridge', title: 'In the fridge' },
  { place: 'freezer', title: 'In the freezer' },
  { place: 'cupboard', title: 'In the cupboard' },
];

/** What is there, by place, what must go first on top. */
export function KitchenScreen(): JSX.Element {
  const { stock } = kitchen.value;
  const empty = stock.foods.length === 0 && stock.batches.length === 0;
  return (
    <Page title="Kitchen" detail={withWeeksOut(headline(stock.batches))}>
      {stock.notes.map((note) => (
        <Caution key={`${note.code} ${note.path} ${note.message}`} title={note.message} words={note.remedy} />
      ))}
      {empty && (
        <EmptyState
          title="Nothing is in stock yet"
          words="Enter what is in the fridge and the cupboard once; eating and cooking keep it up to date from then on."
          action={
            <Button kind="next" href={pathTo('kitchen', 'buy')}>
              Put food in stock
            </Button>
          }
        />
      )}
      <Upcoming />
      <Columns wide="even">
        {PLACES.map(({ place, title }) => (
          <Shelf key={place} place={place} title={title} batches={stock.batches} foods={stock.foods} />
        ))}
      </Columns>
      <div class="row">
        {!week.value && <Button href={pathTo('kitchen', 'week')}>Week ahead</Button>}
        <Button href={pathTo('kitchen', 'recipes')}>Recipes</Button>
        <Button href={pathTo('kitchen', 'foods')}>Foods</Button>
        <Button href={pathTo('kitchen', 'containers')}>Containers</Button>
        <Button href={pathTo('kitchen', 'label')}>Food from a label</Button>
      </div>
      <ActionBar>
        <Button href={pathTo('kitchen', 'buy')}>Put in stock</Button>
        <Button kind="next" wide href={pathTo('kitchen', 'cook')}>
          Cook a batch
        </Button>
      </ActionBar>
    </Page>
  );
}

/** The adopted week in two lines: what is cooked next, what is still to be bought. */
function Upcoming(): JSX.Element | null {
  const ahead = week.value;
  if (!ahead) return null;
  const pan = ahead.pans.find((one) => one.done === undefined);
  const next = pan
    ? `${pan.name} on ${dateWords(pan.date)}, ${pan.portions} portions`
    : 'nothing left to cook';
  const [reason] = ahead.outOfLine;
  const solved = weekWatch.value.status === 'proposed' ? ' Solved again, for you to look at.' : '';
  const foods = `${ahead.list.length} ${ahead.list.length === 1 ? 'food' : 'foods'} to buy`;
  return (
    <List label="Coming up">
      <ListRow
        title="The week ahead"
        detail={reason === undefined ? next : `${reason}${solved}`}
        state={reason === undefined ? 'plain' : 'next'}
        href={pathTo('kitchen', 'week')}
      />
      <ListRow title="Shopping list" detail={foods} href={pathTo('kitchen', 'shopping')} />
    </List>
  );
}

function headline(batches: readonly BatchStock[]): string {
  const portions = batches.reduce(
    (sum, { containers }) => sum + containers.filter((one) => one.portion > 0).length,
    0,
  );
  return portions === 0
    ? 'no packed portions'
    : `${portions} packed ${portions === 1 ? 'portion' : 'portions'}`;
}

interface ShelfProps {
  readonly place: StockPlace;
  readonly title: string;
  readonly batches: readonly BatchStock[];
  readonly foods: readonly FoodStock[];
}

function Shelf({ place, title, batches, foods }: ShelfProps): JSX.Element | null {
  const cooked = batches.filter(({ containers }) => containers.some((one) => one.place === place));
  const loose = foods.filter((food) => food.place === place);
  if (cooked.length === 0 && loose.length === 0) return null;
  return (
    <Section title={title}>
      <List>
        {cooked.map((batch) => (
          <BatchRow key={batch.batch.batch} batch={batch} place={place} />
        ))}
        {loose.map((food) => (
          <ListRow
            key={`${food.food} ${food.cameAtMs}`}
            title={capital(food.name)}
            detail={shelfWords(food.reading)}
            figure={<strong>{`${Math.round(food.grams)} g`}</strong>}
            state={needsEye(food.reading) ? 'next' : 'plain'}
            href={pathTo('kitchen', 'food', food.food)}
          />
        ))}
      </List>
    </Section>
  );
}

function BatchRow({ batch, place }: { readonly batch: BatchStock; readonly place: StockPlace }): JSX.Element {
  const here = batch.containers.filter((one) => one.place === place);
  const portions = here.filter((one) => one.portion > 0).length;
  const grams = here.reduce((sum, one) => sum + one.grams, 0);
  const first = here[0];
  const count = portions > 0 ? `${portions} ${portions === 1 ? 'portion' : 'portions'}` : 'in the pan';
  return (
    <ListRow
      title={batch.batch.name}
      detail={[count, first ? shelfWords(first.reading) : ''].filter((words) => words !== '').join(', ')}
      figure={<strong>{`${Math.round(grams)} g`}</strong>}
      state={first && needsEye(first.reading) ? 'next' : 'plain'}
      href={pathTo('kitchen', 'batch', batch.batch.batch)}
    />
  );
}

import type { JSX } from 'preact';
import type { ProductNow } from '#core/cycle/supplements-now.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { health, sums } from '../../views/health-view.ts';
import { say } from '../../views/say.ts';
import { LiabilityFacts } from './liability-facts.tsx';
import { MedicineList } from './medicine-list.tsx';
import { ProductRows } from './product-rows.tsx';
import { TodaySection } from './today-section.tsx';

/** What is in the cupboard, what runs out before the show, and what it adds up to. */
export function SupplementsScreen(): JSX.Element {
  const { products } = health.value;
  return (
    <Page title="Supplements" back={pathTo('health')}>
      <Columns wide="first">
        <div class="stack">
          <Section title="Own products">
            {products.length === 0 ? (
              <EmptyState
                title="No product is described yet."
                words="Copy the label once: then the run sheet says when, the stock says how long, and the sums say how much."
              />
            ) : (
              <ProductRows products={products} />
            )}
          </Section>
          <RunningOut products={products} />
        </div>
        <div class="stack">
          {products.length > 0 && <TodaySection />}
          <Section title="Added up">
            <List>
              <ListRow title="Against the limits" detail={sumsWords()} href={pathTo('health', 'sums')} />
            </List>
          </Section>
          <MedicineList />
          <LiabilityFacts />
        </div>
      </Columns>
      <ActionBar>
        <Button kind="next" wide href={pathTo('health', 'label', 'new')}>
          Add a product
        </Button>
      </ActionBar>
    </Page>
  );
}

function sumsWords(): string {
  const answer = sums.value;
  if (!answer || answer.nutrients.length + answer.substances.length === 0) return 'nothing runs yet';
  const over = answer.nutrients.filter(({ us, eu }) => [...us, ...eu].some((limit) => limit.over)).length;
  const doubled = [...answer.nutrients, ...answer.substances].filter(({ duplicate }) => duplicate).length;
  return `${over === 0 ? 'none is over a limit' : `${over} over a limit`}, ${doubled} in more than one product`;
}

/** What will not last to the show. */
function RunningOut({ products }: { readonly products: readonly ProductNow[] }): JSX.Element | null {
  const short = products.flatMap(({ stock }) =>
    stock?.daysBeforeShow === undefined && stock?.belowZero !== true ? [] : [stock],
  );
  if (short.length === 0) return null;
  return (
    <Caution
      title="Runs out before the show"
      words={short.map((stock) =>
        say(stock.belowZero ? `${stock.words} More was taken than was there: count it.` : stock.words),
      )}
    />
  );
}

import type { JSX } from 'preact';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { doses, health } from '../../views/health-view.ts';
import { BloodSection } from './blood-section.tsx';
import { ProductRows } from './product-rows.tsx';
import { UrgentCautions } from './urgent-cautions.tsx';

/** Supplements, blood, how one feels; what needs care now before all of it. */
export function HealthScreen(): JSX.Element {
  const { newest } = health.value;
  return (
    <Page title="Health" detail="this is no medical advice; licensed care goes first">
      {newest?.ok && <UrgentCautions cautions={newest.value.cautions} />}
      <Columns wide="even">
        <Supplements />
        <div class="stack">
          <BloodSection />
          <Recovery />
        </div>
      </Columns>
      <ActionBar>
        <MainAction />
      </ActionBar>
    </Page>
  );
}

/** What is most likely wanted now: results on the day of a draw, a first product, the day's note, else a panel. */
function MainAction(): JSX.Element {
  const { draw, products, recovery } = health.value;
  if (draw?.data.date === today.value)
    return (
      <Button kind="next" wide href={pathTo('health', 'panel', 'new')}>
        Enter the results
      </Button>
    );
  if (products.length === 0)
    return (
      <Button kind="next" wide href={pathTo('health', 'label', 'new')}>
        Describe a product
      </Button>
    );
  const noted = Object.keys(recovery.noted).length > 0;
  return (
    <Button kind={noted ? 'plain' : 'next'} wide href={pathTo('health', 'recovery')}>
      {noted ? 'Add to the note of today' : 'Note how today feels'}
    </Button>
  );
}

function Supplements(): JSX.Element {
  const { products } = health.value;
  const short = products.flatMap(({ stock }) => (stock?.daysBeforeShow === undefined ? [] : [stock.name]));
  return (
    <Section
      title="Supplements"
      detail={todayWords()}
      action={
        <Button kind="quiet" href={pathTo('health', 'supplements')}>
          All about them
        </Button>
      }
    >
      {products.length === 0 ? (
        <Note>No product is described yet.</Note>
      ) : (
        <ProductRows products={products} />
      )}
      {short.length > 0 && <Caution title="Runs out before the show" words={short.join(', ')} />}
      <div class="row">
        <Button href={pathTo('health', 'sums')}>What it adds up to</Button>
        <Button href={pathTo('health', 'label', 'new')}>Add a product</Button>
      </div>
    </Section>
  );
}

function todayWords(): string {
  if (!doses.value.ok) return '';
  const { answer, done } = doses.value.value;
  return `today ${done.length} done, ${answer.items.length} to come`;
}

function Recovery(): JSX.Element {
  const { recovery, screen } = health.value;
  const words = recovery.week.measures.slice(0, 3).map((measure) => measure.words);
  return (
    <Section title="How it feels">
      <List>
        <ListRow
          title={Object.keys(recovery.noted).length > 0 ? 'Noted today' : 'Note today'}
          detail={words.length === 0 ? 'nothing is noted this week' : words.join(' ')}
          href={pathTo('health', 'recovery')}
        />
      </List>
      {screen?.level === 'see a physician' && (
        <Caution title="Have it looked at by a physician" words={screen.signs.map((sign) => sign.words)} />
      )}
    </Section>
  );
}

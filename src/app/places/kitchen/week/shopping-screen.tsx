import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { WeekAhead } from '#core/cycle/week-ahead.ts';
import type { Problem } from '#core/problems/problem.ts';
import type { ShoppingLine } from '#core/week/shopping-list.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { capital } from '#core/units/capital.ts';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { CheckField } from '../../../parts/check-field.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { Note } from '../../../parts/note.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { PrintButton } from '../../../print/print-button.tsx';
import { PrintSheet, StepBox } from '../../../print/print-sheet.tsx';
import { pathTo } from '../../../shell/route.ts';
import { today } from '../../../state/clock.ts';
import { record } from '../../../state/open-journal.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { kitchenUnit } from '../../../views/kitchen-units.ts';
import { week } from '../../../views/week-view.ts';
import { habitPlace } from '../habit-place.ts';
import './week.css';

const problem = signal<Problem | undefined>(undefined);

/** What is missing for the week, by aisle. A tick is a purchase: it stands in stock at once. */
export function ShoppingScreen(): JSX.Element {
  const ahead = week.value;
  return (
    <Page
      title="Shopping list"
      {...(ahead && { detail: headline(ahead) })}
      back={pathTo('kitchen', 'week')}
      busy
    >
      {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      {ahead ? (
        <Lists ahead={ahead} />
      ) : (
        <EmptyState
          title="No week is planned yet"
          words="The list follows from the week: what its pans and days need beyond what is in stock."
          action={
            <Button kind="next" href={pathTo('kitchen', 'week')}>
              Plan the week
            </Button>
          }
        />
      )}
    </Page>
  );
}

function headline({ list }: WeekAhead): string {
  const cents = list.reduce((sum, line) => sum + (line.costCents ?? 0), 0);
  const priced = list.every((line) => line.costCents !== undefined) && list.length > 0;
  return `${list.length} ${list.length === 1 ? 'food' : 'foods'} to buy${priced ? `, ${(cents / 100).toFixed(2)} together` : ''}`;
}

function Lists({ ahead }: { readonly ahead: WeekAhead }): JSX.Element {
  const aisles = [...new Set(ahead.list.map((line) => line.aisle))];
  return (
    <>
      {ahead.list.length === 0 && <Note>Everything the week needs is in stock.</Note>}
      {aisles.map((aisle) => (
        <Section key={aisle} title={capital(aisle)}>
          {ahead.list
            .filter((line) => line.aisle === aisle)
            .map((line) => (
              <Line key={line.food} line={line} week={ahead.adopted.data.week} />
            ))}
        </Section>
      ))}
      {ahead.bought.length > 0 && (
        <Section title="Bought" detail="in stock already; Undo takes the last one back">
          <List>
            {ahead.bought.map(({ entry, data }) => (
              <ListRow
                key={entry.id}
                title={capital(kitchen.value.nameOfFood(data.food) ?? data.food)}
                figure={<strong>{kitchenUnit.value.words(data.grams)}</strong>}
                state="done"
              />
            ))}
          </List>
        </Section>
      )}
      {ahead.list.length > 0 && (
        <>
          <OnPaper ahead={ahead} aisles={aisles} />
          <div class="row">
            <PrintButton>Print the list</PrintButton>
          </div>
        </>
      )}
    </>
  );
}

function Line({ line, week: id }: { readonly line: ShoppingLine; readonly week: string }): JSX.Element {
  return (
    <div class="shopping-line">
      <CheckField
        label={`${capital(line.name)}, ${amountWords(line)}`}
        detail={lineDetail(line)}
        checked={false}
        onChecked={(on) => {
          if (on) void buy(line, id);
        }}
      />
      <Button kind="quiet" label={`Pack size of ${line.name}`} href={pathTo('kitchen', 'pack', line.food)}>
        Pack
      </Button>
    </div>
  );
}

function amountWords({ buyG, packs, packG }: ShoppingLine): string {
  const { words } = kitchenUnit.value;
  return packs === undefined || packG === undefined ? words(buyG) : `${packs} × ${words(packG)}`;
}

function lineDetail({ needG, haveG, neededBy, notBefore }: ShoppingLine): string {
  const have = haveG > 0 ? `, ${kitchenUnit.value.words(haveG)} are there` : '';
  const early =
    notBefore !== undefined && notBefore > today.value
      ? `; not before ${dayAndMonth(notBefore)}, or freeze it`
      : '';
  return `${kitchenUnit.value.words(needG)} needed${have}; for ${dayAndMonth(neededBy)}${early}`;
}

async function buy(line: ShoppingLine, id: string): Promise<void> {
  const storage = kitchen.peek().catalogue.food(line.food)?.storage;
  const saved = await record(
    'stock-bought',
    {
      food: line.food,
      grams: line.buyG,
      place: habitPlace(storage),
      week: id,
      ...(line.costCents !== undefined && { priceCents: Math.round(line.costCents) }),
    },
    { says: `${capital(line.name)}: ${kitchenUnit.peek().words(line.buyG)} in stock` },
  );
  problem.value = saved.status === 'refused' ? saved.problem : undefined;
}

function OnPaper({
  ahead,
  aisles,
}: {
  readonly ahead: WeekAhead;
  readonly aisles: readonly string[];
}): JSX.Element {
  return (
    <div class="paper-only">
      <PrintSheet title="Shopping list" date={today.value} version={`week planned ${ahead.adopted.day}`}>
        {aisles.map((aisle) => (
          <section key={aisle}>
            <h3>{capital(aisle)}</h3>
            {ahead.list
              .filter((line) => line.aisle === aisle)
              .map((line) => (
                <StepBox key={line.food}>{`${amountWords(line)} ${line.name}`}</StepBox>
              ))}
          </section>
        ))}
      </PrintSheet>
    </div>
  );
}

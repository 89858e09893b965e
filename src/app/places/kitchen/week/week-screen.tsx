import type { JSX } from 'preact';
import type { PanAhead } from '#core/cycle/pans-ahead.ts';
import type { DayAhead, DishAhead, WeekAhead } from '#core/cycle/week-ahead.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../../parts/action-bar.tsx';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { Columns } from '../../../parts/columns.tsx';
import { EmptyState } from '../../../parts/empty-state.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { Note } from '../../../parts/note.tsx';
import { Page } from '../../../parts/page.tsx';
import { Section } from '../../../parts/section.tsx';
import { Tag } from '../../../parts/tag.tsx';
import { WhyButton } from '../../../parts/why-button.tsx';
import { pathTo } from '../../../shell/route.ts';
import { kitchenUnit } from '../../../views/kitchen-units.ts';
import { kitchen } from '../../../views/kitchen-view.ts';
import { planWeek, week, weekPlanning } from '../../../views/week-view.ts';
import { weekWatch } from '../../../views/week-watch.ts';
import { ProposalActions, ProposedWeek } from './proposed-week.tsx';
import './week.css';

/** The days after today planned together: what is eaten on each, what is cooked when, what is still to be bought. */
export function WeekScreen(): JSX.Element {
  const ahead = week.value;
  const planning = weekPlanning.value;
  const noRecipes = kitchen.value.catalogue.recipes().length === 0;
  return (
    <Page title="The week ahead" {...(ahead && { detail: headline(ahead) })} back={pathTo('kitchen')}>
      {planning.status === 'refused' && (
        <Caution title={planning.problem.message} words={planning.problem.remedy} />
      )}
      <div role="status">
        {planning.status === 'planning' && <Note>Planning the days together; some seconds …</Note>}
        {weekWatch.value.status === 'solving' && (
          <Note>Something has changed; the days are being solved again …</Note>
        )}
        {weekWatch.value.status === 'proposed' && <span class="unseen">The days are solved again.</span>}
      </div>
      <ProposedWeek />
      {ahead ? (
        <Ahead ahead={ahead} />
      ) : (
        <EmptyState
          title="No week is planned yet"
          words={
            noRecipes
              ? 'Enter a recipe or two first; the days are then planned around them, with what to cook when and what to buy.'
              : 'The coming days are planned together from their targets, your recipes and what is in stock.'
          }
        />
      )}
      <div class="row">
        <Button href={pathTo('kitchen', 'week-wishes')}>How to plan it</Button>
        <Button href={pathTo('kitchen', 'recipes')}>Recipes</Button>
      </div>
      <WeekActions ahead={ahead} />
    </Page>
  );
}

function WeekActions({ ahead }: { readonly ahead: WeekAhead | undefined }): JSX.Element {
  const watch = weekWatch.value;
  const busy = weekPlanning.value.status === 'planning' || watch.status === 'solving';
  const holds = ahead !== undefined && ahead.outOfLine.length === 0 && ahead.days.length > 0;
  if (watch.status === 'proposed' && weekPlanning.value.status !== 'planning') {
    return (
      <ActionBar>
        <ProposalActions proposal={watch.proposal} />
      </ActionBar>
    );
  }
  return (
    <ActionBar>
      <Button
        kind={holds ? 'plain' : 'next'}
        records
        wide={!holds}
        disabled={busy}
        onPress={() => void planWeek()}
      >
        {ahead ? 'Plan again' : 'Plan the week'}
      </Button>
      {holds && (
        <Button kind="next" wide href={pathTo('kitchen', 'shopping')}>
          Shopping list
        </Button>
      )}
    </ActionBar>
  );
}

function headline({ days, pans, list }: WeekAhead): string {
  const open = pans.filter((pan) => pan.done === undefined).length;
  return `${days.length} days, ${open} ${open === 1 ? 'pan' : 'pans'} to cook, ${list.length} to buy`;
}

function Ahead({ ahead }: { readonly ahead: WeekAhead }): JSX.Element {
  const { data } = ahead.adopted;
  return (
    <>
      {ahead.outOfLine.length > 0 && weekWatch.value.status === 'still' && (
        <Caution title="The plan no longer holds as it is" words={ahead.outOfLine.join(' ')} />
      )}
      <Columns wide="first">
        <Section
          title="Day by day"
          action={<WhyButton why={{ title: 'Why this week', sentences: data.why }}>Why this week?</WhyButton>}
        >
          <List>
            {ahead.days.map((day) => (
              <DayRow key={day.date} day={day} />
            ))}
          </List>
        </Section>
        <Section
          title="To cook"
          action={
            <Button kind="quiet" href={pathTo('kitchen', 'week-cook')}>
              Cook plan
            </Button>
          }
        >
          {ahead.pans.length === 0 ? (
            <Note>Nothing: what is ready lasts.</Note>
          ) : (
            <List>
              {ahead.pans.map((pan) => (
                <PanRow key={`${pan.recipe} ${pan.date}`} pan={pan} />
              ))}
            </List>
          )}
        </Section>
      </Columns>
    </>
  );
}

function DayRow({ day }: { readonly day: DayAhead }): JSX.Element {
  const foods = day.foods.map(({ name, grams }) => `${kitchenUnit.value.words(grams)} ${name}`).join('; ');
  return (
    <ListRow
      title={dateWords(day.date)}
      detail={
        <>
          {day.dishes.map((dish, place) => (
            <span key={place} class="week-dish">
              {dishWords(dish)}
              {dish.from === 'freezer' && <Tag>from the freezer</Tag>}
            </span>
          ))}
          {foods !== '' && <span class="week-dish">{`with ${foods}`}</span>}
        </>
      }
    />
  );
}

function dishWords({ name, portions }: DishAhead): string {
  return `${portions} ${portions === 1 ? 'portion' : 'portions'} ${name}`;
}

function PanRow({ pan }: { readonly pan: PanAhead }): JSX.Element {
  const freeze = pan.freeze > 0 ? `, ${pan.freeze} of them into the freezer` : '';
  return (
    <ListRow
      title={pan.name}
      detail={`${dateWords(pan.date)}: ${pan.portions} ${pan.portions === 1 ? 'portion' : 'portions'}${freeze}`}
      state={pan.done === undefined ? 'plain' : 'done'}
    />
  );
}

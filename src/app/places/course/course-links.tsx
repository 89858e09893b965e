import type { JSX } from 'preact';
import { daysBetween } from '#core/units/civil-date.ts';
import { List, ListRow } from '../../parts/list.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { nextShow } from '../../views/show-view.ts';
import { training } from '../../views/training-view.ts';

/** So near the show its last week, its day and the way back come first. */
const NEAR_DAYS = 21;

/** What is planned and decided around the course, and around the show itself. */
export function CourseLinks(): JSX.Element {
  const show = nextShow.value;
  const near = show !== undefined && daysBetween(today.value, show.date) <= NEAR_DAYS;
  return (
    <>
      {near && <ShowLinks />}
      <Section title="Plan">
        <List label="Plan">
          <ListRow
            title="Lay the course"
            detail="back from the show: intake, cardio, training and rest days"
            href={pathTo('course', 'lay')}
          />
          <ListRow
            title="Diet break or higher-carbohydrate days"
            detail="and what the scale will do"
            href={pathTo('course', 'stretch')}
          />
          <CardioRow />
          <ListRow title="The show and its target" href={pathTo('course', 'show')} />
          <ListRow title="Another show in this season" href={pathTo('course', 'show', 'new')} />
          <ListRow
            title="Check-in sheet"
            detail="one page to print or to send to a coach"
            href={pathTo('course', 'sheet')}
          />
        </List>
      </Section>
      {!near && <ShowLinks />}
    </>
  );
}

/** The week's dose of cardio beside the week before: what a correction by cardio would add to. */
function CardioRow(): JSX.Element {
  const { week, before, growth } = training.value.cardio;
  const change =
    growth === undefined
      ? ''
      : `, ${growth === 0 ? 'as the week before' : `${Math.abs(Math.round(100 * growth))} % ${growth > 0 ? 'more' : 'less'} than the week before`}`;
  return (
    <ListRow
      title="Cardio of the week"
      detail={
        week.sessions + before.sessions === 0
          ? 'none logged in two weeks'
          : `${Math.round(week.minutes)} min, ${Math.round(week.netKcal)} kcal beyond rest${change}`
      }
      href={pathTo('gym', 'cardio')}
    />
  );
}

/** What has to do with the show itself; there while no course can be worked out, too. */
export function ShowLinks(): JSX.Element {
  return (
    <Section title="The show">
      <List label="The show">
        <ListRow
          title="Season"
          detail="every date: posing, tanning, check-in; for your calendar"
          href={pathTo('course', 'dates')}
        />
        <ListRow
          title="Last week"
          detail="day by day, its rehearsal, and what this tool refuses"
          href={pathTo('course', 'last-week')}
        />
        <ListRow
          title="Show day"
          detail="from waking to the last call, meals to the gram, the bag"
          href={pathTo('course', 'show-day')}
        />
        <ListRow
          title="Afterwards"
          detail="the way back to eating enough"
          href={pathTo('course', 'afterwards')}
        />
      </List>
    </Section>
  );
}

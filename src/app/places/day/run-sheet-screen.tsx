import type { JSX } from 'preact';
import type { DaySheet } from '#core/cycle/day-sheet.ts';
import type { RunSheetRow } from '#core/cycle/run-sheet.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Page } from '../../parts/page.tsx';
import { RunSheet } from '../../parts/run-sheet.tsx';
import { Section } from '../../parts/section.tsx';
import { TimeRule } from '../../parts/time-rule.tsx';
import { pathTo } from '../../shell/route.ts';
import { nowClock } from '../../state/clock.ts';
import { rows, sheet } from '../../views/day-view.ts';
import { planning, planNow } from '../../views/planner.ts';
import { takeDoses } from '../../views/take-dose.ts';
import { ChangeNote } from './change-note.tsx';
import { dayDetail } from './day-words.ts';
import { DoseNotes } from './dose-notes.tsx';
import { LeftToday } from './left-today.tsx';
import { SheetRow } from './sheet-row.tsx';
import { timeMarks } from './time-marks.ts';
import { UrgentBlood } from './urgent-blood.tsx';

/** The day's list: what is next, in time order, with grams. */
export function RunSheetScreen(): JSX.Element {
  const day = sheet.value;
  if (!day.shape) return <Unshaped />;
  return (
    <Page title="Day" detail={dayDetail(day)}>
      <UrgentBlood />
      <TimeRule
        wake={day.shape.wake}
        sleep={day.shape.sleep}
        now={nowClock.value}
        marks={timeMarks(rows.value)}
      />
      <ChangeNote />
      <Columns wide="first">
        <Section
          title="Run sheet"
          action={
            <Button kind="quiet" href={pathTo('day', 'shape')}>
              Change the day
            </Button>
          }
        >
          <RunSheet>
            {rows.value.map((row) => (
              <SheetRow key={row.key} row={row} />
            ))}
          </RunSheet>
          <EatSomethingElse />
          <DoseNotes />
        </Section>
        <LeftToday sheet={day} />
      </Columns>
      <ActionBar>
        <MainAction day={day} rows={rows.value} />
      </ActionBar>
    </Page>
  );
}

/** One thing is next; the button does it. */
function MainAction({
  day,
  rows: list,
}: {
  readonly day: DaySheet;
  readonly rows: readonly RunSheetRow[];
}): JSX.Element {
  const late = day.meals.some((meal) => meal.lateBy > 0);
  const busy = planning.value.status === 'planning';
  if (!day.targets) {
    return (
      <Button kind="next" wide href={pathTo('day', 'targets')}>
        Enter today's targets
      </Button>
    );
  }
  if (list.some((row) => row.thing.type === 'show')) {
    return (
      <Button kind="next" wide href={pathTo('course', 'show-day')}>
        To the show day
      </Button>
    );
  }
  if (!day.plan) {
    return (
      <Button kind="next" records wide disabled={busy} onPress={() => void planNow('morning')}>
        {busy ? 'Planning' : 'Plan the day'}
      </Button>
    );
  }
  if (late) {
    return (
      <Button kind="next" records wide disabled={busy} onPress={() => void planNow('running late')}>
        {busy ? 'Planning' : 'Running late: plan again from now'}
      </Button>
    );
  }
  const next = list.find((row) => row.state === 'next');
  if (next?.thing.type === 'meal') {
    return (
      <Button kind="next" wide href={pathTo('day', 'weigh', next.thing.meal.slot)}>
        Weigh out the next meal
      </Button>
    );
  }
  if (next?.thing.type === 'doses') {
    const { items } = next.thing.group;
    return (
      <Button kind="next" wide records onPress={() => void takeDoses(items)}>
        {items.length === 1 ? 'Supplement taken' : `${items.length} supplements taken`}
      </Button>
    );
  }
  return (
    <Button wide records disabled={busy} onPress={() => void planNow('asked')}>
      {busy ? 'Planning' : 'Plan again from now'}
    </Button>
  );
}

function EatSomethingElse(): JSX.Element {
  return (
    <div class="row">
      <Button href={pathTo('day', 'eat')}>Ate something else</Button>
      <Button href={pathTo('day', 'wishes')}>Wishes for today</Button>
      <Button href={pathTo('day', 'drink')}>Drink</Button>
    </div>
  );
}

function Unshaped(): JSX.Element {
  return (
    <Page title="Day">
      <EmptyState
        title="When does this day begin and end?"
        words="Meals are planned between waking and sleep, around training. Enter them once as usual; a day that differs can be changed on its own."
        action={
          <Button kind="next" href={pathTo('day', 'shape')}>
            Enter waking, sleep, training
          </Button>
        }
      />
    </Page>
  );
}

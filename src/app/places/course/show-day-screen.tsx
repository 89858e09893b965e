import type { JSX } from 'preact';
import { taskKey } from '#core/course/show-times.ts';
import type { ShowDayNow, ShowRow } from '#core/cycle/show-day-now.ts';
import { formatClock } from '#core/units/clock.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { RunRow, RunSheet } from '../../parts/run-sheet.tsx';
import { Section } from '../../parts/section.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { record } from '../../state/open-journal.ts';
import { outWords } from '../../views/show-view.ts';
import { planShowMeals, showDay, showPlanning } from '../../views/show-day-view.ts';
import { PrintButton } from '../../print/print-button.tsx';
import { ShowBag } from './show-bag.tsx';
import { foodWords, ShowPaper } from './show-paper.tsx';
import { ShowTimesScreen } from './show-times-screen.tsx';
import { StageLate } from './stage-late.tsx';
import { zoneWords } from './zone-field.tsx';

/** The show day from waking to the last call: what is next, what is eaten, what goes into the bag. */
export function ShowDayScreen({ part }: { readonly part: string | undefined }): JSX.Element {
  const day = showDay.value;
  if (!day)
    return (
      <Page title="Show day" back={pathTo('course')}>
        <EmptyState
          title="No show is set."
          words="Its day is planned from its date and the call to the stage."
          action={
            <Button kind="next" href={pathTo('course', 'show')}>
              Set a show
            </Button>
          }
        />
      </Page>
    );
  if (part === 'times' || !day.times) return <ShowTimesScreen day={day} />;
  return (
    <Page
      title="Show day"
      back={pathTo('course')}
      detail={`${day.show.name}, ${dateWords(day.show.date)} · ${outWords(day.show)}`}
    >
      <Elsewhere day={day} />
      <Problems day={day} />
      <Columns wide="first">
        <div class="stack">
          {day.daysOut === 0 && <StageLate day={day} />}
          <Sheet day={day} />
        </div>
        <ShowBag day={day} />
      </Columns>
      <MainAction day={day} />
    </Page>
  );
}

function Elsewhere({ day }: { readonly day: ShowDayNow }): JSX.Element | null {
  const { show, elsewhere, clock } = day;
  if (!elsewhere || show.zone === undefined) return null;
  const there = ((clock % 1440) + 1440) % 1440;
  return (
    <Note>{`Times by the clocks of ${zoneWords(show.zone)}, where it is ${formatClock(there)} now.`}</Note>
  );
}

function Problems({ day }: { readonly day: ShowDayNow }): JSX.Element | null {
  const problem = day.tasks.ok ? showPlanning.value.problem : day.tasks.problem;
  return problem ? <Caution title={problem.message} words={problem.remedy} /> : null;
}

/** Stock of today may still be eaten so many days from now. Common practice, no source. */
const FRESH_DAYS = 2;

function Sheet({ day }: { readonly day: ShowDayNow }): JSX.Element {
  return (
    <Section
      title="From waking to the last call"
      action={
        <Button kind="quiet" href={pathTo('course', 'show-day', 'times')}>
          Change the times
        </Button>
      }
    >
      {!day.macros && (
        <Note>
          The day has no targets, so its small meals have no grams yet: adopt the last week, or set targets.
        </Note>
      )}
      {day.daysOut > FRESH_DAYS && day.rows.some(({ plate }) => plate) && (
        <Note>The plates are from what is in stock today; plan them anew the evening before.</Note>
      )}
      <RunSheet>
        {day.rows.map((row) => (
          <SheetLine key={taskKey(row.task)} day={day} row={row} />
        ))}
      </RunSheet>
      <div class="row">
        <PrintButton>Print it for the bag</PrintButton>
      </div>
      <ShowPaper day={day} />
    </Section>
  );
}

function SheetLine({ day, row }: { readonly day: ShowDayNow; readonly row: ShowRow }): JSX.Element {
  const { task, done, next } = row;
  const state = done ? 'done' : next ? 'next' : 'planned';
  const detail = foodWords(row) || undefined;
  return (
    <RunRow at={task.at} title={task.title} detail={detail} state={state}>
      {next && day.daysOut === 0 && task.type !== 'wake' ? <Act day={day} row={row} /> : undefined}
    </RunRow>
  );
}

/** What the line that is next asks for: its plate weighed out, or a tick. */
function Act({ day, row }: { readonly day: ShowDayNow; readonly row: ShowRow }): JSX.Element | null {
  const { task, plate } = row;
  const { show, date } = day.show;
  const says = `Done: ${task.title}`;
  // Plates are weighed out on the run sheet of the day here, which is the show's own once one has travelled.
  if (plate && today.value !== date) return null;
  return (
    <div class="row">
      {plate ? (
        <Button href={pathTo('day', 'weigh', plate.slot)}>Weigh it out</Button>
      ) : (
        <Button
          records
          label={says}
          onPress={() => void record('show-task-done', { show, task: taskKey(task) }, { says })}
        >
          Done
        </Button>
      )}
    </div>
  );
}

function MainAction({ day }: { readonly day: ShowDayNow }): JSX.Element | null {
  const { busy } = showPlanning.value;
  if (!day.macros)
    return (
      <ActionBar>
        <Button kind="next" wide href={pathTo('course', 'last-week')}>
          Plan the last week first
        </Button>
      </ActionBar>
    );
  const planned = day.rows.some(({ plate }) => plate !== undefined);
  if (day.daysOut === 0 && planned) return null;
  return (
    <ActionBar>
      <Button
        kind={planned ? 'plain' : 'next'}
        records
        wide
        disabled={busy}
        onPress={() => void planShowMeals(day)}
      >
        {busy
          ? 'Weighing them out'
          : planned
            ? 'Plan the small meals anew'
            : 'Plan the small meals to the gram'}
      </Button>
    </ActionBar>
  );
}

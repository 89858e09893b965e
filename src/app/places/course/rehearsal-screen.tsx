import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { LastWeekNow } from '#core/cycle/last-week-now.ts';
import type { Problem } from '#core/problems/problem.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Columns } from '../../parts/columns.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { outWords } from '../../views/show-view.ts';
import { newId } from '../../views/new-id.ts';
import { rehearsalFacts, rehearsalOff } from './last-week-facts.ts';
import { lastWeek } from './last-week-state.ts';
import { RehearsalHeld } from './rehearsal-held.tsx';

const DRAFT = 'course/rehearsal';
const planDraft = v.strictObject({ on: v.string() });
const problems = signal<readonly Problem[]>([]);

/** The dress rehearsal: the same load weeks before, looked at and judged, its lessons carried over. */
export function RehearsalScreen(): JSX.Element {
  const state = lastWeek.value;
  const back = pathTo('course', 'last-week');
  if (state === 'working')
    return (
      <Page title="Rehearsal" back={back}>
        <Note>Working out where the body stands …</Note>
      </Page>
    );
  if (!state.ok)
    return (
      <Page title="Rehearsal" back={back}>
        <EmptyState title={state.problem.message} words={state.problem.remedy} />
      </Page>
    );
  const now = state.value;
  const held = now.rehearsals.filter((one) => one.state !== 'ahead').toReversed();
  return (
    <Page title="Rehearsal" back={back} detail={outWords(now.show)}>
      <Columns wide="even">
        {held.map((one) => (
          <RehearsalHeld key={one.from} show={now.show.show} now={now} rehearsal={one} />
        ))}
        {now.rehearse ? (
          <PlanRehearsal now={now} window={now.rehearse} />
        ) : (
          held.length === 0 && (
            <EmptyState
              title="Too late for a rehearsal"
              words="Three weeks before the show the body has to be left in peace. Load less, or not at all."
            />
          )
        )}
      </Columns>
    </Page>
  );
}

interface PlanProps {
  readonly now: LastWeekNow;
  readonly window: NonNullable<LastWeekNow['rehearse']>;
}

function PlanRehearsal({ now, window }: PlanProps): JSX.Element {
  const ahead = now.rehearsals.find((one) => one.state === 'ahead');
  const typed = draft(DRAFT, planDraft, { on: ahead ? addDays(ahead.until, 1) : window.until });
  const { on } = typed.value;
  const load = now.plan.days.find(({ role }) => role === 'load');
  const first = parseDate(on) === undefined ? undefined : addDays(on, -now.loadDays);
  return (
    <Form onSubmit={() => void plan(now, window, on)} problems={problems.value}>
      <Section
        title={ahead ? 'Move it' : 'Plan it'}
        detail={ahead && `planned: loading from ${dateWords(ahead.from)}`}
      >
        <div class="stack">
          <DateField
            label="The morning after the load"
            value={on}
            min={window.from}
            max={window.until}
            onValue={(next) => {
              typed.value = { on: next };
            }}
            problem={problemAt(problems.value, 'on')}
          />
          {load && first !== undefined && (
            <p>
              {`Loading from ${dateWords(first)} for ${now.loadDays === 1 ? 'one day' : `${now.loadDays} days`}: ${load.carbohydrateG} g carbohydrate, ${load.proteinG} g protein, ${load.fatG} g fat a day. The next morning: photographs in the stage poses, and notes.`}
            </p>
          )}
          {first !== undefined && on < window.dressFrom && (
            <Note>
              {`So early it tries the gut, the times and the mirror; the condition is not yet that of the show. Hold the dress rehearsal too, with its morning after from ${dateWords(window.dressFrom)} on: common practice, no source.`}
            </Note>
          )}
          <Note>Eat the very foods of the show week. Take photographs the evening before the load too.</Note>
        </div>
      </Section>
      {ahead && (
        <div class="row">
          <Button records onPress={() => void callOff(now.show.show)}>
            Call the rehearsal off
          </Button>
        </div>
      )}
      <ActionBar>
        <Button kind={ahead ? 'plain' : 'next'} records wide submits disabled={!load}>
          {ahead ? 'Move the rehearsal' : 'Plan the rehearsal'}
        </Button>
      </ActionBar>
    </Form>
  );
}

async function plan(now: LastWeekNow, window: PlanProps['window'], on: string): Promise<void> {
  if (parseDate(on) === undefined || on < window.from || on > window.until) {
    problems.value = [
      {
        code: 'course/rehearsal-day',
        path: 'on',
        message: 'That morning is not between twelve and three weeks before the show.',
        remedy: `Choose one from ${dateWords(window.from)} to ${dateWords(window.until)}.`,
      },
    ];
    return;
  }
  const when = { today: today.peek(), on, event: newId('date') };
  const { facts, removing } = rehearsalFacts(ledger.peek(), now, when);
  const saved = await recordAll(facts, { says: 'Rehearsal planned', removing });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('course', 'last-week'));
}

async function callOff(show: string): Promise<void> {
  const { facts, removing } = rehearsalOff(ledger.peek(), show, today.peek());
  const saved = await recordAll(facts, { says: 'Rehearsal called off', removing });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status !== 'refused') clearDraft(DRAFT);
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { weekNow, weekUntil } from '#core/cycle/week-now.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { draft } from '../../state/drafts.ts';
import { feltThisWeek, lastCheckIn, weekStrength } from '../../views/check-in-view.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { say } from '../../views/say.ts';
import { ASKED, checkInDraft, type CheckInDraft, SCORES, scoresOf, withNotes } from './check-in-draft.ts';
import { CloseWeek, Proposed } from './decision.tsx';
import './check-in-screen.css';
import { FeltWeek } from './felt-week.tsx';
import { WeekTable } from './week-table.tsx';

const problems = signal<readonly Problem[]>([]);

/** The weekly check-in: the week in figures, how it felt, what it says, and what is decided. */
export function CheckInScreen(): JSX.Element {
  const [ask, state] = [courseQuestion.value, course.value];
  if (!ask.ok)
    return (
      <Page title="Check-in" back={pathTo('course')}>
        <EmptyState title={ask.problem.message} words={ask.problem.remedy} />
      </Page>
    );
  return (
    <Page
      title="Check-in"
      back={pathTo('course')}
      detail={`the week to ${dateWords(weekUntil(today.value))}`}
    >
      {state.status === 'working' ? (
        <Note>Gathering the week …</Note>
      ) : state.outcome.ok ? (
        <Week ask={ask.value} now={state.outcome.value} />
      ) : (
        <EmptyState title={state.outcome.problem.message} words={state.outcome.problem.remedy} />
      )}
    </Page>
  );
}

function Week({ ask, now }: { readonly ask: CourseAsk; readonly now: CourseNow }): JSX.Element {
  const key = `course/check-in/${weekUntil(ask.today)}`;
  const typed = draft(key, checkInDraft, { note: '' });
  const told = withNotes(typed.value, feltThisWeek.value.scores);
  const week = weekNow(ask, now, scoresOf(told), lastCheckIn.value?.data.answers, weekStrength.value);
  const change = (part: Partial<CheckInDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Form onSubmit={() => undefined} problems={problems.value}>
      <Columns wide="even">
        <div class="stack">
          <Section title="1. The week">
            <WeekTable evidence={week.evidence} />
          </Section>
          <Section title="2. How was it" detail="1 bad, 5 good">
            <FeltWeek />
            <Feelings typed={told} change={change} />
          </Section>
        </div>
        <div class="stack">
          <Section title="3. What it says">
            <div class="stack">
              {week.evidence.words.map((sentence) => (
                <p key={sentence}>{say(sentence)}</p>
              ))}
            </div>
          </Section>
          <Proposed now={now} week={week} />
        </div>
      </Columns>
      <CloseWeek now={now} week={week} typed={told} draftKey={key} problems={problems} />
    </Form>
  );
}

interface FeelingsProps {
  readonly typed: CheckInDraft;
  readonly change: (part: Partial<CheckInDraft>) => void;
}

function Feelings({ typed, change }: FeelingsProps): JSX.Element {
  const before = lastCheckIn.value?.data.answers;
  return (
    <div class="stack scores">
      {ASKED.map(({ key, label, low, high }) => (
        <ChoiceField
          key={key}
          label={label}
          layout="row"
          value={typed[key]}
          hint={`1 ${low}, 5 ${high}${before?.[key] === undefined ? '' : `; last time ${before[key]}`}`}
          options={SCORES.map((value) => ({ value, label: value }))}
          onValue={(score) => change({ [key]: score })}
        />
      ))}
      <TextField
        label="Anything else"
        lines={3}
        value={typed.note}
        onValue={(note) => change({ note })}
        optional
      />
    </div>
  );
}

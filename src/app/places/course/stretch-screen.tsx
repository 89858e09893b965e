import { computed, signal } from '@preact/signals';
import type { JSX } from 'preact';
import { stretchPurpose } from '#core/course/stretch-ids.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import type { Fact } from '#core/journal/ledger.ts';
import { answered, type Problem } from '#core/problems/problem.ts';
import { addDays } from '#core/units/civil-date.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record, recordAll, remove } from '../../state/open-journal.ts';
import { keptAsked } from '../../views/asked.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { askCourse } from '../../worker/course-client.ts';
import { newId } from '../../views/new-id.ts';
import { stretchFacts, targetsOfStretch } from './stretch-facts.ts';
import { STRETCH_TYPES, stretchDraft, type StretchDraft, stretchFrom } from './stretch-draft.ts';
import { jumpWords } from './stretches-ahead.tsx';

const DRAFT = 'course/stretch';
const problems = signal<readonly Problem[]>([]);
/** What is typed at present, for the forecast beside it. */
const typedNow = signal<StretchDraft | undefined>(undefined);

const jumpQuestion = computed(() => {
  const ask = courseQuestion.value;
  if (!ask.ok) return ask;
  const stretch = stretchFrom(typedNow.value ?? emptyStretch(), today.value);
  return stretch.ok ? answered({ ask: ask.value, stretch: stretch.value }) : stretch;
});
const jump = keptAsked(jumpQuestion, (asks) => askCourse('jump', asks));

function emptyStretch(): StretchDraft {
  return { type: 'diet break', from: addDays(today.peek(), 1), until: addDays(today.peek(), 7) };
}

/** Days planned otherwise, and what the scale will do about them. */
export function StretchScreen(): JSX.Element {
  const typed = draft(DRAFT, stretchDraft, emptyStretch());
  typedNow.value = typed.value;
  const ask = courseQuestion.value;
  const state = course.value;
  const now = state.status === 'answered' && state.outcome.ok ? state.outcome.value : undefined;
  if (!ask.ok)
    return (
      <Page title="Days planned otherwise" back={pathTo('course')}>
        <EmptyState title={ask.problem.message} words={ask.problem.remedy} />
      </Page>
    );
  return (
    <Page title="Days planned otherwise" back={pathTo('course')}>
      <Form onSubmit={() => now && void keep(typed.value, now)} problems={problems.value}>
        <StretchFields
          typed={typed.value}
          change={(part) => {
            typed.value = { ...typed.value, ...part };
          }}
        />
        <Section title="What the scale will do">
          <Foretold />
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits disabled={!now}>
            Plan these days
          </Button>
        </ActionBar>
      </Form>
      <Planned />
    </Page>
  );
}

interface FieldsProps {
  readonly typed: StretchDraft;
  readonly change: (part: Partial<StretchDraft>) => void;
}

function StretchFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <Section title="Which days">
      <div class="stack">
        <ChoiceField
          label="What"
          layout="column"
          value={typed.type}
          options={STRETCH_TYPES.map((value) => ({ value, label: value }))}
          onValue={(type) => change({ type })}
        />
        <DateField
          label="First day"
          value={typed.from}
          min={today.value}
          onValue={(from) => change({ from })}
          problem={problemAt(problems.value, 'from')}
        />
        <DateField
          label="Last day"
          value={typed.until}
          min={today.value}
          onValue={(until) => change({ until })}
          problem={problemAt(problems.value, 'until')}
        />
        <NumberField
          label="Energy a day"
          unit="kcal"
          min={800}
          max={8000}
          value={typed.energyKcal}
          onValue={(energyKcal) => change({ energyKcal })}
          hint="empty: what keeps the balance"
          optional
        />
        <NumberField
          label="Carbohydrate a day"
          unit="g"
          min={0}
          max={2000}
          value={typed.carbohydrateG}
          onValue={(carbohydrateG) => change({ carbohydrateG })}
          hint="empty: all that is added is carbohydrate"
          optional
        />
      </div>
    </Section>
  );
}

function Foretold(): JSX.Element {
  const state = jump.value;
  if (state.status === 'working') return <Note>Running the paths …</Note>;
  if (!state.outcome.ok)
    return <Note>{`${state.outcome.problem.message} ${state.outcome.problem.remedy}`}</Note>;
  return <p>{jumpWords(state.outcome.value)}</p>;
}

/** Stretches in force, each to be called off; loads of a show are changed where they were planned. */
function Planned(): JSX.Element | null {
  const newest = new Map(ledger.value.of('stretch-planned').map((fact) => [fact.data.stretch, fact]));
  const shows = [...new Set(ledger.value.of('show-set').map(({ data }) => data.show))];
  const ahead = [...newest.values()].filter(
    ({ data }) =>
      !data.cancelled &&
      data.until >= today.value &&
      shows.every((show) => stretchPurpose(data.stretch, show) === undefined),
  );
  if (ahead.length === 0) return null;
  return (
    <Section title="Planned so far">
      <List label="Stretches">
        {ahead.map((fact) => (
          <ListRow
            key={fact.data.stretch}
            title={fact.data.type}
            detail={`${dayAndMonth(fact.data.from)} to ${dayAndMonth(fact.data.until)}`}
            figure={
              <Button records label={`Call off: ${fact.data.type}`} onPress={() => void callOff(fact)}>
                Call off
              </Button>
            }
          />
        ))}
      </List>
    </Section>
  );
}

async function callOff(fact: Fact<'stretch-planned'>): Promise<void> {
  const { data } = fact;
  for (const target of targetsOfStretch(ledger.peek(), data)) await remove(target.entry.id);
  await record('stretch-planned', { ...data, cancelled: true }, { says: `Called off: ${data.type}` });
}

async function keep(typed: StretchDraft, now: CourseNow): Promise<void> {
  const stretch = stretchFrom(typed, today.value);
  if (!stretch.ok) {
    problems.value = [stretch.problem];
    return;
  }
  const facts = stretchFacts(ledger.peek(), newId('stretch'), stretch.value, now);
  const saved = await recordAll(facts, { says: `Planned: ${typed.type}` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('course'));
}

import { computed, signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { LaidCourse } from '#core/course/lay-course.ts';
import type { WeekTargets } from '#core/course/day-targets.ts';
import { shapeOfDay } from '#core/day/shape-of-day.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import { answered, type Problem } from '#core/problems/problem.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import { dateWords } from '#core/words/dates.ts';
import { TimeChart } from '../../charts/time-chart.tsx';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { draft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { keptAsked } from '../../views/asked.ts';
import { courseQuestion } from '../../views/course-view.ts';
import { massUnit } from '../../views/mass-units.ts';
import { outWords } from '../../views/show-view.ts';
import { sourceWords } from '../../views/source-words.ts';
import { say } from '../../views/say.ts';
import { askCourse } from '../../worker/course-client.ts';
import type { LaidWeek } from '../../worker/course-worker.ts';
import { adoption } from './adoption.ts';
import { TargetTable } from './correct-screen.tsx';
import { chanceWords } from './course-words.ts';

const DRAFT = 'course/lay';
const problems = signal<readonly Problem[]>([]);

const layDraft = v.strictObject({
  trainingDays: v.number(),
  higherCarbohydrateDays: v.number(),
  trainingExtraKcal: v.number(),
  proteinGPerKgLean: v.number(),
});
type LayDraft = v.InferOutput<typeof layDraft>;

function wish() {
  return draft(DRAFT, layDraft, {
    trainingDays: usualTrainingDays(),
    higherCarbohydrateDays: 0,
    trainingExtraKcal: 200,
    proteinGPerKgLean: 2.6,
  });
}

/** Training days in the week that begins tomorrow, as its days are usually shaped. */
function usualTrainingDays(): number {
  const days = Array.from({ length: 7 }, (_, d) => addDays(today.peek(), d + 1));
  return days.filter((day) => shapeOfDay(ledger.peek(), day)?.dayKind === 'training').length;
}

const question = computed(() => {
  const ask = courseQuestion.value;
  return ask.ok
    ? answered({ ask: ask.value, wish: { stretches: ask.value.stretches }, shape: wish().value })
    : ask;
});
const laidNow = keptAsked(question, (asks) => askCourse('lay', asks));

/** The course laid back from the show: feasible or not, at which pace, what it costs, and the days' targets. */
export function LayScreen(): JSX.Element {
  const ask = courseQuestion.value;
  if (!ask.ok)
    return (
      <Page title="Lay the course" back={pathTo('course')}>
        <EmptyState title={ask.problem.message} words={ask.problem.remedy} />
      </Page>
    );
  const state = laidNow.value;
  const laid = state.status === 'answered' && state.outcome.ok ? state.outcome.value : undefined;
  return (
    <Page title="Lay the course" back={pathTo('course')} detail={outWords(ask.value.show)}>
      <Form onSubmit={() => laid && void adopt(ask.value, laid, wish().value)} problems={problems.value}>
        <Columns wide="last">
          <Wishes typed={wish().value} />
          <div class="stack">
            {state.status === 'answered' && !state.outcome.ok && (
              <Caution title={state.outcome.problem.message} words={state.outcome.problem.remedy} />
            )}
            {laid ? <Laid {...laid} ask={ask.value} /> : <Note>Laying the course back from the show …</Note>}
          </div>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits disabled={!laid?.week.ok}>
            {laid && !laid.laid.feasible ? 'Adopt it as far as it goes' : 'Adopt this course'}
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Wishes({ typed }: { readonly typed: LayDraft }): JSX.Element {
  const form = wish();
  const change = (part: Partial<LayDraft>): void => {
    form.value = { ...form.value, ...part };
  };
  return (
    <Section title="The week">
      <div class="stack">
        <StepperField
          label="Training days"
          unit="a week"
          value={typed.trainingDays}
          step={1}
          min={0}
          max={7}
          onValue={(n) => n !== undefined && change({ trainingDays: n })}
        />
        <StepperField
          label="Higher-carbohydrate days"
          unit="a week"
          value={typed.higherCarbohydrateDays}
          step={1}
          min={0}
          max={3}
          onValue={(n) => n !== undefined && change({ higherCarbohydrateDays: n })}
        />
        <StepperField
          label="More on a training day"
          unit="kcal"
          value={typed.trainingExtraKcal}
          step={50}
          min={0}
          max={800}
          onValue={(n) => n !== undefined && change({ trainingExtraKcal: n })}
        />
        <StepperField
          label="Protein"
          unit="g per kg lean"
          decimals={1}
          value={typed.proteinGPerKgLean}
          step={0.1}
          min={2.3}
          max={3.1}
          onValue={(n) => n !== undefined && change({ proteinGPerKgLean: n })}
        />
        {typed.higherCarbohydrateDays > 0 && (
          <Note>Which weekday that is, is said in the shape of the day.</Note>
        )}
      </div>
    </Section>
  );
}

function Laid({ laid, week, ask }: LaidWeek & { readonly ask: CourseAsk }): JSX.Element {
  return (
    <>
      <Section title={laid.feasible ? 'Feasible' : 'Not in reach by this date'}>
        <div class="stack">
          {laid.why.slice(0, laid.feasible ? 1 : 3).map((sentence) => (
            <p key={sentence}>{say(sentence)}</p>
          ))}
          {laid.heldBackBy && (
            <Caution
              title="What holds it back"
              words={say(laid.heldBackBy.words)}
              source={sourceWords(laid.heldBackBy.source)}
            />
          )}
          <Cost laid={laid} />
          <LaidLine laid={laid} ask={ask} />
        </div>
      </Section>
      <Section title="Targets of the days" detail={`from ${dateWords(addDays(today.value, 1))} on`}>
        {week.ok ? (
          <Targets week={week.value} />
        ) : (
          <Caution title={week.problem.message} words={week.problem.remedy} />
        )}
      </Section>
    </>
  );
}

function Targets({ week }: { readonly week: WeekTargets }): JSX.Element {
  return (
    <>
      <TargetTable targets={week.targets} />
      <Note>{week.why[0] ?? ''}</Note>
    </>
  );
}

function Cost({ laid }: { readonly laid: LaidCourse }): JSX.Element {
  const { unit, shown } = massUnit.value;
  const why = (title: string) => ({ title, sentences: laid.why, source: sourceWords('hall-2011') });
  return (
    <div class="row">
      <Figure
        value={chanceWords(laid.probability)}
        label="Chance"
        size="large"
        why={why('Chance of the laid course')}
      />
      <Figure value={laid.energyKcal} unit="kcal" label="Food a day" why={why('Food a day')} />
      <Figure value={laid.cardioKcal} unit="kcal" label="Cardio a day" why={why('Cardio a day')} />
      <Figure value={laid.lossPercentPerWeek} decimals={2} unit="% a week" label="Pace" why={why('Pace')} />
      <Figure
        value={shown(laid.leanLostKg.mean)}
        decimals={1}
        plusMinus={shown((laid.leanLostKg.q95 - laid.leanLostKg.q05) / 2)}
        unit={unit}
        label="Lean tissue it costs"
        why={why('Lean tissue it costs')}
      />
      <Figure
        value={laid.energyAvailability}
        decimals={0}
        unit="kcal per kg lean"
        label="Energy availability"
        why={why('Energy availability')}
      />
    </div>
  );
}

function LaidLine({ laid, ask }: { readonly laid: LaidCourse; readonly ask: CourseAsk }): JSX.Element {
  const percent = ask.target.bodyFatPercent !== undefined;
  const { unit, shown } = massUnit.value;
  const points = laid.line.flatMap(({ date, massKg, bodyFatPercent }) => {
    const day = parseDate(date);
    return day === undefined ? [] : [{ day, value: percent ? bodyFatPercent : shown(massKg) }];
  });
  const mark = ask.target.bodyFatPercent?.max;
  const [first, last] = [points[0], points.at(-1)];
  const name = percent ? 'Body fat' : 'Body mass';
  const of = percent ? '%' : unit;
  return (
    <TimeChart
      title={`${name} on this course`}
      unit={of}
      decimals={1}
      sentence={`From ${first?.value.toFixed(1) ?? '?'} to ${last?.value.toFixed(1) ?? '?'} ${of}.`}
      lines={[{ name: 'Planned', look: 'dashed', points }]}
      levels={mark === undefined ? [] : [{ value: mark, words: 'at most' }]}
    />
  );
}

async function adopt(ask: CourseAsk, { laid, week }: LaidWeek, typed: LayDraft): Promise<void> {
  if (!week.ok) {
    problems.value = [week.problem];
    return;
  }
  const facts = adoption(ledger.peek(), { ask, laid, week: week.value, ...typed });
  const saved = await recordAll(facts, { says: `Course to ${ask.show.name} adopted` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  go(pathTo('course'));
}

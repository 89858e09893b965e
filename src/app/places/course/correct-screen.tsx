import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { acceptCorrection, type Accepted } from '#core/course/accept-correction.ts';
import { changeWords } from '#core/course/words.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { standingTargets } from '#core/cycle/standing-targets.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Outcome, Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { capital } from '#core/units/capital.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { Caution } from '../../parts/caution.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { course, courseQuestion } from '../../views/course-view.ts';
import { triedChange } from '../../views/what-if-view.ts';
import { changeOf, chosenCorrection, type CorrectionDraft, forgetCorrection } from './correction-draft.ts';
import { chanceWords } from './course-words.ts';

const problems = signal<readonly Problem[]>([]);

/** A correction before it is accepted: which macro, which days, and the targets it makes. */
export function CorrectScreen(): JSX.Element {
  const typed = chosenCorrection();
  const [ask, state] = [courseQuestion.value, course.value];
  const change = changeOf(typed.value);
  if (!change || !ask.ok || state.status === 'working' || !state.outcome.ok) {
    const waits = change !== undefined && state.status === 'working';
    return (
      <Page title="Correction" back={pathTo('course')}>
        {waits ? (
          <Note>Running the paths to the show …</Note>
        ) : (
          <EmptyState
            title="No correction is chosen"
            words="Take one on the Course, or try one on its chart."
          />
        )}
      </Page>
    );
  }
  const now = state.outcome.value;
  const accepted = acceptedOf(ask.value, now, typed.value);
  return (
    <Page title="Correction" back={pathTo('course')} detail={`from ${dateWords(now.from)} on`}>
      <Form onSubmit={() => void accept(accepted)} problems={problems.value}>
        <Section title={capital(changeWords(change))}>
          <div class="stack">
            <Note>
              {`The chance goes from ${chanceWords(typed.value.before)} to ${chanceWords(typed.value.after)}.`}
            </Note>
            {change.energyKcal !== undefined && <Ways typed={typed.value} />}
          </div>
        </Section>
        <Section title="Targets it makes" detail="the Day plans from these">
          {accepted.ok ? (
            <TargetTable targets={accepted.value.targets} />
          ) : (
            <Caution title={accepted.problem.message} words={accepted.problem.remedy} />
          )}
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits disabled={!accepted.ok}>
            Accept the correction
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

function Ways({ typed }: { readonly typed: CorrectionDraft }): JSX.Element {
  const draft = chosenCorrection();
  return (
    <>
      <ChoiceField
        label="Which macro"
        layout="row"
        value={typed.macro}
        options={[
          { value: 'carbohydrate', label: 'Carbohydrate' },
          { value: 'fat', label: 'Fat' },
          { value: 'both', label: 'Both' },
        ]}
        onValue={(macro) => (draft.value = { ...draft.value, macro })}
      />
      <ChoiceField
        label="Which days"
        layout="row"
        value={typed.days}
        options={[
          { value: 'every', label: 'Every day' },
          { value: 'training', label: 'Training days' },
          { value: 'rest', label: 'Rest days' },
        ]}
        hint="on fewer days each changes by more; the week stays the same"
        onValue={(days) => (draft.value = { ...draft.value, days })}
      />
    </>
  );
}

type DayTarget = Pick<DataOf<'target-set'>, 'dayKind' | 'proteinG' | 'carbohydrateG' | 'fatG' | 'cardioKcal'>;

/** Targets as they would stand. */
export function TargetTable({ targets }: { readonly targets: readonly DayTarget[] }): JSX.Element {
  return (
    <Table
      caption="Targets a day"
      captionHidden
      columns={[
        { key: 'day', label: 'Day' },
        { key: 'energy', label: 'Energy', unit: 'kcal', numeric: true },
        { key: 'protein', label: 'Protein', unit: 'g', numeric: true },
        { key: 'carbohydrate', label: 'Carbohydrate', unit: 'g', numeric: true },
        { key: 'fat', label: 'Fat', unit: 'g', numeric: true },
        { key: 'cardio', label: 'Cardio', unit: 'kcal', numeric: true },
      ]}
      rows={targets.map((target) => ({
        day: target.dayKind,
        energy: 4 * target.proteinG + 4 * target.carbohydrateG + 9 * target.fatG,
        protein: target.proteinG,
        carbohydrate: target.carbohydrateG,
        fat: target.fatG,
        cardio: target.cardioKcal ?? 'as now',
      }))}
    />
  );
}

function acceptedOf(ask: CourseAsk, now: CourseNow, typed: CorrectionDraft): Outcome<Accepted> {
  const usual = Math.round(now.goesOn.cardioKcal);
  // A change of cardio needs something to change: targets that say nothing of it get what was done of late.
  const standing = standingTargets(ledger.value, now.from, now.goesOn).map(({ target, daysAWeek }) => ({
    target: typed.cardioKcal ? { ...target, cardioKcal: target.cardioKcal ?? usual } : target,
    daysAWeek,
  }));
  return acceptCorrection({
    change: changeOf(typed) ?? {},
    from: now.from,
    probabilityBefore: typed.before,
    probabilityAfter: typed.after,
    why: typed.why.slice(0, 12),
    macro: typed.macro,
    days: typed.days,
    standing,
    sex: ask.log.athlete.sex,
    massKg: now.massKg,
    leanKg: now.massKg - now.fatKg,
  });
}

async function accept(accepted: Outcome<Accepted>): Promise<void> {
  if (!accepted.ok) return;
  const { correction, targets } = accepted.value;
  const saved = await recordAll(
    [
      { kind: 'correction-accepted', data: correction },
      ...targets.map((data) => ({ kind: 'target-set' as const, data })),
    ],
    { says: `Correction accepted from ${dateWords(correction.from)} on` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  forgetCorrection();
  triedChange.value = {};
  go(pathTo('course'));
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { DatedEvent } from '#core/course/read-course.ts';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { correct, ledger, recordAll, remove } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { nextShow } from '../../views/show-view.ts';
import { newId } from '../../views/new-id.ts';
import { DATE_TYPES, type DateDraft, dateDraft, datesFrom, draftOfDate } from './date-draft.ts';

const problems = signal<readonly Problem[]>([]);

/** A task with a date: `id` names its entry, "new" adds one. */
export function DateScreen({ id }: { readonly id: string }): JSX.Element {
  const fact = ledger.value.of('event-dated').find(({ entry }) => entry.id === id);
  const key = `course/date/${fact ? id : 'new'}`;
  const typed = draft(key, dateDraft, draftOfDate(fact?.data));
  const change = (part: Partial<DateDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const keep = fact ? () => move(id, fact.data, typed.value, key) : () => add(typed.value, key);
  return (
    <Page title={fact ? 'A date' : 'New date'} back={pathTo('course', 'dates')}>
      <Form onSubmit={() => void keep()} problems={problems.value}>
        <Section title="What and when">
          <DateFields typed={typed.value} change={change} />
          {!fact && nextShow.value && (
            <CheckField
              label="Every week from then on"
              detail={`on the same weekday, until ${nextShow.value.name}`}
              checked={typed.value.weekly}
              onChecked={(weekly) => change({ weekly })}
            />
          )}
        </Section>
        {fact && (
          <Button kind="caution" records onPress={() => void takeOff(id, fact.data.title, key)}>
            Take it off the calendar
          </Button>
        )}
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the date
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: DateDraft;
  readonly change: (part: Partial<DateDraft>) => void;
}

function DateFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="What"
        layout="row"
        value={typed.type}
        options={DATE_TYPES.map((value) => ({ value, label: value }))}
        onValue={(type) => change({ type })}
      />
      <TextField
        label="Name"
        value={typed.title}
        onValue={(title) => change({ title })}
        hint="empty: as above"
        optional
      />
      <DateField
        label="Date"
        value={typed.date}
        onValue={(date) => change({ date })}
        problem={problemAt(problems.value, 'date')}
      />
      <ClockField label="At" value={typed.at} onValue={(at) => change({ at })} optional />
      <NumberField
        label="Lasts"
        unit="min"
        min={1}
        max={1440}
        value={typed.minutes}
        onValue={(minutes) => change({ minutes })}
        optional
      />
    </div>
  );
}

async function add(typed: DateDraft, key: string): Promise<void> {
  const show = nextShow.peek();
  const dates = datesFrom(typed, show);
  if (!dates.ok) {
    problems.value = [dates.problem];
    return;
  }
  const facts = dates.value.map((data) => ({
    kind: 'event-dated' as const,
    data: { event: newId('date'), ...data },
  }));
  const saved = await recordAll(facts, { says: `Dated: ${dates.value[0]?.title ?? ''}` });
  leave(saved.status === 'refused' ? saved.problem : undefined, key);
}

async function move(id: string, before: DatedEvent, typed: DateDraft, key: string): Promise<void> {
  const dates = datesFrom(typed, undefined);
  if (!dates.ok) {
    problems.value = [dates.problem];
    return;
  }
  const { event, show, done } = before;
  const [after] = dates.value;
  const data = { ...after, event, ...(show !== undefined && { show }), ...(done === true && { done }) };
  const saved = await correct(id, data, { says: `Moved: ${after?.title ?? ''}` });
  leave(saved.status === 'refused' ? saved.problem : undefined, key);
}

async function takeOff(id: string, title: string, key: string): Promise<void> {
  const saved = await remove(id, { says: `Taken off: ${title}` });
  leave(saved.status === 'refused' ? saved.problem : undefined, key);
}

function leave(problem: Problem | undefined, key: string): void {
  problems.value = problem ? [problem] : [];
  if (problem) return;
  clearDraft(key);
  go(pathTo('course', 'dates'));
}

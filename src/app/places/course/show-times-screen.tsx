import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { ShowDayNow } from '#core/cycle/show-day-now.ts';
import { shapeOfDay } from '#core/day/shape-of-day.ts';
import type { Problem } from '#core/problems/problem.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { draftOfTimes, shapeOfShowDay, type TimesDraft, timesDraft, timesFrom } from './show-times-draft.ts';
import { zoneWords } from './zone-field.tsx';

const problems = signal<readonly Problem[]>([]);

/** When one wakes, is called, and how far the way is: all by the clocks of the show's place. */
export function ShowTimesScreen({ day }: { readonly day: ShowDayNow }): JSX.Element {
  const { show, times } = day;
  const key = `course/times/${show.show}`;
  const usual = shapeOfDay(ledger.value, show.date);
  const typed = draft(key, timesDraft, draftOfTimes(times, usual?.wake));
  const change = (part: Partial<TimesDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const clock = (
    name: 'wake' | 'checkIn' | 'stage' | 'finals',
    label: string,
    hint?: string,
  ): JSX.Element => (
    <ClockField
      label={label}
      value={typed.value[name]}
      onValue={(at) => change({ [name]: at })}
      problem={problemAt(problems.value, name)}
      hint={hint}
      optional={name === 'checkIn' || name === 'finals'}
    />
  );
  return (
    <Page
      title="Times of the show day"
      back={times ? pathTo('course', 'show-day') : pathTo('course')}
      detail={`${show.name}, ${dateWords(show.date)}`}
    >
      <Form onSubmit={() => void keep(day, typed.value, key)} problems={problems.value}>
        <Section title="From waking to the last call">
          <div class="stack">
            {show.zone !== undefined && <Note>{`All times by the clocks of ${zoneWords(show.zone)}.`}</Note>}
            {clock('wake', 'Wake')}
            <NumberField
              label="The way from bed to the stage"
              unit="min"
              min={0}
              max={1440}
              value={typed.value.travelMinutes}
              onValue={(travelMinutes) => change({ travelMinutes })}
              problem={problemAt(problems.value, 'travelMinutes')}
            />
            {clock('checkIn', 'Check-in', 'empty: it was the day before; be there two hours ahead')}
            {clock('stage', 'Called to the stage')}
            {clock('finals', 'Finals')}
          </div>
        </Section>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep the times
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep({ show }: ShowDayNow, typed: TimesDraft, key: string): Promise<void> {
  const times = timesFrom(typed, show.show);
  if (!times.ok) {
    problems.value = [times.problem];
    return;
  }
  const shape = shapeOfShowDay(times.value, shapeOfDay(ledger.peek(), show.date));
  const saved = await recordAll(
    [
      { kind: 'show-day-timed', data: times.value },
      { kind: 'day-shaped', data: shape, day: show.date },
    ],
    { says: 'Times of the show day kept' },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('course', 'show-day'));
}

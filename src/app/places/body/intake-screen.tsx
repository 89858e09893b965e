import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import { dateWords } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, recordAll } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { intakeDraft, settledDay, type IntakeDraft } from './intake-draft.ts';

const problems = signal<readonly Problem[]>([]);

const MACROS = [
  { key: 'proteinG', label: 'Protein', max: 2000 },
  { key: 'carbohydrateG', label: 'Carbohydrate', max: 4000 },
  { key: 'fatG', label: 'Fat', max: 1000 },
] as const;

/** How a whole day was: every meal logged, a total, a fast, or not logged. The difference is asked, never guessed. */
export function IntakeScreen({ day }: { readonly day: string | undefined }): JSX.Element {
  const about = day !== undefined && parseDate(day) !== undefined ? day : addDays(today.value, -1);
  const key = `body/intake/${about}`;
  const typed = draft(key, intakeDraft, { day: about });
  const change = (part: Partial<IntakeDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const meals = ledger.value.onDay(typed.value.day).filter((fact) => fact.kind === 'meal-eaten').length;
  return (
    <Page title="Food of a day" back={pathTo('body')}>
      <Form onSubmit={() => void keep(typed.value, key)} problems={problems.value}>
        <Section title={typed.value.day === '' ? 'Which day' : dateWords(typed.value.day)}>
          <div class="stack">
            <DateField
              label="Day"
              value={typed.value.day}
              max={today.value}
              onValue={(value) => change({ day: value })}
              problem={problemAt(problems.value, 'day')}
            />
            <ChoiceField
              label="How was it"
              layout="column"
              value={typed.value.was}
              problem={problemAt(problems.value, 'was')}
              options={[
                ...(meals > 0
                  ? [
                      {
                        value: 'all meals logged' as const,
                        label: 'Every meal is logged',
                        detail: `${meals} in the journal; their sum counts as the day`,
                      },
                    ]
                  : []),
                { value: 'a total', label: 'I know the total', detail: 'typed below' },
                { value: 'a fast', label: 'A fast', detail: 'nothing with energy was eaten' },
                {
                  value: 'not logged',
                  label: 'Not logged',
                  detail: 'the estimate takes a usual day with a wide spread',
                },
              ]}
              onValue={(was) => change({ was })}
            />
          </div>
        </Section>
        {typed.value.was === 'a total' && <Total typed={typed.value} change={change} />}
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this day
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface TotalProps {
  readonly typed: IntakeDraft;
  readonly change: (part: Partial<IntakeDraft>) => void;
}

function Total({ typed, change }: TotalProps): JSX.Element {
  return (
    <Section title="Total">
      <div class="stack">
        <NumberField
          label="Energy"
          unit="kcal"
          min={0}
          max={20_000}
          value={typed.energyKcal}
          onValue={(energyKcal) => change({ energyKcal })}
          problem={problemAt(problems.value, 'energyKcal')}
        />
        {MACROS.map(({ key, label, max }) => (
          <NumberField
            key={key}
            label={label}
            unit="g"
            min={0}
            max={max}
            value={typed[key]}
            onValue={(n) => change({ [key]: n })}
            optional
          />
        ))}
        <Note>Carbohydrate tells water from tissue; with energy alone a mixed diet is assumed.</Note>
      </div>
    </Section>
  );
}

async function keep(typed: IntakeDraft, key: string): Promise<void> {
  const settled = settledDay(typed, today.value);
  if (!settled.ok) {
    problems.value = [settled.problem];
    return;
  }
  const saved = await recordAll([settled.value], { says: `${dateWords(typed.day)} settled` });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('body'));
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { WeeklyRecovery } from '#core/health/recovery/weekly-recovery.ts';
import type { Problem } from '#core/problems/problem.ts';
import { addDays } from '#core/units/civil-date.ts';
import { dayAndMonth } from '#core/words/dates.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { Table } from '../../parts/table.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { athlete } from '../../views/athlete-view.ts';
import { health } from '../../views/health-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { EnergyScreenSection } from './energy-screen-section.tsx';
import '../course/check-in-screen.css';
import { feelingDraft, readFeelingDraft, SCORES, type FeelingDraft } from './feeling-draft.ts';

const problems = signal<readonly Problem[]>([]);
const VALUES = ['1', '2', '3', '4', '5'] as const;

/** How the day feels: a few seconds, all of it optional; the weeks beside each other; the screen for too little energy. */
export function RecoveryScreen(): JSX.Element {
  const key = `health/feeling/${today.value}`;
  const typed = draft(key, feelingDraft, { note: '' });
  const change = (part: Partial<FeelingDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="How it feels" back={pathTo('health')}>
      <Form onSubmit={() => void keep(typed.value, key)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Today" detail="note what you like, leave the rest">
            <Fields typed={typed.value} change={change} />
          </Section>
          <div class="stack">
            <EnergyScreenSection />
            <Weeks />
          </div>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this note
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: FeelingDraft;
  readonly change: (part: Partial<FeelingDraft>) => void;
}

function Fields({ typed, change }: FieldsProps): JSX.Element {
  const { noted } = health.value.recovery;
  return (
    <div class="stack scores">
      {Object.keys(noted).length > 0 && (
        <Note>Something is noted for today already; what you add here counts for its own line.</Note>
      )}
      <NumberField
        label="Resting heart rate"
        unit="a minute"
        hint="lying, before getting up"
        value={typed.restingHeartRateBpm}
        onValue={(restingHeartRateBpm) => change({ restingHeartRateBpm })}
        problem={problemAt(problems.value, 'restingHeartRateBpm')}
        optional
      />
      <NumberField
        label="Slept"
        unit="h"
        decimals={1}
        value={typed.sleepHours}
        onValue={(sleepHours) => change({ sleepHours })}
        problem={problemAt(problems.value, 'sleepHours')}
        optional
      />
      {SCORES.map(({ key, label, low, high }) => (
        <ChoiceField
          key={key}
          label={label}
          layout="row"
          hint={`1 ${low}, 5 ${high}`}
          value={typed[key]}
          options={VALUES.map((value) => ({ value, label: value }))}
          onValue={(score) => change({ [key]: score })}
        />
      ))}
      <TextField
        label="In words"
        lines={2}
        value={typed.note}
        onValue={(note) => change({ note })}
        optional
      />
      {athlete.value?.sex === 'female' && (
        <Button kind="quiet" href={pathTo('body', 'cycle')}>
          Note menses, or their absence
        </Button>
      )}
    </div>
  );
}

const SHOWN_WEEKS = 6;

/** Each measure down the weeks, the newest first. */
function Weeks(): JSX.Element {
  const { week, before } = health.value.recovery;
  const weeks = [week, ...before].filter(({ measures }) => measures.length > 0).slice(0, SHOWN_WEEKS);
  if (weeks.length === 0)
    return (
      <Section title="Week by week">
        <Note>Nothing is noted yet. A few mornings make a week that can be compared.</Note>
      </Section>
    );
  return (
    <Section title="Week by week" detail="means of the days that have a note">
      <Table
        caption="Recovery by week"
        captionHidden
        columns={[
          { key: 'week', label: 'Week to' },
          { key: 'heart', label: 'Heart', unit: '/min', numeric: true },
          { key: 'sleep', label: 'Sleep', unit: 'h', numeric: true },
          { key: 'mood', label: 'Mood', numeric: true },
          { key: 'libido', label: 'Libido', numeric: true },
          { key: 'hunger', label: 'Hunger', numeric: true },
          { key: 'cold', label: 'Cold', numeric: true },
        ]}
        rows={weeks.map((one) => ({
          week: dayAndMonth(addDays(one.week, 6)),
          heart: meanWords(one, 'restingHeartRateBpm', 0),
          sleep: meanWords(one, 'sleepHours', 1),
          mood: meanWords(one, 'mood', 1),
          libido: meanWords(one, 'libido', 1),
          hunger: meanWords(one, 'hunger', 1),
          cold: meanWords(one, 'cold', 1),
        }))}
      />
    </Section>
  );
}

function meanWords(
  { measures }: WeeklyRecovery,
  wanted: WeeklyRecovery['measures'][number]['measure'],
  decimals: number,
): string {
  const found = measures.find(({ measure }) => measure === wanted);
  return found ? found.mean.toFixed(decimals) : '';
}

async function keep(typed: FeelingDraft, key: string): Promise<void> {
  const reading = readFeelingDraft(typed);
  problems.value = reading.ok ? [] : [reading.problem];
  if (!reading.ok) return;
  const saved = await record('feeling-noted', reading.value, { says: 'Noted how today feels' });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('health'));
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import * as v from 'valibot';
import type { Problem } from '#core/problems/problem.ts';
import { formatClock, parseClock } from '#core/units/clock.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { DateField } from '../../parts/date-field.tsx';
import { Form } from '../../parts/form.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { problemAt } from '../../views/problem-at.ts';
import { newId } from '../../views/new-id.ts';
import { medicines } from './medicine-list.tsx';

const medicineDraft = v.strictObject({
  name: v.string(),
  at: v.array(v.number()),
  from: v.string(),
  until: v.string(),
});
type MedicineDraft = v.InferOutput<typeof medicineDraft>;

const problems = signal<readonly Problem[]>([]);

/** A medicine at its prescriber's times: never planned or moved here. */
export function MedicineForm({ medicine }: { readonly medicine: string | undefined }): JSX.Element {
  const known = medicines().find((one) => one.medicine === medicine);
  const key = `health/medicine/${medicine ?? 'new'}`;
  const typed = draft(key, medicineDraft, {
    name: known?.name ?? '',
    at: (known?.at ?? []).map((clock) => parseClock(clock) ?? 0),
    from: known?.from ?? today.value,
    until: known?.until ?? '',
  });
  const change = (part: Partial<MedicineDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const { name, at, from, until } = typed.value;
  return (
    <Page title={known ? known.name : 'A prescribed medicine'} back={pathTo('health', 'supplements')}>
      <Form onSubmit={() => void keep(typed.value, key, known?.medicine)} problems={problems.value}>
        <div class="stack">
          <Note>
            Its times are the prescriber's. Nothing here plans, moves or stops it; supplements, coffee and tea
            keep clear of it.
          </Note>
          <TextField
            label="Name"
            hint="the substance, such as levothyroxine"
            value={name}
            onValue={(text) => change({ name: text })}
            problem={problemAt(problems.value, 'name')}
          />
          {at.map((minutes, place) => (
            <ClockField
              key={place}
              label={`Time ${place + 1}`}
              value={minutes}
              onValue={(next) =>
                next !== undefined && change({ at: at.map((old, k) => (k === place ? next : old)) })
              }
            />
          ))}
          <div class="row">
            <Button onPress={() => change({ at: [...at, 480] })}>Another time</Button>
            {at.length > 0 && (
              <Button kind="quiet" onPress={() => change({ at: at.slice(0, -1) })}>
                Take the last time off
              </Button>
            )}
          </div>
          <DateField label="From" value={from} onValue={(day) => change({ from: day })} />
          <DateField label="Until" value={until} onValue={(day) => change({ until: day })} optional />
        </div>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this medicine
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

async function keep(typed: MedicineDraft, key: string, medicine: string | undefined): Promise<void> {
  const name = typed.name.trim();
  if (name === '') {
    problems.value = [
      {
        code: 'health/no-name',
        path: 'name',
        message: 'The medicine has no name.',
        remedy: 'Enter its substance as the pack prints it.',
      },
    ];
    return;
  }
  const saved = await record(
    'medicine-declared',
    {
      medicine: medicine ?? newId('medicine'),
      name,
      at: typed.at.map((minutes) => formatClock(minutes)),
      from: typed.from,
      ...(typed.until !== '' && { until: typed.until }),
    },
    { says: `${name} declared` },
  );
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(key);
  go(pathTo('health', 'supplements'));
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { ClockField } from '../../parts/clock-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Form } from '../../parts/form.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { problemAt } from '../../views/problem-at.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { record } from '../../state/open-journal.ts';
import { sheet } from '../../views/day-view.ts';
import { planNow } from '../../views/planner.ts';
import { draftOf, readShapeDraft, shapeDraft, type ShapeDraft } from './shape-draft.ts';

const DRAFT = 'day/shape';
const problems = signal<readonly Problem[]>([]);

/** When the day begins and ends, training, cardio, how many meals: for today or as usual. */
export function ShapeScreen(): JSX.Element {
  const typed = draft(DRAFT, shapeDraft, draftOf(sheet.value.shape, today.value));
  const change = (part: Partial<ShapeDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  const props = { typed: typed.value, change };
  return (
    <Page title="The day's shape" back={pathTo('day')}>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Day and meals">
            <FrameFields {...props} />
          </Section>
          <Section title="Training and cardio">
            <TrainingFields {...props} />
            <CardioFields {...props} />
          </Section>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            {typed.value.scope === 'day' ? 'Keep for today' : 'Keep as usual'}
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: ShapeDraft;
  readonly change: (part: Partial<ShapeDraft>) => void;
}

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

function FrameFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <ChoiceField
        label="This holds"
        layout="row"
        value={typed.scope}
        options={[
          { value: 'day', label: 'today' },
          { value: 'usual', label: 'as usual' },
        ]}
        onValue={(scope) => change({ scope })}
      />
      {typed.scope === 'usual' && (
        <fieldset class="weekday-fields">
          <legend>On these weekdays</legend>
          {WEEKDAYS.map((name, place) => (
            <CheckField
              key={name}
              label={name}
              checked={typed.weekdays.includes(place + 1)}
              onChecked={(on) => change({ weekdays: toggled(typed.weekdays, place + 1, on) })}
            />
          ))}
        </fieldset>
      )}
      <ClockField
        label="Wake"
        value={typed.wake}
        onValue={(wake) => change({ wake })}
        problem={problemAt(problems.value, 'wake')}
      />
      <ClockField
        label="Sleep"
        value={typed.sleep}
        onValue={(sleep) => change({ sleep })}
        problem={problemAt(problems.value, 'sleep')}
      />
      <StepperField
        label="Meals, at least"
        value={typed.mealsMin}
        step={1}
        min={1}
        max={8}
        unit=""
        onValue={(n) => change(n === undefined ? {} : { mealsMin: n })}
      />
      <StepperField
        label="Meals, at most"
        value={typed.mealsMax}
        step={1}
        min={1}
        max={8}
        unit=""
        onValue={(n) => change(n === undefined ? {} : { mealsMax: n })}
      />
    </div>
  );
}

function TrainingFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <CheckField label="Training" checked={typed.trains} onChecked={(trains) => change({ trains })} />
      {typed.trains && (
        <>
          <ClockField
            label="Training starts"
            value={typed.trainingStart}
            onValue={(trainingStart) => change({ trainingStart })}
            problem={problemAt(problems.value, 'trainingStart')}
          />
          <NumberField
            label="Training lasts"
            unit="min"
            decimals={0}
            min={5}
            max={600}
            value={typed.trainingMinutes}
            onValue={(trainingMinutes) => change({ trainingMinutes })}
          />
          <TextField
            label="What is trained"
            value={typed.trainingTitle}
            onValue={(trainingTitle) => change({ trainingTitle })}
            optional
          />
        </>
      )}
    </div>
  );
}

function CardioFields({ typed, change }: FieldsProps): JSX.Element {
  return (
    <div class="stack">
      <CheckField label="Cardio" checked={typed.walks} onChecked={(walks) => change({ walks })} />
      {typed.walks && (
        <>
          <TextField
            label="Kind of cardio"
            value={typed.cardioActivity}
            onValue={(cardioActivity) => change({ cardioActivity })}
          />
          <ClockField
            label="Cardio starts"
            value={typed.cardioStart}
            onValue={(cardioStart) => change({ cardioStart })}
            problem={problemAt(problems.value, 'cardioStart')}
          />
          <NumberField
            label="Cardio lasts"
            unit="min"
            decimals={0}
            min={5}
            max={600}
            value={typed.cardioMinutes}
            onValue={(cardioMinutes) => change({ cardioMinutes })}
          />
          <CheckField
            label="Before food"
            checked={typed.cardioBeforeFood}
            onChecked={(cardioBeforeFood) => change({ cardioBeforeFood })}
          />
        </>
      )}
    </div>
  );
}

function toggled(weekdays: readonly number[], weekday: number, on: boolean): number[] {
  return on ? [...weekdays, weekday] : weekdays.filter((other) => other !== weekday);
}

async function keep(typed: ShapeDraft): Promise<void> {
  const reading = readShapeDraft(typed, sheet.value.shape?.fact.data);
  problems.value = reading.ok ? [] : reading.problems;
  if (!reading.ok) return;
  const hadPlan = sheet.value.plan !== undefined;
  const saved = await record('day-shaped', reading.data, { says: 'The day is shaped' });
  if (saved.status === 'refused') {
    problems.value = [saved.problem];
    return;
  }
  clearDraft(DRAFT);
  go(pathTo('day'));
  if (hadPlan) await planNow('training moved');
}

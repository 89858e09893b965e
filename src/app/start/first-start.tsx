import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { startCautions } from '#core/words/cautions.ts';
import { ActionBar } from '../parts/action-bar.tsx';
import { Button } from '../parts/button.tsx';
import { CheckField } from '../parts/check-field.tsx';
import { ChoiceField } from '../parts/choice-field.tsx';
import { Columns } from '../parts/columns.tsx';
import { Form } from '../parts/form.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { Page } from '../parts/page.tsx';
import { Section } from '../parts/section.tsx';
import { TextField } from '../parts/text-field.tsx';
import { pathTo } from '../shell/route.ts';
import { today } from '../state/clock.ts';
import { problemAt } from '../views/problem-at.ts';
import { clearDraft, draft } from '../state/drafts.ts';
import { recordAll } from '../state/open-journal.ts';
import './first-start.css';
import { emptyStart, readStart, startDraft, unitsOf, type StartDraft } from './start-draft.ts';

const DRAFT = 'start';
const problems = signal<readonly Problem[]>([]);

/** Asks, once, who prepares; shows the cautions; records both. Shown while the open journal knows no athlete. */
export function FirstStart(): JSX.Element {
  const typed = draft(DRAFT, startDraft, emptyStart);
  const change = (next: StartDraft): void => {
    typed.value = next;
  };
  return (
    <Page title="Your own journal" detail="It stays on this device. Nothing is sent anywhere.">
      <Form onSubmit={() => void begin(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="Who prepares">
            <PersonFields typed={typed.value} onTyped={change} />
          </Section>
          <Section title="Read this once">
            <Cautions />
            <CheckField
              label="I have read this, and I am an adult"
              checked={typed.value.read}
              onChecked={(read) => change({ ...typed.value, read })}
              problem={problemAt(problems.value, 'read')}
            />
          </Section>
        </Columns>
        <Button href={pathTo('journal', 'lent')}>I only read a copy that was lent to me</Button>
        <ActionBar>
          <Button kind="next" records wide submits>
            Open my journal
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: StartDraft;
  readonly onTyped: (typed: StartDraft) => void;
}

function PersonFields({ typed, onTyped }: FieldsProps): JSX.Element {
  const units = unitsOf[typed.system];
  return (
    <div class="stack">
      <TextField label="Name" value={typed.name} onValue={(name) => onTyped({ ...typed, name })} optional />
      <ChoiceField
        label="Units"
        layout="row"
        value={typed.system}
        options={[
          { value: 'metric', label: 'kg, g, cm' },
          { value: 'imperial', label: 'lb, oz, in' },
        ]}
        onValue={(system) => onTyped({ ...typed, system, height: undefined, mass: undefined })}
      />
      <ChoiceField
        label="Sex, for the equations"
        layout="row"
        value={typed.sex}
        options={[
          { value: 'female', label: 'Female' },
          { value: 'male', label: 'Male' },
        ]}
        onValue={(sex) => onTyped({ ...typed, sex })}
        problem={problemAt(problems.value, 'sex')}
      />
      <NumberField
        label="Year of birth"
        value={typed.birthYear}
        decimals={0}
        onValue={(birthYear) => onTyped({ ...typed, birthYear })}
        problem={problemAt(problems.value, 'birthYear')}
      />
      <NumberField
        label="Height"
        unit={units.length}
        value={typed.height}
        decimals={1}
        onValue={(height) => onTyped({ ...typed, height })}
        problem={problemAt(problems.value, 'height')}
      />
      <NumberField
        label="Weight today"
        unit={units.mass}
        value={typed.mass}
        decimals={1}
        onValue={(mass) => onTyped({ ...typed, mass })}
        problem={problemAt(problems.value, 'mass')}
      />
    </div>
  );
}

function Cautions(): JSX.Element {
  return (
    <dl class="first-start-cautions">
      {startCautions.map((caution) => (
        <div key={caution.key}>
          <dt>{caution.title}</dt>
          <dd>{caution.words}</dd>
        </div>
      ))}
    </dl>
  );
}

async function begin(typed: StartDraft): Promise<void> {
  const reading = readStart(typed, Number(today.value.slice(0, 4)));
  problems.value = reading.ok ? [] : reading.problems;
  if (!reading.ok) return;
  const saved = await recordAll(
    [
      { kind: 'athlete-described', data: reading.athlete },
      { kind: 'body-weighed', data: { massKg: reading.massKg } },
    ],
    { says: 'Your journal is open' },
  );
  if (saved.status === 'refused') problems.value = [saved.problem];
  else clearDraft(DRAFT);
}

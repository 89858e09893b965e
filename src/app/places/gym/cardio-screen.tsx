import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { cardioEnergy } from '#core/cycle/cardio-energy.ts';
import type { Problem } from '#core/problems/problem.ts';
import { formatClock } from '#core/units/clock.ts';
import { ActionBar } from '../../parts/action-bar.tsx';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Form } from '../../parts/form.tsx';
import { List, ListRow } from '../../parts/list.tsx';
import { Note } from '../../parts/note.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { go, pathTo } from '../../shell/route.ts';
import { today } from '../../state/clock.ts';
import { clearDraft, draft } from '../../state/drafts.ts';
import { ledger, record } from '../../state/open-journal.ts';
import { athlete, massKg } from '../../views/athlete-view.ts';
import { problemAt } from '../../views/problem-at.ts';
import { cardioDraft, cardioWays, emptyCardio, readCardio } from './cardio-draft.ts';
import type { CardioDraft, CardioFigure, CardioWay, SpeedUnit } from './cardio-draft.ts';
import { cardioWhy } from './cardio-why.ts';

const DRAFT = 'gym/cardio';
const problems = signal<readonly Problem[]>([]);

function speedUnit(): SpeedUnit {
  return athlete.value?.units.mass === 'lb' ? 'mph' : 'km/h';
}

/** Cardio as done: what, how long, what the machine was set to; what it cost beyond rest is worked out. */
export function CardioScreen(): JSX.Element {
  const typed = draft(DRAFT, cardioDraft, emptyCardio);
  const change = (part: Partial<CardioDraft>): void => {
    typed.value = { ...typed.value, ...part };
  };
  return (
    <Page title="Cardio" back={pathTo('gym')} busy>
      <Form onSubmit={() => void keep(typed.value)} problems={problems.value}>
        <Columns wide="even">
          <Section title="What you did">
            <WayFields typed={typed.value} change={change} />
          </Section>
          <div class="stack">
            <Section title="What it cost" detail="beyond the same minutes at rest">
              <Cost typed={typed.value} />
            </Section>
            <DoneToday />
          </div>
        </Columns>
        <ActionBar>
          <Button kind="next" records wide submits>
            Keep this cardio
          </Button>
        </ActionBar>
      </Form>
    </Page>
  );
}

interface FieldsProps {
  readonly typed: CardioDraft;
  readonly change: (part: Partial<CardioDraft>) => void;
}

function WayFields({ typed, change }: FieldsProps): JSX.Element {
  const ways = Object.entries(cardioWays) as [CardioWay, (typeof cardioWays)[CardioWay]][];
  return (
    <div class="stack">
      <ChoiceField
        label="Kind"
        layout="row"
        value={typed.way}
        options={ways.map(([value, { words }]) => ({ value, label: words === '' ? 'Another' : words }))}
        onValue={(way) => change({ way })}
      />
      {typed.way === 'other' && (
        <TextField
          label="Which"
          value={typed.other}
          onValue={(other) => change({ other })}
          problem={problemAt(problems.value, 'other')}
        />
      )}
      <StepperField
        label="Minutes"
        unit="min"
        step={5}
        min={1}
        max={1440}
        value={typed.minutes}
        onValue={(minutes) => change({ minutes })}
        problem={problemAt(problems.value, 'minutes')}
      />
      {cardioWays[typed.way].asks.map((figure) => (
        <FigureField key={figure} figure={figure} typed={typed} change={change} />
      ))}
      <ChoiceField
        label="Food"
        layout="row"
        value={typed.beforeFood === undefined ? undefined : typed.beforeFood ? 'before' : 'after'}
        options={[
          { value: 'before', label: 'Before food' },
          { value: 'after', label: 'After food' },
        ]}
        onValue={(food) => change({ beforeFood: food === 'before' })}
        problem={problemAt(problems.value, 'beforeFood')}
      />
      <NumberField
        label="Heart rate, average"
        unit="/min"
        min={30}
        max={250}
        value={typed.heartRate}
        onValue={(heartRate) => change({ heartRate })}
        optional
      />
    </div>
  );
}

interface Asking {
  readonly label: string;
  readonly unit?: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  readonly hint?: string;
}

const ASKING: Readonly<Record<Exclude<CardioFigure, 'speed'>, Asking>> = {
  gradePercent: { label: 'Grade', unit: '%', decimals: 1, min: -30, max: 60 },
  stepsPerMinute: { label: 'Steps a minute', unit: '/min', decimals: 0, min: 0, max: 250 },
  stepHeightCm: {
    label: 'Height of a step',
    unit: 'cm',
    decimals: 1,
    min: 2,
    max: 60,
    hint: 'with a ruler, once; without it a table answers, less surely',
  },
  watts: { label: 'Power shown', unit: 'W', decimals: 0, min: 0, max: 800 },
  level: {
    label: 'Level shown',
    decimals: 0,
    min: 0,
    max: 40,
    hint: 'for comparing sessions; not for energy',
  },
};

function FigureField({
  figure,
  typed,
  change,
}: FieldsProps & { readonly figure: CardioFigure }): JSX.Element {
  const asking: Asking =
    figure === 'speed'
      ? { label: 'Pace', unit: speedUnit(), decimals: 1, min: 0.5, max: 40 }
      : ASKING[figure];
  return (
    <NumberField
      {...asking}
      value={typed[figure]}
      onValue={(value) => change({ [figure]: value })}
      problem={problemAt(problems.value, figure)}
      optional
    />
  );
}

/** Net energy as soon as there is enough to work it out; what is not known is not guessed. */
function Cost({ typed }: { readonly typed: CardioDraft }): JSX.Element {
  const read = readCardio({ ...typed, beforeFood: typed.beforeFood ?? true }, speedUnit());
  const mass = massKg.value;
  if (!read.ok) return <Note>{`${read.problem.message} ${read.problem.remedy}`}</Note>;
  if (mass === undefined) return <Note>No weigh-in yet: energy is worked out from the first one on.</Note>;
  const energy = cardioEnergy(read.value, mass);
  if (energy === undefined) {
    return (
      <Note>
        No table row speaks of this activity, so its energy is not guessed and not counted. It is kept and
        compared by its minutes.
      </Note>
    );
  }
  return (
    <>
      <Figure
        label="Net energy"
        value={energy.netKcal}
        plusMinus={energy.within}
        unit="kcal"
        size="large"
        why={() => cardioWhy(read.value, energy, mass)}
      />
      <Note>
        It enters the energy of the day in Body and Course. What a machine shows as kilocalories is not asked
        for: it counts rest in and does not know you.
      </Note>
    </>
  );
}

function DoneToday(): JSX.Element | null {
  const done = ledger.value.of('cardio-done').filter(({ day }) => day === today.value);
  if (done.length === 0) return null;
  return (
    <Section title="Done today">
      <List>
        {done.map(({ entry, data, minutes }) => (
          <ListRow
            key={entry.id}
            state="done"
            title={data.activity}
            detail={`${formatClock(minutes)}, ${data.minutes} min, ${data.beforeFood ? 'before' : 'after'} food`}
            href={pathTo('journal', 'entry', entry.id)}
          />
        ))}
      </List>
    </Section>
  );
}

async function keep(typed: CardioDraft): Promise<void> {
  const read = readCardio(typed, speedUnit());
  problems.value = read.ok ? [] : [read.problem];
  if (!read.ok) return;
  const saved = await record('cardio-done', read.value, {
    says: `${read.value.activity}, ${read.value.minutes} min, is kept`,
  });
  problems.value = saved.status === 'refused' ? [saved.problem] : [];
  if (saved.status === 'refused') return;
  clearDraft(DRAFT);
  go(pathTo('gym'));
}

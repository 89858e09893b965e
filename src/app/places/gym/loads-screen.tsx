import type { JSX } from 'preact';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { Columns } from '../../parts/columns.tsx';
import { EmptyState } from '../../parts/empty-state.tsx';
import { Note } from '../../parts/note.tsx';
import { Page } from '../../parts/page.tsx';
import { Section } from '../../parts/section.tsx';
import { StepperField } from '../../parts/stepper-field.tsx';
import { Caution } from '../../parts/caution.tsx';
import { pathTo } from '../../shell/route.ts';
import { draft } from '../../state/drafts.ts';
import { implementsAtHand, machines, weights } from '../../views/gym-view.ts';
import { gym } from '../../views/training-view.ts';
import { loadUnit } from '../../views/load-units.ts';
import { emptyRamp, loadables, rampDraft, rampOn, type Loadable, type RampDraft } from './ramp-draft.ts';
import { offWords } from './plate-words.ts';
import { RampSets } from './ramp-sets.tsx';

/** Warm-up sets to a top set, with the plates there are, drawn as they are loaded. */
export function LoadsScreen(): JSX.Element {
  const offered = loadables(implementsAtHand.value, machines.value);
  const plates = weights.value?.plates ?? [];
  return (
    <Page title="Warm-up and plates" back={pathTo('gym')} busy>
      {offered.length === 0 || plates.length === 0 ? (
        <EmptyState
          title={offered.length === 0 ? 'No bar is described yet' : 'No plates are counted yet'}
          words="Put down once what the place has: bars with their weight, plates with their number."
          action={
            <Button kind="next" href={pathTo('gym', 'weights')}>
              Bars, plates, dumbbells
            </Button>
          }
        />
      ) : (
        <Ramp offered={offered} plates={plates} />
      )}
    </Page>
  );
}

interface RampProps {
  readonly offered: readonly Loadable[];
  readonly plates: Parameters<typeof rampOn>[1];
}

function Ramp({ offered, plates }: RampProps): JSX.Element {
  const last = gym.value.log.hardSets.findLast(({ data }) => data.load.of === 'kg')?.data;
  const typed = draft('gym/ramp', rampDraft, {
    ...emptyRamp,
    ...(last?.load.of === 'kg' && { topKg: last.load.kg, reps: Math.max(1, last.reps) }),
  });
  const on = offered.find(({ id }) => id === typed.value.on) ?? offered[0];
  const read = rampOn(on, plates, typed.value);
  const off = read.ok && on ? offWords(on, typed.value.topKg ?? 0, read.value) : undefined;
  return (
    <Columns wide="last">
      <Section title="Up to">
        <RampFields
          offered={offered}
          on={on}
          typed={typed.value}
          change={(part) => {
            typed.value = { ...typed.value, ...part };
          }}
        />
      </Section>
      <Section title="Sets" detail="solid goes on now, outlined stays">
        {read.ok && on ? (
          <>
            <RampSets on={on} ramp={read.value} />
            {off !== undefined && <Caution title="Not exactly" words={off} />}
          </>
        ) : (
          <Note>{read.ok ? '' : `${read.problem.message} ${read.problem.remedy}`}</Note>
        )}
        <div class="row">
          <Button kind="quiet" href={pathTo('gym', 'weights')}>
            Bars, plates, dumbbells
          </Button>
        </div>
      </Section>
    </Columns>
  );
}

interface RampFieldsProps {
  readonly offered: readonly Loadable[];
  readonly on: Loadable | undefined;
  readonly typed: RampDraft;
  readonly change: (part: Partial<RampDraft>) => void;
}

function RampFields({ offered, on, typed, change }: RampFieldsProps): JSX.Element {
  const { unit, shown, read, step } = loadUnit.value;
  return (
    <div class="stack">
      <ChoiceField
        label="Loaded on"
        layout="row"
        value={on?.id}
        options={offered.map(({ id, name }) => ({ value: id, label: name }))}
        onValue={(id) => change({ on: id })}
      />
      <StepperField
        label="Top set"
        unit={unit}
        step={step}
        decimals={2}
        min={0.5}
        value={typed.topKg === undefined ? undefined : shown(typed.topKg)}
        onValue={(typedLoad) => change({ topKg: typedLoad === undefined ? undefined : read(typedLoad) })}
      />
      <StepperField
        label="Repetitions"
        step={1}
        min={1}
        max={100}
        value={typed.reps}
        onValue={(reps) => change({ reps })}
      />
      <StepperField
        label="Warm-up sets"
        step={1}
        min={0}
        max={10}
        value={typed.warmUps}
        onValue={(warmUps) => change({ warmUps })}
      />
    </div>
  );
}

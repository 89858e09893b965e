import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { carriers } from '#core/journal/kinds/gym-equipment.ts';
import type { Problem } from '#core/problems/problem.ts';
import { muscles, wordsOfMuscle } from '#core/tables/muscles.ts';
import { Button } from '../../parts/button.tsx';
import { CheckField } from '../../parts/check-field.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { SearchField } from '../../parts/search-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { implementsAtHand, machines } from '../../views/gym-view.ts';
import { loadUnit } from '../../views/load-units.ts';
import { problemAt } from '../../views/problem-at.ts';
import type { ExerciseDraft } from './exercise-draft.ts';

export interface ExerciseFieldsProps {
  readonly typed: ExerciseDraft;
  readonly change: (part: Partial<ExerciseDraft>) => void;
  readonly problems: readonly Problem[];
}

/** A joint to protect: what is not asked for, and how it is moved. */
export function CautionFields({ typed, change, problems }: ExerciseFieldsProps): JSX.Element {
  const { unit, shown, read } = loadUnit.value;
  return (
    <div class="stack">
      <CheckField
        label="A joint needs care here"
        detail="loads above the ceiling and sets below the fewest repetitions are not asked for"
        checked={typed.protect}
        onChecked={(protect) => change({ protect })}
      />
      {typed.protect && (
        <>
          <TextField
            label="Joint"
            hint="knee, shoulder, lower back"
            value={typed.joint}
            onValue={(joint) => change({ joint })}
            problem={problemAt(problems, 'joint')}
          />
          <ChoiceField
            label="Side"
            layout="row"
            value={typed.side}
            options={(['left', 'right', 'both'] as const).map((value) => ({ value, label: value }))}
            onValue={(side) => change({ side })}
          />
          <NumberField
            label="Load, at most"
            unit={unit}
            decimals={2}
            min={0}
            max={shown(800)}
            value={typed.ceilingKg === undefined ? undefined : shown(typed.ceilingKg)}
            onValue={(n) => change({ ceilingKg: n === undefined ? undefined : read(n) })}
            optional
          />
          <NumberField
            label="Repetitions, at least"
            min={1}
            max={50}
            value={typed.repsFloor}
            onValue={(repsFloor) => change({ repsFloor })}
            optional
          />
          <TextField
            label="Tempo"
            hint="seconds of lowering, pause, lifting, pause: 3-1-1-0"
            value={typed.tempo}
            onValue={(tempo) => change({ tempo })}
            problem={problemAt(problems, 'tempo')}
            optional
          />
          <TextField
            label="In your words"
            value={typed.words}
            onValue={(words) => change({ words })}
            lines={2}
            optional
          />
        </>
      )}
    </div>
  );
}

/** Name, muscles, what carries the load. */
export function WhatFields(props: ExerciseFieldsProps): JSX.Element {
  const { typed, change, problems } = props;
  return (
    <div class="stack">
      <TextField
        label="Name"
        value={typed.name}
        onValue={(name) => change({ name })}
        problem={problemAt(problems, 'name')}
      />
      <MuscleField
        label="Moved by"
        chosen={typed.prime}
        onChosen={(prime) => change({ prime })}
        problem={problemAt(problems, 'prime')}
      />
      <MuscleField
        label="Assisted by"
        chosen={typed.assisting}
        onChosen={(assisting) => change({ assisting })}
      />
      <LoadedBy {...props} />
      <CheckField
        label="One of the main lifts"
        detail="counts in strength kept"
        checked={typed.main}
        onChecked={(main) => change({ main })}
      />
      <CheckField
        label="One side at a time"
        checked={typed.oneSide}
        onChecked={(oneSide) => change({ oneSide })}
      />
    </div>
  );
}

function LoadedBy({ typed, change }: ExerciseFieldsProps): JSX.Element {
  const none = { value: '', label: 'none' };
  return (
    <>
      <ChoiceField
        label="Loaded by"
        layout="row"
        value={typed.carrier}
        options={carriers.map((value) => ({ value, label: value }))}
        onValue={(carrier) => change({ carrier })}
      />
      {machines.value.length > 0 && (
        <ChoiceField
          label="On the machine"
          value={typed.machine}
          options={[none, ...machines.value.map(({ machine, name }) => ({ value: machine, label: name }))]}
          onValue={(machine) => change({ machine })}
        />
      )}
      {implementsAtHand.value.length > 0 && (
        <ChoiceField
          label="With the bar"
          layout="row"
          value={typed.implement}
          options={[
            none,
            ...implementsAtHand.value.map(({ implement, name }) => ({ value: implement, label: name })),
          ]}
          onValue={(implement) => change({ implement })}
        />
      )}
      {typed.carrier === 'body weight' && (
        <NumberField
          label="Part of the body that is lifted"
          hint="100 hanging from a bar; about 65 in a push-up (from memory)"
          unit="%"
          min={0}
          max={100}
          value={typed.bodyPercent}
          onValue={(bodyPercent) => change({ bodyPercent })}
          optional
        />
      )}
    </>
  );
}

interface MuscleFieldProps {
  readonly label: string;
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: string[]) => void;
  readonly problem?: string | undefined;
}

function MuscleField({ label, chosen, onChosen, problem }: MuscleFieldProps): JSX.Element {
  const query = useSignal('');
  const typed = query.value.trim().toLowerCase();
  const found =
    typed === ''
      ? []
      : muscles.filter(
          ({ muscle, words }) =>
            !chosen.includes(muscle) && `${muscle} ${words}`.toLowerCase().includes(typed),
        );
  return (
    <div class="stack-close">
      <SearchField
        label={label}
        hint="a muscle, or the part of the body"
        query={query.value}
        onQuery={(text) => (query.value = text)}
        results={found.map(({ muscle, words }) => ({ id: muscle, title: words, detail: muscle }))}
        onChoose={(muscle) => {
          onChosen([...chosen, muscle]);
          query.value = '';
        }}
        nothing="No muscle by that name."
        problem={problem}
      />
      <div class="row">
        {chosen.map((muscle) => (
          <Button
            key={muscle}
            label={`${wordsOfMuscle(muscle)}: take out of ${label.toLowerCase()}`}
            onPress={() => onChosen(chosen.filter((other) => other !== muscle))}
          >
            {`${wordsOfMuscle(muscle)} ×`}
          </Button>
        ))}
      </div>
    </div>
  );
}

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { problemAt } from '../../views/problem-at.ts';
import { readGuess, type EatDraft } from './eat-draft.ts';

const problems = signal<readonly Problem[]>([]);

export interface GuessFieldsProps {
  readonly typed: EatDraft;
  readonly change: (part: Partial<EatDraft>) => void;
}

/** A restaurant meal: macros by eye, and how far off they may be; the day's totals then show it. */
export function GuessFields({ typed, change }: GuessFieldsProps): JSX.Element {
  return (
    <div class="stack">
      <TextField
        label="What it was"
        value={typed.guessName}
        onValue={(guessName) => change({ guessName })}
        optional
      />
      <NumberField
        label="Protein, by eye"
        unit="g"
        decimals={0}
        min={0}
        max={1000}
        value={typed.guessProteinG}
        onValue={(guessProteinG) => change({ guessProteinG })}
        optional
        problem={problemAt(problems.value, 'guessProteinG') ?? problemAt(problems.value, 'guessKcal')}
      />
      <NumberField
        label="Carbohydrate, by eye"
        unit="g"
        decimals={0}
        min={0}
        max={2000}
        value={typed.guessCarbohydrateG}
        onValue={(guessCarbohydrateG) => change({ guessCarbohydrateG })}
        optional
      />
      <NumberField
        label="Fat, by eye"
        unit="g"
        decimals={0}
        min={0}
        max={1000}
        value={typed.guessFatG}
        onValue={(guessFatG) => change({ guessFatG })}
        optional
      />
      <NumberField
        label="Energy, if known"
        unit="kcal"
        decimals={0}
        min={0}
        max={20000}
        value={typed.guessKcal}
        onValue={(guessKcal) => change({ guessKcal })}
        optional
      />
      <ChoiceField
        label="How far off it may be, either way"
        layout="row"
        value={typed.guessSpread}
        options={[
          { value: '15', label: '15 %' },
          { value: '30', label: '30 %' },
          { value: '50', label: '50 %' },
        ]}
        onValue={(guessSpread) => change({ guessSpread })}
      />
      <Button onPress={() => add(typed, change)}>Put the guess on the plate</Button>
    </div>
  );
}

function add(typed: EatDraft, change: GuessFieldsProps['change']): void {
  const reading = readGuess(typed);
  problems.value = reading.ok ? [] : reading.problems;
  const item = reading.ok ? reading.items[0] : undefined;
  if (!item) return;
  change({
    items: [...typed.items, { item }],
    guessName: '',
    guessKcal: undefined,
    guessProteinG: undefined,
    guessCarbohydrateG: undefined,
    guessFatG: undefined,
  });
}

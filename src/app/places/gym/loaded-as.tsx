import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { WalkedStep } from '#core/gym/session/session-walk.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { book } from '../../views/training-view.ts';
import { emptyLoad } from './set-draft.ts';

const WAYS = {
  kg: { label: 'plates or bar, all of it', empty: { of: 'kg', kg: 0 } },
  each: { label: 'a pair of dumbbells', empty: { of: 'each', kgEach: 0 } },
  stack: { label: 'pin of a stack', empty: { of: 'stack', pinKg: 0 } },
  body: { label: 'body weight', empty: { of: 'body' } },
  band: { label: 'band', empty: { of: 'band', band: 'band' } },
} as const satisfies Record<string, { label: string; empty: SetLoad }>;

interface LoadedAsProps {
  readonly step: WalkedStep;
  readonly load: SetLoad;
  readonly onLoad: (load: SetLoad) => void;
}

/** The same exercise loaded another way today; out of sight until it is wanted. */
export function LoadedAs({ step, load, onLoad }: LoadedAsProps): JSX.Element {
  const open = useSignal(false);
  if (!open.value) {
    return (
      <Button kind="quiet" onPress={() => (open.value = true)}>
        Loaded another way
      </Button>
    );
  }
  const own = emptyLoad(step.exercise, step.machine, book.value);
  const ways = Object.entries(WAYS).map(([value, { label }]) => ({ value: value as SetLoad['of'], label }));
  return (
    <ChoiceField
      label="Loaded as"
      value={load.of}
      options={own.of === 'pegs' ? [{ value: own.of, label: 'pegs of the machine' }, ...ways] : ways}
      onValue={(of) => {
        onLoad(of === own.of || of === 'pegs' ? own : WAYS[of].empty);
        open.value = false;
      }}
    />
  );
}

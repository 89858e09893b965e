import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { WalkedStep } from '#core/gym/session/session-walk.ts';
import { Button } from '../../parts/button.tsx';
import { ChoiceField } from '../../parts/choice-field.tsx';
import { pathTo } from '../../shell/route.ts';
import { book } from '../../views/gym-view.ts';
import { firstLoad, type LoadDraft } from './load-draft.ts';
import type { SetDraft } from './set-draft.ts';

const WAYS: readonly { readonly value: LoadDraft['of']; readonly label: string }[] = [
  { value: 'kg', label: 'plates or bar, all of it' },
  { value: 'each', label: 'a pair of dumbbells' },
  { value: 'stack', label: 'pin of a stack' },
  { value: 'body', label: 'body weight' },
  { value: 'band', label: 'band' },
];

interface LoadedAsProps {
  readonly step: WalkedStep;
  readonly typed: SetDraft;
  readonly change: (part: Partial<SetDraft>) => void;
}

/** The same exercise loaded another way today; out of sight until it is wanted. */
export function LoadedAs({ step, typed, change }: LoadedAsProps): JSX.Element {
  const open = useSignal(false);
  if (!open.value) {
    return (
      <div class="row">
        <Button href={pathTo('gym', 'change', step.slot)}>Change or note pain</Button>
        <Button kind="quiet" onPress={() => (open.value = true)}>
          Loaded another way
        </Button>
      </div>
    );
  }
  const own = firstLoad(step.exercise, step.machine ?? step.exercise.machine, book.value);
  const ways = own.of === 'pegs' ? [{ value: own.of, label: 'pegs of the machine' }, ...WAYS] : WAYS;
  return (
    <ChoiceField
      label="Loaded as"
      value={typed.load.of}
      options={ways}
      onValue={(of) => {
        change({ load: own.of === of ? own : { of, pegs: [], band: '' } });
        open.value = false;
      }}
    />
  );
}

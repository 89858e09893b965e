import { sentenceOfOutside, type Studied } from '#core/science/studied-range.ts';
import type { DerivedValue, WithheldValue } from './reading.ts';

export interface DerivedPanel {
  readonly derived: readonly DerivedValue[];
  readonly withheld: readonly WithheldValue[];
}

type Derivation = Omit<DerivedValue, 'value' | 'notes'>;

/** Collects what was derived; a value outside an equation's studied range is withheld with the reason. */
export function gather(): {
  derived: DerivedValue[];
  withheld: WithheldValue[];
  give: (is: Derivation, value: number, notes?: readonly string[]) => void;
  studied: (is: Derivation, value: Studied<number>, notes?: readonly string[]) => void;
} {
  const derived: DerivedValue[] = [];
  const withheld: WithheldValue[] = [];
  const give = (is: Derivation, value: number, notes: readonly string[] = []) => {
    derived.push({ ...is, value, notes });
  };
  return {
    derived,
    withheld,
    give,
    studied: (is, value, notes) => {
      if (value.studied) give(is, value.value, notes);
      else withheld.push({ key: is.key, name: is.name, reason: sentenceOfOutside(value.outside) });
    },
  };
}

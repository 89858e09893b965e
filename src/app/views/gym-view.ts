import { computed } from '@preact/signals';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { ledger } from '../state/open-journal.ts';

export type Machine = DataOf<'machine-described'>;
export type Implement = DataOf<'implement-described'>;

/** The newest description of each thing, in the order they were first described; what was put away is left out. */
function newest<Data extends { readonly retired?: boolean | undefined }>(
  facts: readonly { readonly data: Data }[],
  idOf: (data: Data) => string,
): readonly Data[] {
  const found = new Map<string, Data>();
  for (const { data } of facts) found.set(idOf(data), data);
  return [...found.values()].filter(({ retired }) => retired !== true);
}

export const machines = computed<readonly Machine[]>(() =>
  newest(ledger.value.of('machine-described'), ({ machine }) => machine),
);

export const implementsAtHand = computed<readonly Implement[]>(() =>
  newest(ledger.value.of('implement-described'), ({ implement }) => implement),
);

/** The loose weights as counted last. */
export const weights = computed(() => ledger.value.latest('weights-counted')?.data);

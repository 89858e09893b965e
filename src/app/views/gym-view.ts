import { computed } from '@preact/signals';
import { gymLog } from '#core/cycle/gym-now.ts';
import { gymToday } from '#core/cycle/gym-today.ts';
import { pushNow, strengthNow } from '#core/cycle/strength-now.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { now, today } from '../state/clock.ts';
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

/** Every set of the log, read once for each state of the journal. */
export const gym = computed(() => gymLog(ledger.value, today.value));

export const book = computed(() => gym.value.log.book);

/** Strength kept since the preparation began. */
export const strength = computed(() => strengthNow(ledger.value, today.value, gym.value.log));

/** Whether sets ask for more or for as much. */
export const push = computed(() => pushNow(ledger.value, gym.value.log, strength.value, today.value));

/** The gym before and beside a session. */
export const gymDay = computed(() => gymToday(ledger.value, gym.value.log, today.value, now.value));

import { computed } from '@preact/signals';
import { gymLog } from '#core/cycle/gym-now.ts';
import { gymToday } from '#core/cycle/gym-today.ts';
import { pushNow, strengthNow } from '#core/cycle/strength-now.ts';
import { now, today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';

/** Every set of the journal, sorted into what compares. */
export const gym = computed(() => gymLog(ledger.value, today.value));

/** Exercises, machines, bars and weights by their names. */
export const book = computed(() => gym.value.log.book);

/** Strength kept since the preparation began; undefined where none began or no lift tells. */
export const strength = computed(() => strengthNow(ledger.value, today.value, gym.value.log));

/** Whether sets ask for more than last time or to match it. */
export const push = computed(() => pushNow(ledger.value, gym.value.log, strength.value, today.value));

/** What stands before a session is begun. */
export const training = computed(() => gymToday(ledger.value, gym.value.log, today.value, now.value));

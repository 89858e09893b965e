import { computed } from '@preact/signals';
import { strengthNow } from '#core/cycle/strength-now.ts';
import { checkInBefore, isCheckInDue, weekFelt, weekUntil } from '#core/cycle/week-now.ts';
import { today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';

/** Whether a week has gone by since the last check-in. */
export const checkInDue = computed(() => isCheckInDue(ledger.value, today.value));

/** The check-in before the present week's. */
export const lastCheckIn = computed(() => checkInBefore(ledger.value, weekUntil(today.value)));

/** Strength kept since the preparation began, as of the week looked at. */
export const weekStrength = computed(() => strengthNow(ledger.value, weekUntil(today.value)));

/** How the present check-in's week felt, by the daily notes. */
export const feltThisWeek = computed(() => weekFelt(ledger.value, today.value));

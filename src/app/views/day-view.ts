import { computed } from '@preact/signals';
import { daySheet } from '#core/cycle/day-sheet.ts';
import { runSheet } from '#core/cycle/run-sheet.ts';
import { nowClock, today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';
import { kitchen } from './kitchen-view.ts';

/** The open prep day as it stands. */
export const sheet = computed(() => daySheet(ledger.value, today.value, nowClock.value, kitchen.value.read));

/** The same as lines in time order. */
export const rows = computed(() => runSheet(sheet.value, ledger.value, nowClock.value));

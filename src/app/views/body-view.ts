import { computed } from '@preact/signals';
import { bodyNow } from '#core/cycle/body-now.ts';
import { today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';
import { kitchen } from './kitchen-view.ts';

/** The body as the journal has it today; drawn only where a screen shows it. */
export const body = computed(() => bodyNow(ledger.value, today.value, kitchen.peek().read));

import { computed } from '@preact/signals';
import { bodyLog, weighInsOf } from '#core/cycle/body-log.ts';
import { openDays } from '#core/cycle/open-days.ts';
import { today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';
import { askCourse } from '../worker/course-client.ts';
import { keptAsked } from './asked.ts';
import { kitchen } from './kitchen-view.ts';

/** The weigh-in of each day. */
export const weighIns = computed(() => weighInsOf(ledger.value, today.value));

/** Days whose food is still to be asked about. */
export const daysToSettle = computed(() => openDays(ledger.value, today.value));

/** The log as the estimate is asked. */
export const bodyQuestion = computed(() => bodyLog(ledger.value, today.value, kitchen.peek().read));

/** What the body did, as the worker last said. */
export const body = keptAsked(bodyQuestion, (request) => askCourse('body', request));

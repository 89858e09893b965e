import { computed } from '@preact/signals';
import { urgentOf } from '#core/cycle/blood-now.ts';
import { dosesOfDay } from '#core/cycle/doses-of-day.ts';
import { healthNow, type KnownBody } from '#core/cycle/health-now.ts';
import { sumsNow } from '#core/cycle/supplements-now.ts';
import { nowClock, today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';
import { body, bodyQuestion } from './body-view.ts';
import { sheet } from './day-view.ts';

/** The day's doses beside the meals they belong to. */
export const doses = computed(() => dosesOfDay(ledger.value, sheet.value, nowClock.value));

/** The body as the worker last said; undefined until it has. */
export const knownBody = computed<KnownBody | undefined>(() => {
  const [log, asked] = [bodyQuestion.value, body.value];
  if (!log.ok || asked.status === 'working' || !asked.outcome.ok) return undefined;
  return { log: log.value, answer: asked.outcome.value.answer };
});

/** What Health shows. */
export const health = computed(() => healthNow(ledger.value, today.value, knownBody.value));

/** What a usual day's products add up to. */
export const sums = computed(() => sumsNow(ledger.value, today.value));

/** Values of the last week's blood that need care now. */
export const urgentBlood = computed(() => urgentOf(ledger.value, today.value));

import { computed } from '@preact/signals';
import { ledger } from '../../state/open-journal.ts';
import { kitchen } from '../../views/kitchen-view.ts';

/** Names of the things that entries speak of by id. */
const named = computed(() => {
  const names = new Map<string, string>();
  const open = ledger.value;
  for (const { data } of open.of('container-weighed')) names.set(data.container, data.name);
  for (const { data } of open.of('batch-cooked')) names.set(data.batch, data.name);
  for (const { data } of open.of('recipe-defined')) names.set(data.recipe, data.name);
  for (const { data } of open.of('show-set')) names.set(data.show, data.name);
  for (const { data } of open.of('supplement-defined')) names.set(data.supplement, data.name);
  for (const { data } of open.of('medicine-declared')) names.set(data.medicine, data.name);
  for (const { data } of open.of('machine-described')) names.set(data.machine, data.name);
  for (const { data } of open.of('implement-described')) names.set(data.implement, data.name);
  for (const { data } of open.of('exercise-described')) names.set(data.exercise, data.name);
  for (const { data } of open.of('session-planned')) names.set(data.template, data.name);
  return names;
});

/** What an id stands for in this journal, or undefined. */
export function nameOf(id: string): string | undefined {
  return named.value.get(id) ?? kitchen.value.nameOfFood(id);
}

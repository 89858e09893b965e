import { computed } from '@preact/signals';
import { today } from '../state/clock.ts';
import { ledger } from '../state/open-journal.ts';

/** Who prepares; undefined until the first start is done. */
export const athlete = computed(() => ledger.value.latest('athlete-described')?.data);

/** The newest weigh-in. */
export const massKg = computed(() => ledger.value.latest('body-weighed')?.data.massKg);

/** The athlete as an equation asks for one: with the age of this year. */
export const measuredAthlete = computed(() => {
  const who = athlete.value;
  return (
    who && { sex: who.sex, heightCm: who.heightCm, age: Number(today.value.slice(0, 4)) - who.birthYear }
  );
});

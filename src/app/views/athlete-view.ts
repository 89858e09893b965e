import { computed } from '@preact/signals';
import { ledger } from '../state/open-journal.ts';

/** Who prepares; undefined until the first start is done. */
export const athlete = computed(() => ledger.value.latest('athlete-described')?.data);

/** The newest weigh-in. */
export const massKg = computed(() => ledger.value.latest('body-weighed')?.data.massKg);

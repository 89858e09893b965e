import { computed } from '@preact/signals';
import { fromGrams } from '#core/units/mass.ts';
import type { Grams } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { athlete } from './athlete-view.ts';

/** Kitchen weights in the athlete's own unit: grams, ounces or pounds. */
export const kitchenUnit = computed(() => {
  const unit = athlete.value?.units.kitchen ?? 'g';
  const decimals = (grams: Grams) => (unit === 'g' ? (grams < 10 ? 1 : 0) : unit === 'oz' ? 1 : 2);
  const shown = (grams: Grams) => roundTo(fromGrams(grams, unit), decimals(grams));
  return {
    unit,
    shown,
    decimals,
    /** "450 g", "15.9 oz", "0.99 lb". */
    words: (grams: Grams) => `${shown(grams)} ${unit}`,
  };
});

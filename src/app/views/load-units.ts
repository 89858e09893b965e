import { computed } from '@preact/signals';
import { kilogramsToPounds, poundsToKilograms } from '#core/units/mass.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { athlete } from './athlete-view.ts';

/** Loads in the athlete's own unit. Pounds are kept as exactly as plates are summed, so that 135 lb stay 135 lb. */
export const loadUnit = computed(() => {
  const unit = athlete.value?.units.mass ?? 'kg';
  return unit === 'kg'
    ? { unit, shown: (kg: Kilograms) => roundTo(kg, 2), read: (typed: number): Kilograms => typed, step: 2.5 }
    : {
        unit,
        shown: (kg: Kilograms) => roundTo(kilogramsToPounds(kg), 2),
        read: (typed: number): Kilograms => roundTo(poundsToKilograms(typed), 10),
        step: 5,
      };
});

/** As many decimals as the load needs, at most two. */
export function loadDecimals(value: number): number {
  const hundredths = Math.round(value * 100);
  if (hundredths % 100 === 0) return 0;
  return hundredths % 10 === 0 ? 1 : 2;
}

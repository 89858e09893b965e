import { computed } from '@preact/signals';
import { kilogramsToPounds, poundsToKilograms } from '#core/units/mass.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { athlete } from './athlete-view.ts';

/** Body mass in the athlete's own unit. */
export const massUnit = computed(() => {
  const unit = athlete.value?.units.mass ?? 'kg';
  return unit === 'kg'
    ? { unit, shown: (massKg: Kilograms) => massKg, read: (typed: number): Kilograms => typed, step: 0.1 }
    : {
        unit,
        shown: kilogramsToPounds,
        read: (typed: number): Kilograms => roundTo(poundsToKilograms(typed), 3),
        step: 0.2,
      };
});

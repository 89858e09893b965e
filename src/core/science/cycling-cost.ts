import type { Kilograms } from '#core/units/quantities.ts';
import { type Studied, withinStudied } from './studied-range.ts';

/** kg m/min in a watt: the equations' own round figure (6.12 exactly). */
export const WORK_RATE_PER_WATT = 6;

/** Gross oxygen uptake of leg cycling, mL per kg and minute: 7 + 1.8 W / M, W in kg m/min, M kg. Source key: acsm-2018. 300 to 1200 kg m/min. */
export function legCyclingCost(workKgMPerMinute: number, massKg: Kilograms): Studied<number> {
  return withinStudied(
    [{ quantity: 'workKgMPerMinute', found: workKgMPerMinute, low: 300, high: 1_200 }],
    () => 7 + (1.8 * workKgMPerMinute) / massKg,
  );
}

/** Gross oxygen uptake of arm cranking, mL per kg and minute: 3.5 + 3 W / M. Source key: acsm-2018 (from memory). 150 to 750 kg m/min. */
export function armCyclingCost(workKgMPerMinute: number, massKg: Kilograms): Studied<number> {
  return withinStudied(
    [{ quantity: 'workKgMPerMinute', found: workKgMPerMinute, low: 150, high: 750 }],
    () => 3.5 + (3 * workKgMPerMinute) / massKg,
  );
}

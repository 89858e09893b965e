import { refused, type Outcome } from '#core/problems/problem.ts';
import { poundsToKilograms } from '#core/units/mass.ts';
import type { Kilograms, Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';

/** What a scale says in one measurement. */
export interface ScaleReading {
  readonly massKg?: Kilograms;
  readonly bodyFatPercent?: Percent;
}

/** Resolutions of the services: 0.005 kg, or 0.01 lb where the scale is set to pounds. */
const SI_STEP_KG = 0.005;
const IMPERIAL_STEP_LB = 0.01;

/** The services' word for a measurement that did not come about. */
export const UNSUCCESSFUL = 0xff_ff;

export function massOf(steps: number, imperial: boolean): Kilograms {
  return roundTo(imperial ? poundsToKilograms(steps * IMPERIAL_STEP_LB) : steps * SI_STEP_KG, 3);
}

export function cutShort(bytes: DataView, needed: number): Outcome<never> {
  return refused(
    'scale/cut-short',
    'scale',
    `The scale sent ${bytes.byteLength} bytes where its own flags announce ${needed}.`,
    'Weigh again; if it stays so, type the weight.',
  );
}

export function unsuccessful(): Outcome<never> {
  return refused(
    'scale/unsuccessful',
    'scale',
    'The scale says that this measurement did not come about.',
    'Stand still or let the bowl come to rest, and weigh again.',
  );
}

import type { Milligrams, Minutes } from '../units/quantities.ts';
import type { SourceKey } from './sources.ts';

/** Caffeine that may be planned: by dose, by day from all sources, and before bed. */
export const caffeineLimits = {
  perDoseMg: 200 as Milligrams,
  perDayMg: 400 as Milligrams,
  doseSource: 'efsa-caffeine-2015' satisfies SourceKey,
  /** Doses closer than this count as one: our own rule, common practice, no source. */
  oneDoseWithinMinutes: 120 as Minutes,
  /** From this much on a dose can delay sleep. */
  nearBedMg: 100 as Milligrams,
  /** Six hours before bed still cost sleep (400 mg, drake-2013). */
  nearBedMinutes: 360 as Minutes,
  nearBedSource: 'drake-2013' satisfies SourceKey,
} as const;

/** A dose of a potassium salt from here on is not planned: our own rule, common practice, no source. */
export const POTASSIUM_PER_DOSE_MAX_MG = 1000 as Milligrams;

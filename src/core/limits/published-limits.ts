import type { KilocaloriesPerDay, Percent } from '../units/quantities.ts';

/**
 * Every figure the tool does not plan past, in one place, each with its source. Where sources disagree the safer
 * figure stands here and the comment says so.
 */
export const publishedLimits = {
  /** Percent of body mass a week. 0.5 to 1.0 is the studied range; a later review prefers 0.5 and less. */
  lossRate: {
    limit: 'loss-rate',
    maxPercentPerWeek: 1 as Percent,
    preferredPercentPerWeek: 0.7 as Percent,
    source: 'helms-2014-preparation',
    /** 0.7 % a week kept more lean mass than 1.0 %. */
    preferredSource: 'garthe-2011',
  },
  /** Grams per kilogram of fat-free mass a day, while dieting. */
  protein: { limit: 'protein', minGPerKgLean: 2.3, highGPerKgLean: 3.1, source: 'helms-2014-protein' },
  /** The lower bound in use; three men ate 0.5 to 0.6 g/kg at their show. */
  fat: {
    limit: 'fat',
    minGPerKg: 0.5,
    source: 'common-practice',
    /** Of energy: the low end held to be acceptable in a preparation. */
    minEnergyShare: 0.1,
    shareSource: 'roberts-2020',
  },
  /**
   * Kilocalories per kilogram of fat-free mass a day left after exercise. Women: the classic threshold. Men: no
   * agreed threshold; below 25 for long, muscle, hormones and mood suffer, so the tool plans no change past it.
   */
  energyAvailability: {
    limit: 'energy-availability',
    female: { minKcalPerKgLean: 30, source: 'mountjoy-2018' },
    male: { minKcalPerKgLean: 25, source: 'fagerberg-2018' },
  },
  /** Floors of the wrestling position stands. */
  bodyFat: {
    limit: 'body-fat',
    female: { minPercent: 12 as Percent },
    male: { minPercent: 5 as Percent },
    source: 'oppliger-1996',
  },
  /** Lower end of what is prescribed to lose weight outside medical supervision. */
  intake: {
    limit: 'intake',
    female: { minKcalPerDay: 1200 as KilocaloriesPerDay },
    male: { minKcalPerDay: 1500 as KilocaloriesPerDay },
    source: 'jensen-2014',
  },
  /**
   * A week's cardio against the week before: growth above 30 % went with more injuries in new runners. From a small
   * dose a share would allow next to nothing, so a fixed step is always allowed (common practice, no source).
   */
  cardioGrowth: {
    limit: 'cardio-growth',
    maxShare: 0.3,
    source: 'nielsen-2014',
    freeStepKcalPerDay: 100 as KilocaloriesPerDay,
    stepSource: 'common-practice',
  },
  /**
   * Carbohydrate of a loading day, g per kg of body mass. Both trials gave 9; 7 of 15 had diarrhoea at that dose, so the
   * plan starts lower and never goes above it.
   */
  load: {
    limit: 'load',
    startGPerKg: 8,
    maxGPerKg: 9,
    source: 'moraes-2019',
    alsoSource: 'homer-2024',
    maxDays: 2,
  },
  age: { limit: 'age', minYears: 18, source: 'adults-only' },
  /**
   * Energy the fat store can give up, per kilogram of fat a day: 290 kJ (69.3 kcal) in the study; later case
   * reports from preparations lie between 186 and 378 kJ. A caution with a band, never a clamp.
   */
  fatDraw: { limit: 'fat-draw', cautionKcalPerKgFat: 69.3, source: 'alpert-2005' },
} as const;

export type Sex = 'female' | 'male';

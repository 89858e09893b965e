import type { SourceKey } from './sources.ts';

/**
 * Values at or beyond which a person needs care now, in the analyte's conventional unit. A tool that cannot examine
 * anyone takes the stricter end of the published lists; laboratories differ. Symptoms go before numbers.
 */
export interface UrgentValue {
  /** At or below. */
  readonly low?: number;
  /** At or above. */
  readonly high?: number;
  readonly source: SourceKey;
  readonly words?: string;
}

export const urgentValues: Readonly<Record<string, UrgentValue>> = {
  sodium: { low: 126, high: 155, source: 'critical-lists' },
  potassium: { low: 2.9, high: 6.0, source: 'critical-lists', words: "The heart's rhythm is at risk." },
  chloride: { low: 80, high: 120, source: 'critical-memory' },
  co2: { low: 11, high: 40, source: 'kost-1990' },
  calcium: { low: 6.6, high: 12.9, source: 'kost-1990' },
  magnesium: { low: 1.0, high: 5.0, source: 'critical-lists' },
  phosphate: {
    low: 1.0,
    source: 'critical-memory',
    words: 'Seen when food comes back after a long deficit.',
  },
  glucose: { low: 50, high: 450, source: 'critical-lists' },
  bun: { high: 100, source: 'critical-lists' },
  creatinine: { high: 6.0, source: 'critical-lists' },
  egfrCr2021: { low: 15, source: 'kdigo-2024', words: 'This is the stage of kidney failure.' },
  bilirubin: { high: 10, source: 'critical-lists' },
  triglycerides: { high: 1000, source: 'critical-memory', words: 'The pancreas is at risk: the same day.' },
  ck: {
    high: 5000,
    source: 'critical-memory',
    words:
      'Muscle may be breaking down; with dark urine, weakness or severe pain it is an emergency at any value.',
  },
  hgb: { low: 7, high: 20, source: 'critical-lists' },
  hct: { low: 20, high: 60, source: 'critical-lists' },
  wbc: { low: 1.0, high: 25, source: 'critical-lists' },
  neut: { low: 1.0, source: 'critical-lists' },
  plt: { low: 20, high: 1000, source: 'critical-lists' },
  vitD: {
    high: 150,
    source: 'critical-memory',
    words: 'This is the range of vitamin D toxicity: calcium must be checked.',
  },
};

/** Symptoms that go before every number. */
export const emergencySymptoms =
  'chest pain, fainting, confusion, palpitations, dark urine, or cramps with weakness';

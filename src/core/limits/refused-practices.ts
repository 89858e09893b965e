import type { Milligrams, Millilitres, Percent } from '../units/quantities.ts';

/** A practice of the last week that the tool does not plan, why, and what it has done to people. */
export interface RefusedPractice {
  readonly practice: string;
  readonly why: string;
  readonly hazard: string;
  readonly source: string;
}

/** Water and sodium, hard stops of the last week (LIM-20). */
export const waterAndSodium = {
  /** About what the kidneys can clear in an hour. */
  waterMaxMlPerHour: { value: 1000 as Millilitres, source: 'hew-butler-2015' },
  waterMaxMlPerDay: { value: 10_000 as Millilitres, source: 'hew-butler-2015' },
  sodiumMinMgPerDay: { value: 500 as Milligrams, source: 'nrc-1989-sodium' },
  /** Body mass lost as water at which performance suffers. */
  waterLossMaxPercent: { value: 2 as Percent, source: 'sawka-2007' },
} as const;

export const refusedPractices: readonly RefusedPractice[] = [
  {
    practice: 'Stopping or cutting water',
    why: 'Muscle is mostly water and glycogen needs it to be stored, so a dry day flattens the look it is meant to sharpen.',
    hazard: 'Healthy young athletes have died of dehydration and heat while cutting weight.',
    source: 'cdc-1998',
  },
  {
    practice: 'Drinking far beyond thirst',
    why: 'The kidneys clear about a litre an hour; the rest thins the blood.',
    hazard: 'Low blood sodium: headache, vomiting, confusion, seizures, death.',
    source: 'hew-butler-2015',
  },
  {
    practice: 'Stripping out or loading sodium',
    why: 'Sodium carries glucose into muscle and holds the blood volume that makes a pump; sharp swings show as much as they hide.',
    hazard: 'Faintness, cramps and, together with heavy drinking, low blood sodium.',
    source: 'escalante-2021',
  },
  {
    practice: 'Diuretics and laxatives, on prescription or not',
    why: 'They take water and salts from blood and muscle alike, and they are banned in tested sport.',
    hazard:
      'A competitor survived a potassium crisis with heart rhythm changes and muscle breakdown; another with the same routine died.',
    source: 'sturmi-1995',
  },
  {
    practice: 'Potassium salts by the spoon',
    why: 'Food gives what muscle needs; a dose beyond it goes to the heart.',
    hazard: 'Life-threatening heart rhythm, above all beside diuretics or low sodium.',
    source: 'sturmi-1995',
  },
  {
    practice: 'Sauna, hot baths, rubber suits to lose water',
    why: 'The water lost comes out of blood and muscle, not from under the skin.',
    hazard: 'Heat stroke, muscle breakdown, kidney failure, death.',
    source: 'murugappan-2019',
  },
  {
    practice: 'Insulin without a prescription',
    why: 'It is a medicine for a disease and banned in sport.',
    hazard: 'Low blood sugar within minutes: unconsciousness, death.',
    source: 'escalante-2021',
  },
];

/** Signs at which everything stops and emergency care is called. */
export const redFlags: readonly string[] = [
  'cramps with weakness',
  'palpitations or an uneven heartbeat',
  'faintness or collapse',
  'confusion or a strange headache',
  'no urine for 12 hours',
  'vomiting that does not stop',
];

import * as v from 'valibot';
import { date, integerIn, numberIn, text } from '../../problems/shapes.ts';

export const foldSites = [
  'chest',
  'midaxillary',
  'triceps',
  'biceps',
  'subscapular',
  'abdomen',
  'suprailiac',
  'thigh',
  'calf',
] as const;
export const girthSites = [
  'neck',
  'shoulders',
  'chest',
  'upper arm left',
  'upper arm right',
  'forearm',
  'abdomen',
  'waist',
  'hip',
  'thigh left',
  'thigh right',
  'calf left',
  'calf right',
] as const;

export const bodyKinds = {
  'body-weighed': v.strictObject({
    massKg: numberIn(25, 350, 'kilograms'),
    /** Which scale; another scale has another bias. */
    scale: v.optional(text(60)),
    circumstances: v.optional(
      v.array(v.picklist(['clothed', 'after food', 'travelling', 'unwell', 'other scale'])),
    ),
  }),
  /** Skinfolds in millimetres, up to three readings a site. */
  'folds-measured': v.strictObject({
    sites: v.record(
      v.picklist(foldSites),
      v.pipe(v.array(numberIn(1, 100, 'millimetres')), v.minLength(1), v.maxLength(5)),
    ),
    equation: v.optional(v.picklist(['jackson-pollock-3', 'jackson-pollock-7', 'durnin-womersley'])),
  }),
  'girths-measured': v.strictObject({
    sites: v.record(v.picklist(girthSites), numberIn(10, 250, 'centimetres')),
  }),
  'body-fat-measured': v.strictObject({
    percent: numberIn(2, 70, 'percent'),
    method: v.picklist(['dxa', 'hydrodensitometry', 'skinfold', 'tape', 'impedance', 'other']),
  }),
  /** A photograph; its bytes are kept beside the journal under `photo`. */
  'photo-taken': v.strictObject({
    photo: text(80),
    view: v.picklist(['front', 'side left', 'side right', 'back', 'other']),
    widthPx: integerIn(1, 20_000),
    heightPx: integerIn(1, 20_000),
    /** Where the crown and the soles are, as a share of the height, so that two can be shown at equal scale. */
    crownShare: v.optional(numberIn(0, 1)),
    solesShare: v.optional(numberIn(0, 1)),
  }),
  /** A whole day's intake typed as totals, or said to have been a fast; for days not logged meal by meal. */
  'intake-totalled': v.strictObject({
    of: date,
    energyKcal: numberIn(0, 20_000, 'kilocalories'),
    proteinG: v.optional(numberIn(0, 2000, 'grams')),
    carbohydrateG: v.optional(numberIn(0, 4000, 'grams')),
    fatG: v.optional(numberIn(0, 1000, 'grams')),
    sodiumMg: v.optional(numberIn(0, 60_000, 'milligrams')),
    fasted: v.optional(v.boolean()),
  }),
  /** The day's meals are all logged: its sum may be used as the day's intake. */
  'day-closed': v.strictObject({ complete: v.boolean() }),
  'cycle-noted': v.strictObject({
    event: v.picklist(['menses began', 'menses ended', 'no menses for three months']),
  }),
};

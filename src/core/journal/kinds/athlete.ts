import * as v from 'valibot';
import { integerIn, numberIn, text } from '../../problems/shapes.ts';

/** Who prepares. Name may be left out; the tool needs none. */
export const athleteKinds = {
  'athlete-described': v.strictObject({
    name: v.optional(text(80)),
    birthYear: integerIn(1900, 2100, 'a year of birth'),
    sex: v.picklist(['female', 'male']),
    heightCm: numberIn(120, 230, 'a height in centimetres'),
    units: v.strictObject({
      mass: v.picklist(['kg', 'lb']),
      kitchen: v.picklist(['g', 'oz']),
      length: v.picklist(['cm', 'in']),
      energy: v.picklist(['kcal', 'kJ']),
    }),
    /** Keys of the cautions that were read and confirmed. */
    cautionsRead: v.array(text(60)),
  }),
  'note-written': v.strictObject({ text: text(4000), about: v.optional(text(80)) }),
  'entry-removed': v.strictObject({ reason: v.optional(text(400)) }),
};

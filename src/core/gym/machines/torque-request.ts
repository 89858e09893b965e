import * as v from 'valibot';
import { HEAVIEST_LOAD_KG } from '#core/journal/kinds/gym-load.ts';
import { numberIn, text } from '#core/problems/shapes.ts';

const angleDeg = numberIn(-720, 720, 'degrees');
const leverMass = {
  massKg: numberIn(0, HEAVIEST_LOAD_KG, 'kilograms'),
  radiusM: numberIn(0, 3, 'metres'),
  angleDeg,
};

/** Angles from the horizontal with the lever at nought degrees, positive upward; radii from the pivot. */
export const torqueRequest = v.strictObject({
  range: v.strictObject({ fromDeg: angleDeg, toDeg: angleDeg, stepDeg: numberIn(0.01, 360, 'degrees') }),
  lever: v.strictObject(leverMass),
  pegs: v.pipe(
    v.array(v.strictObject({ name: text(40), ...leverMass }), 'a list of pegs'),
    v.maxLength(24, 'a list of at most 24 pegs'),
  ),
  padM: numberIn(0.01, 3, 'metres'),
});
export type TorqueRequest = v.InferOutput<typeof torqueRequest>;

export const emphases = ['start', 'middle', 'end', 'even'] as const;
export type Emphasis = (typeof emphases)[number];

export const torqueAnswer = v.strictObject({
  /** From start to end; the last point is the end itself, also where the step does not meet it. */
  curve: v.array(v.strictObject({ deg: v.number(), torqueNm: v.number(), padForceN: v.number() })),
  /** Where it is hardest within the range, between the points of the curve too. */
  peak: v.strictObject({ deg: v.number(), torqueNm: v.number() }),
  /** Work against gravity over the angle turned; where the load pulls along it counts negative. */
  meanNm: v.number(),
  /** Share of the lifting work done in each third of the range; all nought where the load resists nowhere. */
  thirdsPercent: v.tuple([v.number(), v.number(), v.number()]),
  emphasis: v.picklist(emphases),
  /** Where the load stops resisting and begins to pull along; absent where it resists to the end. */
  passesOver: v.optional(v.number()),
  why: v.array(v.string()),
});
export type TorqueAnswer = v.InferOutput<typeof torqueAnswer>;

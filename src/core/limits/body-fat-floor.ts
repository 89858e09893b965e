import { narrow, openLimit, type Limit } from './limit.ts';
import { narrowByOwn, type OwnLimits } from './own-limits.ts';
import { publishedLimits, type Sex } from './published-limits.ts';

/** Lowest body fat the tool plans towards, percent (LIM-15). */
export function bodyFatFloor(sex: Sex, own: OwnLimits = {}): Limit {
  const { limit, source } = publishedLimits.bodyFat;
  const value = publishedLimits.bodyFat[sex].minPercent;
  const floor = narrow(openLimit('Body fat', '%', 'floor'), {
    limit,
    value,
    source,
    words: `Nothing below ${value} % body fat is planned: it is the floor for ${sex === 'female' ? 'women' : 'men'} in the position stands on weight loss in sport.`,
  });
  return narrowByOwn(
    floor,
    own.bodyFatPercent?.min,
    (percent) => `Nothing below ${percent} % body fat is planned: your own limit.`,
  );
}

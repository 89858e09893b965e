import { narrow, openLimit, type Limit } from './limit.ts';
import { narrowByOwn, type OwnLimits } from './own-limits.ts';
import { publishedLimits } from './published-limits.ts';

/** Fastest loss of tissue the tool plans, percent of body mass a week; water and glycogen are not counted (LIM-14). */
export function lossRateCeiling(own: OwnLimits = {}): Limit {
  const { limit, maxPercentPerWeek, source } = publishedLimits.lossRate;
  const ceiling = narrow(openLimit('Loss', '% a week', 'ceiling'), {
    limit,
    value: maxPercentPerWeek,
    source,
    words: `No faster than ${maxPercentPerWeek} % of body mass a week: beyond it more of the loss is muscle.`,
  });
  return narrowByOwn(
    ceiling,
    own.lossPercentPerWeek?.max,
    (value) => `No faster than ${value} % of body mass a week: your own limit.`,
  );
}

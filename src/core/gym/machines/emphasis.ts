import type { Percent } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { liftingWork, type DegreeRange, type LeverLoad } from './lever-torque.ts';
import type { Emphasis } from './torque-request.ts';

/** Thirds that lie closer together than this (percentage points) are called even. Our own mark, no source. */
const EVEN_WITHIN = 5;

/** Share of the lifting work in each third of the range; nought each where nothing is lifted. */
export function thirdsOf(load: LeverLoad, { fromDeg, toDeg }: DegreeRange): [Percent, Percent, Percent] {
  const third = (toDeg - fromDeg) / 3;
  const part = (i: number) =>
    liftingWork(load, { fromDeg: fromDeg + i * third, toDeg: fromDeg + (i + 1) * third });
  const works = [part(0), part(1), part(2)] as const;
  const whole = works[0] + works[1] + works[2];
  const share = (work: number) => (whole > 0 ? roundTo((100 * work) / whole, 9) : 0);
  return [share(works[0]), share(works[1]), share(works[2])];
}

/** In which third most of the work lies. */
export function emphasisOf([start, middle, end]: readonly [Percent, Percent, Percent]): Emphasis {
  const [least, most] = [Math.min(start, middle, end), Math.max(start, middle, end)];
  if (most - least < EVEN_WITHIN) return 'even';
  if (most === start) return 'start';
  return most === end ? 'end' : 'middle';
}

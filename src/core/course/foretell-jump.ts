import { addDays, daysBetween } from '#core/units/civil-date.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { FutureDay } from './future-day.ts';
import { lookOf } from './judgement.ts';
import { type OpenCourse, QUICK_PATHS, runCourse } from './open-course.ts';
import { meanOf, type Spread, spreadOf } from './quantiles.ts';

/** What the scale will do around days that are planned otherwise, so that nobody reads water as fat (CRS-11). */
export interface ForetoldJump {
  /** The morning after the last such day: when the scale stands highest against the plan without them. */
  readonly on: string;
  readonly riseKg: Spread;
  /** Of it: tissue that is really there, and glycogen and water that go again. */
  readonly tissueKg: Kilograms;
  readonly waterKg: Kilograms;
  /** First day by which nine tenths of the water have gone again; undefined where the show comes first. */
  readonly goneBy: string | undefined;
}

/** Holds the days with their stretch against the days without it. Both must begin on the same date. */
export function foretellJump(
  course: OpenCourse,
  without: readonly FutureDay[],
  withStretch: readonly FutureDay[],
  lastDayOfStretch: string,
): ForetoldJump | undefined {
  const first = without[0]?.date;
  if (first === undefined || lastDayOfStretch < first) return undefined;
  const end = Math.min(without.length - 1, daysBetween(first, lastDayOfStretch));
  const looks = Array.from({ length: Math.min(without.length, end + 22) - end }, (_, k) => end + k);
  const paths = QUICK_PATHS;
  const calm = runCourse(course, without, paths, looks);
  const stirred = runCourse(course, withStretch, paths, looks);
  const rise = lookOf(stirred.massKg, 0, paths).map((mass, path) => mass - (calm.massKg[path] ?? 0));
  const waterAt = (look: number) => {
    const at = (run: typeof calm) =>
      meanOf(lookOf(run.massKg, look, paths)) - meanOf(lookOf(run.tissueKg, look, paths));
    return at(stirred) - at(calm);
  };
  const tissueKg = meanOf(lookOf(stirred.tissueKg, 0, paths)) - meanOf(lookOf(calm.tissueKg, 0, paths));
  const water = waterAt(0);
  const gone = looks.findIndex((_, look) => look > 0 && Math.abs(waterAt(look)) <= 0.1 * Math.abs(water));
  return {
    on: addDays(first, end + 1),
    riseKg: spreadOf(rise, 2),
    tissueKg: roundTo(tissueKg, 2),
    waterKg: roundTo(water, 2),
    goneBy: gone < 0 ? undefined : addDays(first, end + gone + 1),
  };
}

import { roundTo } from '#core/units/rounding.ts';
import type { FutureDay } from './future-day.ts';
import { lookOf } from './judgement.ts';
import { type OpenCourse, runCourse } from './open-course.ts';
import { meanOf, quantileOf } from './quantiles.ts';
import { type Meeting, meetingAt } from './target.ts';

/** A quantity on one date, from the low edge of the fan to the high one. */
export interface FanPoint {
  readonly mean: number;
  readonly q05: number;
  readonly q25: number;
  readonly q75: number;
  readonly q95: number;
}

export interface FanDate {
  readonly date: string;
  readonly massKg: FanPoint;
  readonly fatKg: FanPoint;
  /** Fat-free mass: body mass less fat, water in it. */
  readonly leanKg: FanPoint;
  readonly bodyFatPercent: FanPoint;
}

export interface Fan extends Meeting {
  readonly paths: number;
  /** From the last day known to the show. */
  readonly dates: readonly FanDate[];
}

/** Most dates in a fan: enough for a chart on a phone, few enough to follow a finger. */
const MOST_DATES = 32;

/**
 * The fan of paths over some days (CRS-10). With `QUICK_PATHS` it answers inside a frame or two and meets the same
 * chance as the full one.
 */
export function fanOver(course: OpenCourse, days: readonly FutureDay[], paths: number): Fan {
  const looks = fanLooks(days.length);
  const run = runCourse(course, days, paths, looks);
  const dates = looks.map((index, look) => {
    const massKg = lookOf(run.massKg, look, paths);
    const fatKg = lookOf(run.fatKg, look, paths);
    const leanKg = massKg.map((mass, path) => mass - (fatKg[path] ?? 0));
    const percent = massKg.map((mass, path) => (100 * (fatKg[path] ?? 0)) / mass);
    return {
      date: days[index]?.date ?? course.asOf,
      massKg: pointOf(massKg),
      fatKg: pointOf(fatKg),
      leanKg: pointOf(leanKg),
      bodyFatPercent: pointOf(percent),
    };
  });
  return { ...meetingAt(run, looks.length - 1, course.setting.target), paths, dates };
}

/** The start, then evenly spaced days, the show always among them. */
function fanLooks(days: number): readonly number[] {
  const every = Math.max(1, Math.ceil(days / (MOST_DATES - 1)));
  const looks: number[] = [];
  for (let d = days - 1; d > -1; d -= every) looks.push(d);
  looks.push(-1);
  return looks.reverse();
}

function pointOf(values: Float64Array): FanPoint {
  const sorted = values.slice().sort();
  const at = (share: number) => roundTo(quantileOf(sorted, share), 3);
  return { mean: roundTo(meanOf(values), 3), q05: at(0.05), q25: at(0.25), q75: at(0.75), q95: at(0.95) };
}

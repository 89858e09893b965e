import { meetingAt } from '#core/course/target.ts';
import { openRequest } from '#core/course/course.ts';
import { courseRequest } from '#core/course/course-request.ts';
import { judge, lookOf } from '#core/course/judgement.ts';
import { FULL_PATHS } from '#core/course/open-course.ts';
import { readShape } from '#core/problems/from-issues.ts';
import { quantileOf } from '#core/course/quantiles.ts';
import { daysBetween } from '#core/units/civil-date.ts';
import type { SimulatedAthlete } from './athlete-simulator.ts';

/** How the course's landing of one athlete compares with what happened. */
export interface Landing {
  readonly truthKg: number;
  readonly meanKg: number;
  /** A straight line through four weeks of weigh-ins, laid on to the date: common practice. */
  readonly lineKg: number;
  readonly massInside: boolean;
  readonly fatInside: boolean;
  /** [chance given by the course, chance by the line (0 or 1), whether it was met] for targets about the truth. */
  readonly chances: readonly (readonly [course: number, line: number, met: 0 | 1])[];
}

/** Targets are laid about what happened, so that every distance is asked as often on either side. */
const OFFSETS_KG = [-2, -1, -0.5, -0.25, 0.25, 0.5, 1, 2] as const;

/** Lands an athlete `days` ahead of the last day, with the plan known or not, and holds it against the truth. */
export function landAhead(athlete: SimulatedAthlete, days: number, planKnown: boolean): Landing {
  const rows = athlete.request.days;
  const cut = rows.length - 1 - days;
  const asOf = rows[cut]?.date ?? '';
  const show = rows.at(-1)?.date ?? '';
  const truth = athlete.truth.at(-1);
  const truthKg = truth?.massKg ?? 0;
  const request = readShape(
    courseRequest,
    {
      ...athlete.request,
      days: planKnown ? rows : rows.slice(0, cut + 1),
      asOf,
      show: { date: show },
      target: { massKg: { max: 80 } },
    },
    'course',
  );
  const opened = request.ok ? openRequest(request.value) : request;
  if (!opened.ok) throw new Error(`${opened.problem.code}: ${opened.problem.message}`);
  const { run, massKg } = judge(opened.value, {}, FULL_PATHS);
  const look = run.looks.length - 1;
  const inside = (values: Float64Array, value: number) => {
    const sorted = values.slice().sort();
    return quantileOf(sorted, 0.05) <= value && value <= quantileOf(sorted, 0.95);
  };
  const lineKg = lineTo(rows.slice(0, cut + 1), show);
  return {
    truthKg,
    meanKg: massKg,
    lineKg,
    massInside: inside(lookOf(run.massKg, look, FULL_PATHS), truthKg),
    fatInside: inside(lookOf(run.fatKg, look, FULL_PATHS), truth?.fatKg ?? 0),
    chances: OFFSETS_KG.map((offset) => [
      meetingAt(run, look, { massKg: { max: truthKg + offset } }).probability,
      lineKg <= truthKg + offset ? 1 : 0,
      offset > 0 ? 1 : 0,
    ]),
  };
}

function lineTo(rows: SimulatedAthlete['request']['days'], show: string): number {
  const points = rows
    .slice(-28)
    .flatMap(({ date, weightKg }) =>
      weightKg === undefined ? [] : [{ x: daysBetween(show, date), y: weightKg }],
    );
  const n = points.length;
  const mx = points.reduce((sum, { x }) => sum + x, 0) / n;
  const my = points.reduce((sum, { y }) => sum + y, 0) / n;
  const sxy = points.reduce((sum, { x, y }) => sum + (x - mx) * (y - my), 0);
  const sxx = points.reduce((sum, { x }) => sum + (x - mx) ** 2, 0);
  return my - (sxy / sxx) * mx;
}

/** Mean square error of chances. */
export function brierOf(landings: readonly Landing[], which: 'course' | 'line'): number {
  const all = landings.flatMap(({ chances }) => chances);
  return (
    all.reduce((sum, [course, line, met]) => sum + ((which === 'course' ? course : line) - met) ** 2, 0) /
    all.length
  );
}

export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

export function shareOf(landings: readonly Landing[], holds: (landing: Landing) => boolean): number {
  return landings.filter(holds).length / landings.length;
}

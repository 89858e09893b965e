import { checkDays } from '#core/body/check-days.ts';
import type { BodyEstimate } from '#core/body/estimate-body.ts';
import { readEstimate } from '#core/body/estimate.ts';
import { doubtWhy } from '#core/body/log-why.ts';
import { waterShares } from '#core/body/moving-water.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import { readShape } from '#core/problems/from-issues.ts';
import { answerCourse } from './answer-course.ts';
import { checkCourse, lastKnownDay } from './check-course.ts';
import type { CourseAnswer } from './course-answer.ts';
import { courseRequest, type CourseRequest } from './course-request.ts';
import type { DayRow } from './day-row.ts';
import { openCourse, type OpenCourse } from './open-course.ts';
import { standingOf } from './standing.ts';

/**
 * The door: where the plan lands on show day, how likely that meets the target, and the smallest correction (CRS-01).
 * Refuses a shape that is not the contract's, rows the estimate cannot read, a show that is over or a target without
 * a bound.
 */
export function course(input: unknown): Outcome<CourseAnswer> {
  const read = readShape(courseRequest, input, 'course');
  if (!read.ok) return read;
  const opened = openRequest(read.value);
  return opened.ok ? answered(answerCourse(opened.value)) : opened;
}

/** Lays out the course of a request once, for every further question to it. */
export function openRequest(request: CourseRequest): Outcome<OpenCourse> {
  const dated = checkDays(request);
  if (!dated.ok) return dated;
  const checked = checkCourse(request);
  if (!checked.ok) return checked;
  const { athlete, days, show, target, limits, seed } = request;
  const read = readEstimate(request);
  if (!read.ok) return read;
  const { estimate } = read.value;
  const setting = {
    sex: athlete.sex,
    rows: believedRows(days, estimate),
    today: lastKnownDay(request),
    show: show.date,
    target,
    own: limits,
    seed,
    doubts: doubtWhy({ ...read.value, smooth: false }),
  };
  return answered(openCourse(setting, standingOf(estimate), waterShares(days, athlete.creatineFrom)));
}

/** Rows whose intake the estimate does not believe (nothing, or half a day) are no habit: their intake is left out. */
function believedRows(rows: readonly DayRow[], { lived }: BodyEstimate): readonly DayRow[] {
  const doubted = new Set(
    lived.filter(({ basis }) => basis === 'zero' || basis === 'doubtful').map(({ date }) => date),
  );
  return rows.map((row) => (doubted.has(row.date) ? { ...row, intake: undefined } : row));
}

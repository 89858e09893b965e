import type { ReadEstimate } from '../body/estimate.ts';
import type { EstimateAnswer } from '../body/estimate-request.ts';
import { doubtWhy } from '../body/log-why.ts';
import { waterShares } from '../body/moving-water.ts';
import { answerCourse } from '../course/answer-course.ts';
import type { Change } from '../course/change.ts';
import type { CourseAnswer } from '../course/course-answer.ts';
import type { DayRow } from '../course/day-row.ts';
import { type Fan, fanOver } from '../course/fan.ts';
import { foretellJump, type ForetoldJump } from '../course/foretell-jump.ts';
import { type AgainstPlan, heldAgainstPlan } from '../course/held-against-plan.ts';
import { barrierTo, judge } from '../course/judgement.ts';
import { FULL_PATHS, openCourse, type OpenCourse, QUICK_PATHS } from '../course/open-course.ts';
import { adherenceTo, averageOver, type Habit } from '../course/past-habits.ts';
import { type Season, season } from '../course/season.ts';
import { standingOf } from '../course/standing.ts';
import { type Stretch, withStretches } from '../course/stretches.ts';
import { whatIf } from '../course/what-if.ts';
import type { LimitReason } from '../limits/limit.ts';
import { type CourseAsk, rowOf } from './course-ask.ts';

/** A stretch ahead and what the scale will do about it. */
export interface StretchAhead {
  readonly stretch: Stretch;
  readonly jump: ForetoldJump | undefined;
}

/** The course as the screens show it: plain data that a worker can hand over. */
export interface CourseNow {
  readonly answer: CourseAnswer;
  readonly fan: Fan;
  readonly asOf: string;
  readonly from: string;
  readonly massKg: number;
  readonly fatKg: number;
  /** What goes on beyond the plan, or the plan's own average. */
  readonly goesOn: Habit;
  readonly plannedDays: number;
  readonly balanceKcal: number;
  readonly held: readonly AgainstPlan[];
  /** What the body did until now, each day in the light of all. */
  readonly past: EstimateAnswer['days'];
  readonly stretches: readonly StretchAhead[];
  readonly season: Season | undefined;
}

/** One and the same chance for everyone: figures move with the log, never with a reload. */
const SEED = 1;
const USUAL_DAYS = 14;

/** Opens the course of what the journal asked for, from an estimate of its log (RUN-25). */
export function openAsk(
  ask: CourseAsk,
  read: ReadEstimate,
  show = ask.show.date,
  target = ask.target,
): OpenCourse {
  const { estimate, request } = read;
  const past = believed(request.days, read);
  const usual = averageOver(past, ask.today, USUAL_DAYS)?.cardioKcal ?? 0;
  const plan = ask.planned.filter(({ date }) => date > ask.today && date <= show);
  return openCourse(
    {
      sex: request.athlete.sex,
      rows: [...past, ...plan.map((day) => rowOf(day, usual))],
      today: ask.today,
      show,
      target,
      own: {},
      seed: SEED,
      ...(plan.length > 0 && { kept: adherenceTo(ask.planned, past, ask.today) }),
      doubts: doubtWhy({ ...read, smooth: true }),
      stretches: ask.stretches,
    },
    standingOf(estimate),
    waterShares(request.days, request.athlete.creatineFrom),
  );
}

/** Everything the front of the Course place shows. */
export function courseNow(ask: CourseAsk, read: ReadEstimate, course: OpenCourse): CourseNow {
  const { days } = course.future;
  return {
    answer: answerCourse(course),
    fan: fanOver(course, days, FULL_PATHS),
    asOf: course.asOf,
    from: course.from,
    massKg: course.startMassKg,
    fatKg: course.startFatKg,
    goesOn: course.future.goesOn,
    plannedDays: course.future.planned,
    balanceKcal: course.balanceKcal,
    past: read.answer.days,
    held: ask.adopted ? heldAgainstPlan(ask.adopted.line, read.answer.days) : [],
    stretches: ask.stretches
      .filter(({ from }) => from < ask.show.date)
      .map((stretch) => ({ stretch, jump: jumpOf(course, stretch) })),
    season: seasonOf(ask, read),
  };
}

/** A change tried out: the fan it gives, and the limit it runs against, if any. */
export interface TriedChange {
  readonly fan: Fan;
  readonly limit: LimitReason | undefined;
  readonly energyKcal: number;
  readonly cardioKcal: number;
  readonly lossPercentPerWeek: number;
}

/** Tries a change quickly enough to follow a finger. */
export function tryChange(course: OpenCourse, change: Change): TriedChange {
  const judged = judge(course, change, QUICK_PATHS);
  return {
    fan: whatIf(course, change),
    limit: barrierTo(course, judged),
    energyKcal: judged.energyKcal,
    cardioKcal: judged.cardioKcal,
    lossPercentPerWeek: judged.lossPercentPerWeek,
  };
}

/** What one stretch does to the scale, held against the same days without it. */
export function jumpOf(course: OpenCourse, stretch: Stretch): ForetoldJump | undefined {
  const without = course.plainDays;
  const last = stretch.until < course.setting.show ? stretch.until : course.setting.show;
  return foretellJump(course, without, withStretches(without, [stretch], course.balanceKcal), last);
}

/** Two shows or more: opened to the last of them. */
function seasonOf(ask: CourseAsk, read: ReadEstimate): Season | undefined {
  const last = ask.shows.at(-1);
  if (ask.shows.length < 2 || last === undefined) return undefined;
  const ready = ask.shows.filter(({ target }) => target.bodyFatPercent ?? target.massKg);
  return season(openAsk(ask, read, last.date, last.target), ready);
}

/** Rows whose intake the estimate does not believe (nothing, or half a day) are no habit: their intake is left out. */
function believed(rows: readonly DayRow[], { estimate }: ReadEstimate): readonly DayRow[] {
  const doubted = new Set(
    estimate.lived.filter(({ basis }) => basis === 'zero' || basis === 'doubtful').map(({ date }) => date),
  );
  return rows.map((row) => (doubted.has(row.date) ? { ...row, intake: undefined } : row));
}

import type { ReadEstimate } from '#core/body/estimate.ts';
import type { EstimateRequest } from '#core/body/estimate-request.ts';
import type { Change } from '#core/course/change.ts';
import type { ForetoldJump } from '#core/course/foretell-jump.ts';
import { type CourseWish, type LaidCourse, layCourse } from '#core/course/lay-course.ts';
import { layShape } from '#core/course/lay-shape.ts';
import type { WeekShape, WeekTargets } from '#core/course/day-targets.ts';
import type { OpenCourse } from '#core/course/open-course.ts';
import type { Stretch } from '#core/course/stretches.ts';
import { type BodyNow, bodyNow, readBody } from '#core/cycle/body-now.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import {
  type CourseNow,
  courseNow,
  jumpOf,
  openAsk,
  type TriedChange,
  tryChange,
} from '#core/cycle/course-now.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';

export type ShapeWish = Pick<
  WeekShape,
  'trainingDays' | 'higherCarbohydrateDays' | 'trainingExtraKcal' | 'proteinGPerKgLean'
>;

export interface LaidWeek {
  readonly laid: LaidCourse;
  readonly week: Outcome<WeekTargets>;
}

/** What the worker can be asked, by name: the question, and what it answers. */
export interface CourseQuestions {
  readonly body: { readonly asks: EstimateRequest; readonly answers: Outcome<BodyNow> };
  readonly course: { readonly asks: CourseAsk; readonly answers: Outcome<CourseNow> };
  readonly whatIf: {
    readonly asks: { readonly ask: CourseAsk; readonly change: Change };
    readonly answers: Outcome<TriedChange>;
  };
  readonly lay: {
    readonly asks: { readonly ask: CourseAsk; readonly wish: CourseWish; readonly shape: ShapeWish };
    readonly answers: Outcome<LaidWeek>;
  };
  readonly jump: {
    readonly asks: { readonly ask: CourseAsk; readonly stretch: Stretch };
    readonly answers: Outcome<ForetoldJump | undefined>;
  };
}

export type QuestionName = keyof CourseQuestions;

export type CourseQuestion = {
  [Name in QuestionName]: {
    readonly number: number;
    readonly name: Name;
    readonly asks: CourseQuestions[Name]['asks'];
  };
}[QuestionName];

export interface CourseReply {
  readonly number: number;
  readonly outcome: CourseQuestions[QuestionName]['answers'];
}

/** What was opened last stays open: a what-if follows a finger only if the course need not be opened anew. */
const kept = new Map<string, unknown>();

function once<Value>(name: string, asked: unknown, make: () => Value): Value {
  const key = `${name} ${JSON.stringify(asked)}`;
  if (kept.has(key)) return kept.get(key) as Value;
  const made = make();
  for (const old of kept.keys()) if (old.startsWith(`${name} `)) kept.delete(old);
  kept.set(key, made);
  return made;
}

function read(request: EstimateRequest): Outcome<ReadEstimate> {
  return once('estimate', request, () => readBody(request));
}

function opened(ask: CourseAsk): Outcome<{ estimate: ReadEstimate; course: OpenCourse }> {
  return once('course', ask, () => {
    const estimate = read(ask.log);
    return estimate.ok
      ? answered({ estimate: estimate.value, course: openAsk(ask, estimate.value) })
      : estimate;
  });
}

function answer(question: CourseQuestion): CourseReply['outcome'] {
  if (question.name === 'body') {
    const estimate = read(question.asks);
    return estimate.ok ? answered(bodyNow(estimate.value)) : estimate;
  }
  if (question.name === 'course') {
    const open = opened(question.asks);
    return open.ok ? answered(courseNow(question.asks, open.value.estimate, open.value.course)) : open;
  }
  const open = opened(question.asks.ask);
  if (!open.ok) return open;
  const { course } = open.value;
  if (question.name === 'whatIf') return answered(tryChange(course, question.asks.change));
  if (question.name === 'jump') return answered(jumpOf(course, question.asks.stretch));
  const laid = layCourse(course, question.asks.wish);
  return answered({ laid, week: layShape(course, laid, question.asks.shape) });
}

/** Estimates and forecasts beside the screen, which never waits for it. */
self.addEventListener('message', (event: MessageEvent<CourseQuestion>) => {
  const question = event.data;
  const reply: CourseReply = { number: question.number, outcome: answer(question) };
  self.postMessage(reply);
});

import { bodyFatFloor } from '#core/limits/body-fat-floor.ts';
import { roundTo } from '#core/units/rounding.ts';
import { AIM, searchCorrections, searchEasing, whatItWouldTake } from './corrections.ts';
import type { Judgement } from './judgement.ts';
import type { OpenCourse } from './open-course.ts';
import { percentWords, targetWords } from './words.ts';

export type Verdict = 'on course' | 'behind' | 'ahead' | 'out of reach' | 'too little evidence';

export interface Decision {
  readonly verdict: Verdict;
  /** Smallest first. */
  readonly corrections: readonly Judgement[];
  readonly why: readonly string[];
}

/**
 * From this chance on the course stands. Below it, down to `noise`, the shortfall is less than a quarter of a standard
 * deviation of what is known: holding and looking again next week beats a correction on noise (CRS-06).
 */
const CHANCE = { stands: 0.5, noise: 0.4, ahead: 0.9 } as const;
/** Body-fat readings this uncertain (width of the 90 % interval, points) decide nothing unless the chance is plain. */
const WIDE = { points: 11, low: 0.05, high: 0.95 } as const;

/** The verdict on the present plan and the corrections it calls for (CRS-05 to CRS-09). */
export function decide(course: OpenCourse, now: Judgement, bodyFatWidth: number): Decision {
  return (
    belowFloor(course) ??
    tooLittle(course, now, bodyFatWidth) ??
    tooLight(course, now) ??
    ahead(course, now) ??
    standing(now) ??
    behind(course, now)
  );
}

function belowFloor(course: OpenCourse): Decision | undefined {
  const wanted = course.setting.target.bodyFatPercent?.max;
  const floor = bodyFatFloor(course.setting.sex, course.setting.own);
  if (wanted === undefined || wanted >= floor.present) return undefined;
  return {
    verdict: 'out of reach',
    corrections: [],
    why: [`The target of ${wanted} % body fat is not planned for. ${floor.tightest?.words ?? ''}`.trim()],
  };
}

function tooLittle(course: OpenCourse, now: Judgement, bodyFatWidth: number): Decision | undefined {
  const lacking = [...course.evidence.lacking];
  const wide =
    course.setting.target.bodyFatPercent !== undefined &&
    bodyFatWidth > WIDE.points &&
    now.probability > WIDE.low &&
    now.probability < WIDE.high;
  if (wide)
    lacking.push(
      `Body fat is known to within ${roundTo(bodyFatWidth, 1)} points only; folds or another reading would narrow it.`,
    );
  if (lacking.length === 0) return undefined;
  return {
    verdict: 'too little evidence',
    corrections: [],
    why: [...lacking, 'No correction is proposed yet.'],
  };
}

/** Under the least mass, or under the body-fat floor: the course must ease off. */
function tooLight(course: OpenCourse, now: Judgement): Decision | undefined {
  const floor = bodyFatFloor(course.setting.sex, course.setting.own);
  if (now.tooLittle > now.tooMuch && now.probability < CHANCE.noise) {
    const { offered } = searchCorrections(course, now, 1);
    return {
      verdict: 'ahead',
      corrections: offered,
      why: [`The course lands below the least mass in ${percentWords(now.tooLittle)} of all paths.`],
    };
  }
  if (now.bodyFatPercent >= floor.present) return undefined;
  return {
    verdict: 'ahead',
    corrections: searchEasing(course),
    why: [
      `The course lands at ${roundTo(now.bodyFatPercent, 1)} % body fat. ${floor.tightest?.words ?? ''}`.trim(),
    ],
  };
}

function ahead(course: OpenCourse, now: Judgement): Decision | undefined {
  if (now.probability < CHANCE.ahead) return undefined;
  const easing = searchEasing(course);
  if (easing.length === 0) return undefined;
  return {
    verdict: 'ahead',
    corrections: easing,
    why: ['There is room: the target is met early, and eating more or walking less keeps it.'],
  };
}

function standing(now: Judgement): Decision | undefined {
  if (now.probability >= CHANCE.stands)
    return {
      verdict: 'on course',
      corrections: [],
      why: ['Hold: the present plan meets the target more likely than not.'],
    };
  if (now.probability < CHANCE.noise) return undefined;
  return {
    verdict: 'on course',
    corrections: [],
    why: [
      'Hold: what is missing is smaller than what the evidence can tell; it is noise until next week says otherwise.',
    ],
  };
}

function behind(course: OpenCourse, now: Judgement): Decision {
  const search = searchCorrections(course, now, -1);
  const held = search.heldBackBy.map((reason) => reason.words);
  if (search.offered.length > 0) {
    const full = search.offered.some((judged) => judged.probability >= AIM);
    const note = full ? [] : [`Inside the limits no change reaches ${percentWords(AIM)}.`, ...held];
    return {
      verdict: 'behind',
      corrections: search.offered,
      why: ['The present plan misses the target beyond noise.', ...note],
    };
  }
  const best = search.best
    ? [`The most inside the limits raises the chance to ${percentWords(search.best.probability)}.`]
    : [];
  return {
    verdict: 'out of reach',
    corrections: [],
    why: [
      `No change inside the limits brings ${targetWords(course.setting.target)} into reach by ${course.setting.show}.`,
      ...best,
      ...whatItWouldTake(course),
      ...held,
    ],
  };
}

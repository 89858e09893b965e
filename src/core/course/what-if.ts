import type { Change } from './change.ts';
import { type Fan, fanOver } from './fan.ts';
import { daysWith, FULL_PATHS, type OpenCourse, QUICK_PATHS } from './open-course.ts';

/** The fan as it would be with a change of food or cardio, quickly enough to follow a finger (CRS-10). */
export function whatIf(course: OpenCourse, change: Change, from = course.from): Fan {
  return fanOver(course, daysWith(course, change, from), QUICK_PATHS);
}

/** The same over all paths, for the figure that is kept. */
export function whatIfInFull(course: OpenCourse, change: Change, from = course.from): Fan {
  return fanOver(course, daysWith(course, change, from), FULL_PATHS);
}

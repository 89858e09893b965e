import type { Outcome } from '#core/problems/problem.ts';
import { type WeekShape, weekTargets, type WeekTargets } from './day-targets.ts';
import type { LaidCourse } from './lay-course.ts';
import type { OpenCourse } from './open-course.ts';

/** Training, rest and higher-carbohydrate day targets for a laid course, from the body it was laid for (CRS-13). */
export function layShape(
  course: OpenCourse,
  laid: Pick<LaidCourse, 'energyKcal' | 'cardioKcal'>,
  wish: Pick<
    WeekShape,
    'trainingDays' | 'higherCarbohydrateDays' | 'trainingExtraKcal' | 'proteinGPerKgLean' | 'fatShare'
  >,
): Outcome<WeekTargets> {
  return weekTargets({
    ...wish,
    sex: course.setting.sex,
    own: course.setting.own,
    massKg: course.startMassKg,
    leanKg: course.startMassKg - course.startFatKg,
    energyKcal: laid.energyKcal,
    balanceKcal: course.balanceKcal,
    cardioKcal: laid.cardioKcal,
  });
}

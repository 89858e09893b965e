import { preparationStart } from '#core/course/read-course.ts';
import type { LaidCourse } from '#core/course/lay-course.ts';
import type { WeekTargets } from '#core/course/day-targets.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import { targetsOfDay } from '#core/day/targets-of-day.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { NewFact } from '../../state/open-journal.ts';

interface Adopted {
  readonly ask: CourseAsk;
  readonly laid: LaidCourse;
  readonly week: WeekTargets;
  readonly trainingDays: number;
  readonly higherCarbohydrateDays: number;
}

/** What adopting a course writes: the course as laid, a target for each kind of day, and the beginning if it is the first. */
export function adoption(ledger: Ledger, adopted: Adopted): NewFact[] {
  const { ask, laid, week, trainingDays, higherCarbohydrateDays } = adopted;
  const from = addDays(ask.today, 1);
  const begins = preparationStart(ledger, ask.show.show) === undefined;
  const targets = week.targets.map(({ dayKind, proteinG, carbohydrateG, fatG, cardioKcal }): NewFact => {
    // Fibre and sodium are no concern of the course: what was set for them stays.
    const before = targetsOfDay(ledger, from, dayKind)?.data;
    return {
      kind: 'target-set',
      data: {
        from,
        dayKind,
        basis: 'course',
        proteinG,
        carbohydrateG,
        fatG,
        cardioKcal,
        ...(before?.fibreMinG !== undefined && { fibreMinG: before.fibreMinG }),
        ...(before?.sodiumMaxMg !== undefined && { sodiumMaxMg: before.sodiumMaxMg }),
      },
    };
  });
  return [
    {
      kind: 'course-adopted',
      data: {
        show: ask.show.show,
        from,
        energyKcal: laid.energyKcal,
        cardioKcal: laid.cardioKcal,
        trainingDays,
        higherCarbohydrateDays,
        line: [...laid.line],
        probability: laid.probability,
        why: [...laid.why],
      },
    },
    ...targets,
    ...(begins
      ? [{ kind: 'preparation-begun' as const, data: { show: ask.show.show, from: ask.today } }]
      : []),
  ];
}

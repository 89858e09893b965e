import type { Stretch } from '#core/course/stretches.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { standingTargets } from '#core/cycle/standing-targets.ts';
import type { Fact, Ledger } from '#core/journal/ledger.ts';
import type { NewFact } from '../../state/open-journal.ts';

/** A planned stretch and the targets of its days, so that the Day plans from them: protein and fat stay. */
export function stretchFacts(ledger: Ledger, id: string, stretch: Stretch, now: CourseNow): NewFact[] {
  const { type, from, until, energyKcal, carbohydrateG } = stretch;
  const usual = standingTargets(ledger, now.from, now.goesOn)[0]?.target;
  const stretched: NewFact = {
    kind: 'stretch-planned',
    data: {
      stretch: id,
      type,
      from,
      until,
      ...(energyKcal !== undefined && { energyKcal }),
      ...(carbohydrateG !== undefined && { carbohydrateG }),
    },
  };
  if (!usual) return [stretched];
  const kcal = energyKcal ?? Math.max(now.goesOn.energyKcal, now.balanceKcal + now.goesOn.cardioKcal);
  const rest = Math.max(0, Math.round((kcal - 4 * usual.proteinG - 9 * usual.fatG) / 4));
  return [
    stretched,
    {
      kind: 'target-set',
      data: {
        ...usual,
        from,
        until,
        dayKind: 'every',
        basis: 'course',
        carbohydrateG: Math.round(carbohydrateG ?? rest),
      },
    },
  ];
}

/** The targets that were set for the days of a stretch: they go with it. */
export function targetsOfStretch(ledger: Ledger, { from, until }: Stretch): readonly Fact<'target-set'>[] {
  return ledger
    .of('target-set')
    .filter(({ data }) => data.basis === 'course' && data.from === from && data.until === until);
}

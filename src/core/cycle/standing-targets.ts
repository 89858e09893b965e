import type { Acceptance } from '../course/accept-correction.ts';
import type { Habit } from '../course/past-habits.ts';
import { shapeOfDay } from '../day/shape-of-day.ts';
import { targetsOfDay } from '../day/targets-of-day.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';

type Standing = Acceptance['standing'];

/**
 * The targets of the week that begins on a day, each with how many of its days it has (RUN-26). Where none was ever
 * set, what is eaten on average stands in, so that a correction has something to act on.
 */
export function standingTargets(ledger: Ledger, from: string, habit: Habit): Standing {
  const found = new Map<string, Standing[number]>();
  for (let d = 0; d < 7; d++) {
    const day = addDays(from, d);
    const fact = targetsOfDay(ledger, day, shapeOfDay(ledger, day)?.dayKind ?? 'rest');
    if (fact === undefined || fact.data.until !== undefined) continue;
    const known = found.get(fact.entry.id);
    found.set(fact.entry.id, { target: fact.data, daysAWeek: (known?.daysAWeek ?? 0) + 1 });
  }
  if (found.size > 0) return [...found.values()];
  const { proteinG, carbohydrateG, fatG, cardioKcal } = habit;
  const target = {
    from,
    dayKind: 'every',
    basis: 'course',
    proteinG: Math.round(proteinG),
    carbohydrateG: Math.round(carbohydrateG),
    fatG: Math.round(fatG),
    cardioKcal: Math.round(cardioKcal),
  } as const;
  return [{ target, daysAWeek: 7 }];
}

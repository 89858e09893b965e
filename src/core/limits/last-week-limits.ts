import type { Milligrams, Millilitres } from '../units/quantities.ts';
import { narrow, openLimit, stepAtOrAbove, stepAtOrBelow } from './limit.ts';
import type { LimitRange } from './settle.ts';
import { waterAndSodium } from './refused-practices.ts';

/** How far water and sodium of the last week may stray from habit: a share of it (common practice, no source). */
const HABIT_BAND = 0.2;

/** Water a day in the last week, mL: near habit, never beyond what the kidneys clear (LIM-20). */
export function lastWeekWater(habitMl: Millilitres): LimitRange {
  const { waterMaxMlPerDay } = waterAndSodium;
  const low = (1 - HABIT_BAND) * habitMl;
  const high = (1 + HABIT_BAND) * habitMl;
  const ceiling = narrow(openLimit('Water', 'mL', 'ceiling'), {
    limit: 'water',
    value: waterMaxMlPerDay.value,
    source: waterMaxMlPerDay.source,
    words: `No more than ${waterMaxMlPerDay.value} mL of water a day: the kidneys cannot clear more safely.`,
  });
  return {
    floor: narrow(openLimit('Water', 'mL', 'floor'), {
      limit: 'water',
      value: low,
      source: 'escalante-2021',
      words: `At least ${stepAtOrAbove(low, 50)} mL of water a day: near your habit of ${habitMl} mL; water is never cut.`,
    }),
    ceiling: narrow(ceiling, {
      limit: 'water',
      value: high,
      source: 'escalante-2021',
      words: `No more than ${stepAtOrBelow(high, 50)} mL of water a day: near your habit of ${habitMl} mL.`,
    }),
  };
}

/** Sodium a day in the last week, mg: near habit, never below the physiological minimum (LIM-20). */
export function lastWeekSodium(habitMg: Milligrams): LimitRange {
  const { sodiumMinMgPerDay } = waterAndSodium;
  const low = (1 - HABIT_BAND) * habitMg;
  const high = (1 + HABIT_BAND) * habitMg;
  const floor = narrow(openLimit('Sodium', 'mg', 'floor'), {
    limit: 'sodium',
    value: sodiumMinMgPerDay.value,
    source: sodiumMinMgPerDay.source,
    words: `At least ${sodiumMinMgPerDay.value} mg of sodium a day: the body needs that much to hold its blood volume.`,
  });
  return {
    floor: narrow(floor, {
      limit: 'sodium',
      value: low,
      source: 'escalante-2021',
      words: `At least ${stepAtOrAbove(low, 50)} mg of sodium a day: near your habit of ${habitMg} mg; salt is never stripped out.`,
    }),
    ceiling: narrow(openLimit('Sodium', 'mg', 'ceiling'), {
      limit: 'sodium',
      value: high,
      source: 'escalante-2021',
      words: `No more than ${stepAtOrBelow(high, 50)} mg of sodium a day: near your habit of ${habitMg} mg.`,
    }),
  };
}

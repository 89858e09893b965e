import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import type { OwnLimits } from '#core/limits/own-limits.ts';
import { dailyEnergyFloor, singleDayFloor } from '#core/limits/daily-energy-floor.ts';
import { stepAtOrAbove } from '#core/limits/limit.ts';
import { fatFloor, proteinFloor } from '#core/limits/macro-floors.ts';
import type { Sex } from '#core/limits/published-limits.ts';
import type { Grams, Kilocalories, KilocaloriesPerDay, Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';

export type DayKind = 'training' | 'rest' | 'higher-carbohydrate';

export interface WeekShape {
  readonly sex: Sex;
  readonly massKg: Kilograms;
  readonly leanKg: Kilograms;
  /** Average intake of the week. */
  readonly energyKcal: KilocaloriesPerDay;
  /** Intake of a higher-carbohydrate day: what keeps the balance. */
  readonly balanceKcal: KilocaloriesPerDay;
  readonly cardioKcal: KilocaloriesPerDay;
  readonly trainingDays: number;
  readonly higherCarbohydrateDays: number;
  /** How much more a training day gets than a rest day. Common practice, no source. */
  readonly trainingExtraKcal?: Kilocalories;
  /** Protein within 2.3 to 3.1 g per kg of fat-free mass (helms-2014-protein). */
  readonly proteinGPerKgLean?: number;
  /** Share of energy as fat on training and rest days, never below the fat floor. */
  readonly fatShare?: number;
  readonly own?: OwnLimits;
}

export interface DayTarget {
  readonly dayKind: DayKind;
  readonly daysAWeek: number;
  readonly energyKcal: KilocaloriesPerDay;
  readonly proteinG: Grams;
  readonly carbohydrateG: Grams;
  readonly fatG: Grams;
  readonly cardioKcal: KilocaloriesPerDay;
}

export interface WeekTargets {
  readonly targets: readonly DayTarget[];
  /** Average of the week after rounding to the gram. */
  readonly energyKcal: KilocaloriesPerDay;
  readonly why: readonly string[];
}

/**
 * Macro targets of training, rest and higher-carbohydrate days that average to the week's energy (CRS-13): protein
 * from lean mass, fat at its share or its floor, carbohydrate the rest. A week whose days cannot keep the limits is
 * refused with the limit that stands in the way.
 */
export function weekTargets(shape: WeekShape): Outcome<WeekTargets> {
  const { trainingDays, higherCarbohydrateDays } = shape;
  const restDays = 7 - trainingDays - higherCarbohydrateDays;
  if (restDays < 0)
    return refused(
      'course/more-than-a-week',
      'trainingDays',
      `${trainingDays} training days and ${higherCarbohydrateDays} higher-carbohydrate days are more than a week.`,
      'Count a training day that is also a higher-carbohydrate day once, as the latter.',
    );
  const { sex, massKg, leanKg, cardioKcal, own = {} } = shape;
  const floor = dailyEnergyFloor({ sex, massKg, leanKg, exerciseKcal: cardioKcal, own });
  if (shape.energyKcal < floor.present)
    return refused(
      'course/week-below-floor',
      'energyKcal',
      `The week would average ${roundTo(shape.energyKcal, 0)} kcal a day. ${floor.tightest?.words ?? ''}`,
      'Take a milder target, a later show, or less cardio.',
    );
  const energies = energiesOf(shape, restDays);
  const targets: DayTarget[] = [];
  for (const [dayKind, daysAWeek] of [
    ['training', trainingDays],
    ['rest', restDays],
    ['higher-carbohydrate', higherCarbohydrateDays],
  ] as const) {
    if (daysAWeek === 0) continue;
    const target = targetOf(shape, dayKind, daysAWeek, energies[dayKind]);
    if (!target.ok) return target;
    targets.push(target.value);
  }
  const week = targets.reduce((sum, target) => sum + target.daysAWeek * target.energyKcal, 0);
  return answered({ targets, energyKcal: roundTo(week / 7, 1), why: wordsOf(shape, targets) });
}

/** Solves the week: higher-carbohydrate days at balance, training days above rest days, the average kept. */
function energiesOf(shape: WeekShape, restDays: number): Readonly<Record<DayKind, KilocaloriesPerDay>> {
  const { energyKcal, trainingDays, higherCarbohydrateDays } = shape;
  const higher = Math.max(energyKcal, shape.balanceKcal + shape.cardioKcal);
  const extra = restDays === 0 ? 0 : (shape.trainingExtraKcal ?? 200);
  const left = 7 * energyKcal - higherCarbohydrateDays * higher - trainingDays * extra;
  const others = trainingDays + restDays;
  const rest = others === 0 ? energyKcal : left / others;
  return { training: rest + extra, rest, 'higher-carbohydrate': others === 0 ? energyKcal : higher };
}

function targetOf(
  shape: WeekShape,
  dayKind: DayKind,
  daysAWeek: number,
  energyKcal: KilocaloriesPerDay,
): Outcome<DayTarget> {
  const { sex, massKg, leanKg, cardioKcal, own = {} } = shape;
  const floor = singleDayFloor({ sex, massKg, leanKg, own });
  if (energyKcal < floor.present) {
    return refused(
      'course/day-below-floor',
      dayKind,
      `A ${dayKind} day would come to ${roundTo(energyKcal, 0)} kcal. ${floor.tightest?.words ?? ''}`,
      'Plan fewer higher-carbohydrate days, a smaller difference between training and rest days, a milder target, or a later show.',
    );
  }
  const protein = proteinFloor(leanKg, own);
  const proteinG = stepAtOrAbove(Math.max(protein.present, (shape.proteinGPerKgLean ?? 2.6) * leanKg), 1);
  const leastFatG = stepAtOrAbove(fatFloor(massKg, own, energyKcal).present, 1);
  const share = dayKind === 'higher-carbohydrate' ? 0 : (shape.fatShare ?? 0.22);
  const roomG = Math.floor((energyKcal - 4 * proteinG) / 9);
  const fatG = Math.max(leastFatG, Math.min(roomG, Math.round((share * energyKcal) / 9)));
  const carbohydrateG = Math.round((energyKcal - 4 * proteinG - 9 * fatG) / 4);
  if (carbohydrateG < 0) {
    return refused(
      'course/no-room-for-carbohydrate',
      dayKind,
      `A ${dayKind} day of ${roundTo(energyKcal, 0)} kcal does not hold ${proteinG} g of protein and ${fatG} g of fat.`,
      'Take less protein within its range, a milder target, or a later show.',
    );
  }
  return answered({
    dayKind,
    daysAWeek,
    energyKcal: 4 * proteinG + 4 * carbohydrateG + 9 * fatG,
    proteinG,
    carbohydrateG,
    fatG,
    cardioKcal: roundTo(cardioKcal, 0),
  });
}

function wordsOf(shape: WeekShape, targets: readonly DayTarget[]): readonly string[] {
  const protein = proteinFloor(shape.leanKg, shape.own);
  return [
    protein.tightest?.words ?? '',
    ...targets.map(
      ({ dayKind, daysAWeek, energyKcal, proteinG, carbohydrateG, fatG }) =>
        `${daysAWeek} ${dayKind} day${daysAWeek === 1 ? '' : 's'}: ${energyKcal} kcal, ${proteinG} g protein, ${carbohydrateG} g carbohydrate, ${fatG} g fat.`,
    ),
  ].filter((words) => words !== '');
}

import type { Fan } from '#core/course/fan.ts';
import type { CourseAsk } from '#core/cycle/course-ask.ts';
import type { CourseNow } from '#core/cycle/course-now.ts';
import { parseDate } from '#core/units/civil-date.ts';
import type { DayNumber } from '#core/units/quantities.ts';

export type FanQuantity = 'bodyFatPercent' | 'massKg' | 'fatKg' | 'leanKg';

export interface DayValue {
  readonly day: DayNumber;
  readonly value: number;
}

/** So many days before today stand beside the fan. */
const PAST_DAYS = 42;
/** A past day known worse than this says nothing to the eye, kg. */
const SHOWN_SD_KG = 3;

function dayOf(date: string): DayNumber {
  return parseDate(date) ?? 0;
}

/** What the body did: the last six weeks of the estimate. */
export function pastLine(now: CourseNow, quantity: FanQuantity, shown: (kg: number) => number): DayValue[] {
  const { past } = now;
  return past.slice(-PAST_DAYS).flatMap(({ date, massKg, fatKg, leanKg }) => {
    if (massKg.sd > SHOWN_SD_KG) return [];
    const values = {
      massKg: shown(massKg.mean),
      fatKg: shown(fatKg.mean),
      leanKg: shown(leanKg.mean),
      bodyFatPercent: (100 * fatKg.mean) / massKg.mean,
    };
    return [{ day: dayOf(date), value: values[quantity] }];
  });
}

/** The middle of a fan. */
export function fanLine({ dates }: Fan, quantity: FanQuantity, scale: (kg: number) => number): DayValue[] {
  return dates.map((point) => ({ day: dayOf(point.date), value: scale(point[quantity].mean) }));
}

export function fanBand(
  { dates }: Fan,
  quantity: FanQuantity,
  edges: readonly ['q05', 'q95'] | readonly ['q25', 'q75'],
  scale: (kg: number) => number,
): { readonly day: DayNumber; readonly low: number; readonly high: number }[] {
  const [low, high] = edges;
  return dates.map((point) => ({
    day: dayOf(point.date),
    low: scale(point[quantity][low]),
    high: scale(point[quantity][high]),
  }));
}

/** The course as it was adopted, from where the picture begins. */
export function laidLine(
  { adopted }: CourseAsk,
  quantity: FanQuantity,
  from: DayNumber,
  scale: (kg: number) => number,
): DayValue[] {
  return (adopted?.line ?? []).flatMap(({ date, massKg, fatKg, bodyFatPercent }) => {
    const day = dayOf(date);
    const values = { massKg, fatKg, bodyFatPercent, leanKg: massKg - fatKg };
    return day < from ? [] : [{ day, value: scale(values[quantity]) }];
  });
}

/** Bounds of the target that belong to the quantity. */
export function targetLevels(
  { target }: CourseAsk,
  quantity: FanQuantity,
  scale: (kg: number) => number,
): { readonly value: number; readonly words: string }[] {
  if (quantity === 'bodyFatPercent')
    return target.bodyFatPercent ? [{ value: target.bodyFatPercent.max, words: 'at most' }] : [];
  if (quantity !== 'massKg' || !target.massKg) return [];
  const { max, min } = target.massKg;
  return [
    ...(max === undefined ? [] : [{ value: scale(max), words: 'at most' }]),
    ...(min === undefined ? [] : [{ value: scale(min), words: 'at least' }]),
  ];
}

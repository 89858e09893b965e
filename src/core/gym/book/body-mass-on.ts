import type { Ledger } from '#core/journal/ledger.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { Kilograms } from '#core/units/quantities.ts';

const WINDOW_DAYS = 7;

/** Body mass on a day for the gym's purposes: the middle of the week's weigh-ins up to it, else the last before it. */
export type BodyMassOn = (day: string) => Kilograms | undefined;

/** Reads weigh-ins once; days before the first have no body mass. */
export function bodyMassOn(ledger: Ledger): BodyMassOn {
  const weighed = ledger.of('body-weighed').map(({ day, data }) => ({ day, massKg: data.massKg }));
  const known = new Map<string, Kilograms | undefined>();
  return (day) => {
    if (known.has(day)) return known.get(day);
    const since = addDays(day, 1 - WINDOW_DAYS);
    const week = weighed.filter((each) => each.day >= since && each.day <= day).map(({ massKg }) => massKg);
    const massKg = median(week) ?? weighed.findLast((each) => each.day <= day)?.massKg;
    known.set(day, massKg);
    return massKg;
  };
}

function median(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}

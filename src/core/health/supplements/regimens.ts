import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Fact, Ledger } from '#core/journal/ledger.ts';
import { daysBetween, isoWeekday } from '#core/units/civil-date.ts';
import { formatClock } from '#core/units/clock.ts';
import type { Product } from './read-label.ts';
import type { ScheduleRequest } from './schedule-request.ts';

export type Regimen = DataOf<'regimen-set'>;

/** Products by name, each as it was described last; retired ones too, for what was taken of them. */
export function productsIn(ledger: Ledger): ReadonlyMap<string, Product> {
  return new Map(ledger.of('supplement-defined').map(({ data }) => [data.supplement, data]));
}

/** Regimens as they were set last. */
export function regimensIn(ledger: Ledger): readonly Regimen[] {
  return [...new Map(ledger.of('regimen-set').map(({ data }) => [data.regimen, data])).values()];
}

/** Whether a regimen asks for a dose on a day. `trainingDay` undefined: not known, so the dose is counted. */
export function isDue(regimen: Regimen, date: string, trainingDay: boolean | undefined): boolean {
  if (date < regimen.from || (regimen.until !== undefined && date > regimen.until)) return false;
  if (isPaused(regimen, date)) return false;
  const { cadence } = regimen;
  switch (cadence.of) {
    case 'every day':
      return true;
    case 'every n-th day':
      return daysBetween(regimen.from, date) % cadence.days === 0;
    case 'weekdays':
      return cadence.weekdays.includes(isoWeekday(date));
    case 'training days':
      return trainingDay !== false;
    case 'rest days':
      return trainingDay !== true;
  }
}

export function isPaused(regimen: Regimen, date: string): boolean {
  return (regimen.pauses ?? []).some(
    ({ from, until }) => date >= from && (until === undefined || date <= until),
  );
}

/** Medicines of a day at their prescriber's times. */
export function medicinesOn(ledger: Ledger, date: string): { name: string; at: string }[] {
  const declared = [
    ...new Map(ledger.of('medicine-declared').map(({ data }) => [data.medicine, data])).values(),
  ];
  return declared
    .filter(({ from, until }) => date >= from && (until === undefined || date <= until))
    .flatMap(({ name, at }) => at.map((clock) => ({ name, at: clock })));
}

/** What the journal says of a day, as `scheduleSupplements` asks for it; the day's frame and meals come from the day. */
export function scheduleRequestOf(
  ledger: Ledger,
  day: Pick<ScheduleRequest, 'date' | 'events' | 'meals'> & { readonly now?: string },
): ScheduleRequest {
  const { date } = day;
  const products = productsIn(ledger);
  const onDay = ledger.onDay(date);
  const due = regimensIn(ledger).filter((regimen) => isDue(regimen, date, day.events.training !== undefined));
  const taken = onDay.filter((fact): fact is Fact<'supplement-taken'> => fact.kind === 'supplement-taken');
  const skipped = onDay.filter(
    (fact): fact is Fact<'supplement-skipped'> => fact.kind === 'supplement-skipped',
  );
  const drunk = onDay.filter((fact): fact is Fact<'water-drunk'> => fact.kind === 'water-drunk');
  return {
    date,
    ...(day.now === undefined ? {} : { now: day.now }),
    events: day.events,
    meals: day.meals,
    products: [...products.values()],
    doses: due
      .filter(({ supplement }) => products.has(supplement) && products.get(supplement)?.retired !== true)
      .map(({ regimen, supplement, units, tie }) => ({ regimen, supplement, units, tie })),
    taken: taken
      .filter(({ data }) => products.has(data.supplement))
      .map(({ data, minutes }) => ({
        supplement: data.supplement,
        units: data.units,
        at: formatClock(minutes),
        ...(data.regimen === undefined ? {} : { regimen: data.regimen }),
      })),
    skipped: skipped.map(({ data }) => data.regimen),
    medicines: medicinesOn(ledger, date),
    drinks: drunk.map(({ data, minutes }) => ({
      drink: data.drink,
      at: formatClock(minutes),
      ...(data.caffeineMg === undefined ? {} : { caffeineMg: data.caffeineMg }),
    })),
  };
}

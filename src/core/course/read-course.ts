import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import type { Fact, Ledger } from '#core/journal/ledger.ts';
import type { SeasonShow } from './season.ts';
import type { Stretch } from './stretches.ts';
import type { Target } from './target.ts';

type ShowSet = DataOf<'show-set'>;
export type AdoptedCourse = DataOf<'course-adopted'>;
export type DatedEvent = DataOf<'event-dated'>;

/** Shows in force that are not withdrawn, the earliest first; `from` leaves out those before it. */
export function showsFrom(
  ledger: Ledger,
  from: string,
): readonly (SeasonShow & { readonly data: ShowSet })[] {
  return newestBy(ledger.of('show-set'), (data) => data.show)
    .filter((data) => data.withdrawn !== true && data.date >= from)
    .map((data) => ({ show: data.show, date: data.date, target: targetOfShow(data), data }))
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** What a show asks for: the athlete's target and the class's own caps, whichever is tighter. */
export function targetOfShow({ target, class: division }: ShowSet): Target {
  const max = least(target.massMaxKg, division?.massMaxKg);
  const min = most(target.massMinKg, division?.massMinKg);
  const mass = { ...(max === undefined ? {} : { max }), ...(min === undefined ? {} : { min }) };
  return {
    ...(target.bodyFatPercentMax === undefined ? {} : { bodyFatPercent: { max: target.bodyFatPercentMax } }),
    ...(max === undefined && min === undefined ? {} : { massKg: mass }),
  };
}

/** Stretches in force that are not cancelled, the earliest first. */
export function stretchesOf(ledger: Ledger): readonly Stretch[] {
  return newestBy(ledger.of('stretch-planned'), (data) => data.stretch)
    .filter((data) => data.cancelled !== true)
    .map(({ type, from, until, energyKcal, carbohydrateG, weekdays }) => ({
      type,
      from,
      until,
      energyKcal,
      carbohydrateG,
      weekdays,
    }))
    .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
}

/** The course adopted for a show, the newest. */
export function adoptedCourse(ledger: Ledger, show: string): AdoptedCourse | undefined {
  return ledger.of('course-adopted').findLast((fact) => fact.data.show === show)?.data;
}

/** When the preparation for a show began. */
export function preparationStart(ledger: Ledger, show: string): string | undefined {
  return ledger.of('preparation-begun').findLast((fact) => fact.data.show === show)?.data.from;
}

/** The last version of each thing named by a key, in the order the keys were first seen. */
function newestBy<Kind extends KnownKind>(
  facts: readonly Fact<Kind>[],
  key: (data: DataOf<Kind>) => string,
): DataOf<Kind>[] {
  const newest = new Map<string, DataOf<Kind>>();
  for (const { data } of facts) newest.set(key(data), data);
  return [...newest.values()];
}

function least(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined ? b : b === undefined ? a : Math.min(a, b);
}

function most(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined ? b : b === undefined ? a : Math.max(a, b);
}

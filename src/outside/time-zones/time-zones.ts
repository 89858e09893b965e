import type { ClockMinutes, Minutes } from '#core/units/quantities.ts';

const MINUTE_MS = 60_000;
const formats = new Map<string, Intl.DateTimeFormat | undefined>();

/** What the clocks of a zone of the IANA list stand ahead of universal time at a moment; undefined where there is no such zone. */
export function offsetInZone(zone: string, epochMs: number): Minutes | undefined {
  const format = formatOf(zone);
  if (!format) return undefined;
  const parts = new Map(format.formatToParts(epochMs).map(({ type, value }) => [type, Number(value)]));
  const of = (type: Intl.DateTimeFormatPartTypes): number => parts.get(type) ?? 0;
  const local = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'), of('second'));
  return Math.round((local - Math.floor(epochMs / 1000) * 1000) / MINUTE_MS);
}

/** The moment at which the clocks of a zone show a time of a date; undefined where there is no such zone. */
export function momentInZone(zone: string, date: string, clock: ClockMinutes): number | undefined {
  const asIfUniversal = Date.parse(`${date}T00:00:00Z`) + clock * MINUTE_MS;
  const first = offsetInZone(zone, asIfUniversal);
  if (first === undefined) return undefined;
  // Once more: near a change of the clocks the first offset may be the other side's.
  const second = offsetInZone(zone, asIfUniversal - first * MINUTE_MS) ?? first;
  return asIfUniversal - second * MINUTE_MS;
}

/** The zones whose city, or the region it stands in, begins with what is typed; a city's own name first. */
export function zonesNamed(typed: string, most = 8): readonly string[] {
  const wanted = plain(typed);
  if (wanted === '') return [];
  const names = Intl.supportedValuesOf('timeZone');
  const cities = names.filter((name) => plain(cityOf(name)).startsWith(wanted));
  const others = names.filter((name) => !cities.includes(name) && plain(name).includes(wanted));
  return [...cities, ...others].slice(0, most);
}

/** "Port Moresby" of "Pacific/Port_Moresby". */
export function cityOf(zone: string): string {
  return (zone.split('/').at(-1) ?? zone).replaceAll('_', ' ');
}

function plain(name: string): string {
  return name.replaceAll('_', ' ').trim().toLowerCase();
}

/** Making a format takes longer than using it, so each zone's is kept; a name that is no zone is kept as none. */
function formatOf(zone: string): Intl.DateTimeFormat | undefined {
  if (!formats.has(zone)) formats.set(zone, makeFormat(zone));
  return formats.get(zone);
}

function makeFormat(zone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat('en-GB', {
      timeZone: zone,
      calendar: 'iso8601',
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
  } catch (fault) {
    // The one fault this can be: the name is no zone this engine knows.
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

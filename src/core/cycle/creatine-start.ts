import { substanceKey } from '../health/supplements/find-substance.ts';
import type { Ledger } from '../journal/ledger.ts';
import { addDays } from '../units/civil-date.ts';

/** A first dose this soon after the journal begins may be a habit of years: nothing is taken to have begun. Common practice, no source. */
const SETTLING_DAYS = 14;

/**
 * The first day of creatine, where the journal shows that it was not taken before: a first dose, and a first day of
 * its regimen, at least two weeks after the first weigh-in. Its water then is water, not tissue. Undefined where none was taken, or no start was seen.
 */
export function creatineStart(ledger: Ledger, firstWeighed: string, until: string): string | undefined {
  const holding = new Set(
    ledger
      .of('supplement-defined')
      .filter(({ data }) => data.contents.some((line) => substanceKey(line.of) === 'creatine'))
      .map(({ data }) => data.supplement),
  );
  let first: string | undefined;
  const taken = ledger.of('supplement-taken').map(({ day, data }) => ({ day, supplement: data.supplement }));
  // A regimen says since when, although doses may be written down only later.
  const regimens = ledger
    .of('regimen-set')
    .map(({ data }) => ({ day: data.from, supplement: data.supplement }));
  for (const { day, supplement } of [...taken, ...regimens])
    if (holding.has(supplement) && (first === undefined || day < first)) first = day;
  if (first === undefined || first > until) return undefined;
  return first < addDays(firstWeighed, SETTLING_DAYS) ? undefined : first;
}

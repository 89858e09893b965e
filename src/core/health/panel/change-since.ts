import { biologicalVariation } from '#core/tables/biological-variation.ts';
import { referenceChange } from '../equations/reference-change.ts';
import type { ReadPanel } from './read-panel-values.ts';
import type { ReadValue } from './read-value.ts';
import type { Change, Note } from './reading.ts';

/** What a value did since the newest older panel that has it as a plain number. Compared in SI units. */
export function changeSince(
  read: ReadValue,
  earlier: readonly ReadPanel[],
): { readonly change?: Change; readonly notes: readonly Note[] } {
  const known = read.known;
  if (!known || read.comparator !== undefined) return { notes: [] };
  for (const panel of earlier) {
    const before = panel.usable(known.analyte.key);
    if (!before?.known) continue;
    if (before.known.si === 0) return { notes: [] };
    const percent = ((known.si - before.known.si) / before.known.si) * 100;
    const variation = biologicalVariation.get(known.analyte.key);
    if (!variation) return { notes: [notKnown(percent, panel.drawn.date)] };
    const rcv = referenceChange(variation.analyticalPercent, variation.withinPercent);
    const change: Change = {
      since: panel.drawn.date,
      from: { value: before.value, unit: before.unit },
      percent,
      ...rcv,
      real: Math.abs(percent) > rcv.rcvPercent,
    };
    return { change, notes: [...otherList(read, before, panel.drawn.date), ...skewNote(change)] };
  }
  return { notes: [] };
}

function notKnown(percent: number, since: string): Note {
  return {
    code: 'health/variation-unknown',
    words: `${signed(percent)} % since ${since}; how much it wanders in one person is not known here, so the change is not judged.`,
  };
}

/** Two interval lists must not be mixed in one trend: only the numbers are compared. */
function otherList(now: ReadValue, before: ReadValue, since: string): Note[] {
  const [a, b] = [now.ownInterval, before.ownInterval];
  const sameEnds = a?.low === b?.low && a?.high === b?.high && (a === undefined || now.unit === before.unit);
  if (sameEnds) return [];
  return [
    {
      code: 'health/other-interval-list',
      words: `The panel of ${since} came with another interval list: compare the numbers, not the flags; another method reads differently too.`,
    },
  ];
}

function skewNote(change: Change): Note[] {
  const skewed = change.percent >= change.logDownPercent && change.percent <= change.logUpPercent;
  if (!change.real || !skewed) return [];
  return [
    {
      code: 'health/change-near-limit',
      words: `Just past the ${change.rcvPercent.toFixed(1)} % of a real change; allowing for skew it would take ${change.logUpPercent.toFixed(1)} %.`,
      source: 'fraser-1989',
    },
  ];
}

function signed(percent: number): string {
  return `${percent > 0 ? '+' : ''}${percent.toFixed(1)}`;
}

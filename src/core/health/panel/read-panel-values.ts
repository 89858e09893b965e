import type { DrawState, LabValue } from '#core/journal/kinds/lab-value.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { parseClock } from '#core/units/clock.ts';
import type { Sex } from '../equations/filtration.ts';
import { sayValue, type PanelCaution } from './reading.ts';
import { readValue, type ReadValue } from './read-value.ts';

/** A panel's values read, with what may be computed from. */
export interface ReadPanel {
  readonly drawn: DrawState;
  readonly values: readonly ReadValue[];
  /** Analytes given twice with different results: nothing is computed from them. */
  readonly contradicted: ReadonlySet<string>;
  /** The one plain number of an analyte, or undefined: not measured, a bound only, contradicted. */
  usable(key: string): ReadValue | undefined;
  /** The plain number, else the bound that was given for it. */
  shown(key: string): ReadValue | undefined;
}

/** How far two prints of one result may differ by rounding, relative. */
const SAME_RESULT = 0.02;

export function readPanelValues(
  values: readonly LabValue[],
  drawn: DrawState,
  list: string,
  sex: Sex,
): Outcome<ReadPanel> {
  const read: ReadValue[] = [];
  for (const [index, given] of values.entries()) {
    const outcome = readValue(given, index, list, sex);
    if (!outcome.ok) return outcome;
    read.push(outcome.value);
  }
  const byKey = new Map<string, ReadValue>();
  const contradicted = new Set<string>();
  for (const value of read) {
    const key = value.known?.analyte.key;
    if (!value.known || key === undefined || value.comparator !== undefined) continue;
    const first = byKey.get(key);
    if (!first) byKey.set(key, value);
    else if (!sameResult(first, value)) contradicted.add(key);
  }
  return answered({
    drawn,
    values: read,
    contradicted,
    usable: (key) => (contradicted.has(key) ? undefined : byKey.get(key)),
    shown: (key) =>
      contradicted.has(key)
        ? undefined
        : (byKey.get(key) ?? read.find((value) => value.known?.analyte.key === key)),
  });
}

function sameResult(a: ReadValue, b: ReadValue): boolean {
  const [x, y] = [a.known?.si ?? 0, b.known?.si ?? 0];
  return Math.abs(x - y) <= SAME_RESULT * Math.max(Math.abs(x), Math.abs(y));
}

/**
 * Older panels, newest first, each once. A panel that is the same as another (date, time, results) is dropped with a
 * word; one that is not older than the present one is refused.
 */
export function readEarlier(
  panels: readonly { readonly drawn: DrawState; readonly values: readonly LabValue[] }[],
  present: ReadPanel,
  sex: Sex,
): Outcome<{ readonly panels: readonly ReadPanel[]; readonly cautions: readonly PanelCaution[] }> {
  const kept: ReadPanel[] = [];
  const cautions: PanelCaution[] = [];
  for (const [index, panel] of panels.entries()) {
    const outcome = readPanelValues(panel.values, panel.drawn, `earlier.${index}.values`, sex);
    if (!outcome.ok) return outcome;
    const read = outcome.value;
    if ([present, ...kept].some((other) => samePanel(other, read))) {
      cautions.push({
        code: 'health/duplicate-panel',
        urgent: false,
        words: `The panel of ${read.drawn.date} was given twice; it counts once.`,
      });
      continue;
    }
    if (momentOf(read.drawn) >= momentOf(present.drawn)) {
      return refused(
        'health/earlier-not-earlier',
        `earlier.${index}.drawn.date`,
        `The older panel of ${read.drawn.date} is not older than the one of ${present.drawn.date}.`,
        'Correct its date, or give the time of both.',
      );
    }
    kept.push(read);
  }
  kept.sort((a, b) =>
    momentOf(a.drawn) < momentOf(b.drawn) ? 1 : momentOf(a.drawn) > momentOf(b.drawn) ? -1 : 0,
  );
  return answered({ panels: kept, cautions });
}

/** A text that sorts as the draws happened; without a time a draw stands at the start of its day. */
function momentOf(drawn: DrawState): string {
  const minutes = drawn.time === undefined ? 0 : (parseClock(drawn.time) ?? 0);
  return `${drawn.date} ${String(minutes).padStart(4, '0')}`;
}

function samePanel(a: ReadPanel, b: ReadPanel): boolean {
  const fingerprint = (panel: ReadPanel) =>
    panel.values
      .map((value) => `${value.loinc ?? ''} ${sayValue(value)}`)
      .sort()
      .join('; ');
  return a.drawn.date === b.drawn.date && a.drawn.time === b.drawn.time && fingerprint(a) === fingerprint(b);
}

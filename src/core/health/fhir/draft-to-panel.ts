import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { toSi, unitCodeFor } from '../panel/convert-lab-value.ts';
import { analyteByCode, analyteByName, type FoundAnalyte } from '../panel/find-analyte.ts';
import { labAmount } from '../panel/lab-amount.ts';
import type { DraftPanel } from './read-fhir.ts';
import type { DraftValue } from './read-observation.ts';

export type DrawnPanel = DataOf<'blood-drawn'>;

/**
 * A draft as the journal keeps it. Values that still have no unit are left out and answered beside it, to be asked for.
 * `panel` names the new panel; `taking` is what was being taken on that day.
 */
export function panelOfDraft(
  draft: DraftPanel,
  panel: string,
  taking: DrawnPanel['taking'] = [],
): { readonly data: DrawnPanel | undefined; readonly left: readonly DraftValue[] } {
  const complete = draft.values.filter((value) => value.unit !== undefined);
  const left = draft.values.filter((value) => value.unit === undefined);
  if (complete.length === 0) return { data: undefined, left };
  const data: DrawnPanel = {
    panel,
    ...(draft.laboratory === undefined ? {} : { laboratory: draft.laboratory }),
    drawn: { ...draft.drawn },
    taking,
    values: complete.map(labValueOf),
    origin: 'fhir',
    ...(draft.report === undefined ? {} : { report: draft.report }),
  };
  return { data, left };
}

/** Whether a panel of the journal holds what the draft holds: the same moment, and every value of the draft. */
export function alreadyKept(draft: DraftPanel, kept: readonly DrawnPanel[]): boolean {
  return kept.some(
    (panel) =>
      panel.drawn.date === draft.drawn.date &&
      (panel.drawn.time === draft.drawn.time || panel.drawn.time === undefined) &&
      draft.values.every((value) => panel.values.some((other) => sameValue(value, other))),
  );
}

function labValueOf({ loinc, name, value, comparator, unit = '', interval }: DraftValue): LabValue {
  return {
    ...(loinc === undefined ? {} : { loinc }),
    ...(name === undefined ? {} : { name }),
    value,
    ...(comparator === undefined ? {} : { comparator }),
    unit,
    ...(interval === undefined ? {} : { interval: { ...interval } }),
  };
}

/** The same analyte with the same result, whichever code, name and unit either side writes it by. */
function sameValue(draft: DraftValue, kept: LabValue): boolean {
  const [a, b] = [analyteOfValue(draft), analyteOfValue(kept)];
  const amount = labAmount(kept);
  if (draft.comparator !== amount.comparator) return false;
  if (!a || !b) return draft.name === kept.name && draft.value === amount.value;
  if (a.analyte !== b.analyte) return false;
  if (draft.unit === undefined) return draft.value === amount.value;
  const [x, y] = [inSi(a, draft.value, draft.unit), inSi(b, amount.value, kept.unit)];
  if (x === undefined || y === undefined) return draft.value === amount.value;
  return Math.abs(x - y) <= SAME_RESULT * Math.max(x, y);
}

/** Two prints of one result may differ by the rounding of a conversion. */
const SAME_RESULT = 0.01;

function analyteOfValue({
  loinc,
  name,
}: {
  loinc?: string | undefined;
  name?: string | undefined;
}): FoundAnalyte | undefined {
  return (
    (loinc === undefined ? undefined : analyteByCode(loinc)) ??
    (name === undefined ? undefined : analyteByName(name))
  );
}

function inSi({ analyte, massScale }: FoundAnalyte, value: number, printed: string): number | undefined {
  const unit = unitCodeFor(analyte, printed);
  return unit === undefined ? undefined : toSi(analyte, value, unit, massScale);
}

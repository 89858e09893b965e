import type { Studied } from '#core/science/studied-range.ts';
import { filtrationByBoth, filtrationByCreatinine, filtrationByCystatinC } from '../equations/filtration.ts';
import { gather, type DerivedPanel } from './derivations.ts';
import type { PanelView } from './panel-view.ts';

const FILTRATION_UNIT = 'mL/min/{1.73_m2}';
/** Least difference of the two filtrations that is worth a word, mL/min. */
const FILTRATION_GAP = 10;

/** Filtration three ways: by creatinine, by cystatin C, by both. None is hidden behind another. */
export function deriveFiltration(view: PanelView): DerivedPanel {
  const out = gather();
  const { sex, age } = view.request.athlete;
  const person = { sex, ageYears: age };
  const [creatinine, cystatin] = [view.number('creatinine'), view.number('cystatinC')];
  const byCreatinine = creatinine === undefined ? undefined : filtrationByCreatinine(person, creatinine);
  const byCystatin = cystatin === undefined ? undefined : filtrationByCystatinC(person, cystatin);
  if (byCreatinine) {
    out.studied(
      {
        key: 'filtrationByCreatinine',
        name: 'Filtration by creatinine (eGFR)',
        unit: FILTRATION_UNIT,
        formula:
          '142 x min(Scr/k, 1)^a x max(Scr/k, 1)^-1.200 x 0.9938^age x 1.012 if female; k 0.7 F, 0.9 M; a -0.241 F, -0.302 M',
        source: 'inker-2021',
      },
      byCreatinine,
      ['Reads too low in people who carry much muscle, take creatine or ate cooked meat before the draw.'],
    );
  }
  if (byCystatin) {
    out.studied(
      {
        key: 'filtrationByCystatinC',
        name: 'Filtration by cystatin C (eGFR)',
        unit: FILTRATION_UNIT,
        formula: '133 x min(c/0.8, 1)^-0.499 x max(c/0.8, 1)^-1.328 x 0.996^age x 0.932 if female',
        source: 'inker-2012',
      },
      byCystatin,
    );
  }
  if (creatinine !== undefined && cystatin !== undefined) {
    out.studied(
      {
        key: 'filtrationByBoth',
        name: 'Filtration by creatinine and cystatin C (eGFR)',
        unit: FILTRATION_UNIT,
        formula:
          '135 x min(Scr/k, 1)^a x max(Scr/k, 1)^-0.544 x min(c/0.8, 1)^-0.323 x max(c/0.8, 1)^-0.778 x 0.9961^age x 0.963 if female; a -0.219 F, -0.144 M',
        source: 'inker-2021',
      },
      filtrationByBoth(person, creatinine, cystatin),
      gapNote(byCreatinine, byCystatin),
    );
  }
  return out;
}

function gapNote(
  byCreatinine: Studied<number> | undefined,
  byCystatin: Studied<number> | undefined,
): string[] {
  if (!byCreatinine?.studied || !byCystatin?.studied) return [];
  const gap = byCystatin.value - byCreatinine.value;
  if (Math.abs(gap) < FILTRATION_GAP) return [];
  const why =
    gap > 0
      ? 'muscle mass, creatine and meat raise creatinine, not cystatin C'
      : 'thyroid state, corticosteroids and inflammation raise cystatin C, not creatinine';
  return [
    `By creatinine ${byCreatinine.value.toFixed(0)}, by cystatin C ${byCystatin.value.toFixed(0)}: ${why}. Both are shown; a physician weighs them.`,
  ];
}

import { emergencySymptoms } from '#core/tables/urgent-values.ts';
import { FIB4_POOR_BELOW_AGE } from '../equations/liver-index.ts';
import { isFasted } from './fasted.ts';
import { fromConventional } from './convert-lab-value.ts';
import type { DerivedPanel } from './derivations.ts';
import type { MusclePattern } from './muscle-pattern.ts';
import { disturbingBiotin } from './notes-of-taken.ts';
import type { PanelView } from './panel-view.ts';
import { sayUnit, sayValue, type PanelCaution, type PanelResult } from './reading.ts';

/** Said for the whole panel. What needs care now stands first, whatever else explains it. */
export function panelCautions(
  view: PanelView,
  muscle: MusclePattern,
  derived: DerivedPanel,
  earlier: readonly PanelCaution[],
): PanelCaution[] {
  return [
    ...urgent(view),
    ...unitDoubts(view),
    ...contradictions(view),
    ...(muscle.caution ? [muscle.caution] : []),
    ...biotin(view),
    ...creatine(view),
    ...state(view),
    ...promoted(view),
    ...youngIndex(view, derived),
    ...taken(view),
    ...derived.withheld.map(
      ({ name, reason }): PanelCaution => ({
        code: 'health/withheld',
        urgent: false,
        words: `${name}: ${reason}`,
      }),
    ),
    ...earlier,
    notAdvice,
  ];
}

const notAdvice: PanelCaution = {
  code: 'health/not-medical-advice',
  urgent: false,
  words: `This is not medical advice and no diagnosis; a physician reads the panel with you. Symptoms go before numbers: with ${emergencySymptoms} call emergency care, whatever stands here.`,
};

function urgent(view: PanelView): PanelCaution[] {
  const found = view.results.filter((result) => result.flag === 'seek care now');
  const troponin = view.results.filter(
    (result) => result.read.troponin && result.position !== 'in' && !found.includes(result),
  );
  return [
    ...found.map((result): PanelCaution => {
      const limit = result.urgent;
      return {
        code: 'health/seek-care-now',
        urgent: true,
        words: `${sayValue(result.read)}: seek care now. ${limitWords(result)}${limit?.words ? ` ${limit.words}` : ''} Call the laboratory's or your physician's urgent line or emergency care today; do not train, and do not wait for a repeat here.`,
        ...(limit ? { source: limit.source } : {}),
      };
    }),
    ...troponin.map(
      (result): PanelCaution => ({
        code: 'health/troponin',
        urgent: true,
        words: `${sayValue(result.read)}: no interval is known here. Above the laboratory's limit it means heart muscle until a physician says otherwise: seek care now.`,
        source: 'critical-memory',
      }),
    ),
  ];
}

function limitWords(result: PanelResult): string {
  const { known, unit } = result.read;
  if (!known || !result.urgent) return '';
  const { low, high } = result.urgent;
  const [end, side] =
    low !== undefined && known.conventional <= low * 1.000001 ? [low, 'below'] : [high, 'above'];
  if (end === undefined) return '';
  const inUnit = Number(fromConventional(known.analyte, end, unit, known.massScale).toPrecision(4));
  return `It is at or ${side} ${inUnit} ${sayUnit(unit)}, a critical value.`;
}

function unitDoubts(view: PanelView): PanelCaution[] {
  return view.results.flatMap((result) => {
    const doubt = result.read.known?.unitDoubt;
    return doubt === undefined
      ? []
      : [{ code: 'health/unit-suspect', urgent: false, words: `${doubt} Compare it with the report.` }];
  });
}

function contradictions(view: PanelView): PanelCaution[] {
  return [...view.panel.contradicted].map((key) => {
    const given = view.panel.values.filter((value) => value.known?.analyte.key === key);
    return {
      code: 'health/given-twice',
      urgent: false,
      words: `${given.map(sayValue).join(' and ')} were both given: which one counts? Nothing is computed from it until one is removed.`,
    };
  });
}

function biotin(view: PanelView): PanelCaution[] {
  if (!disturbingBiotin(view)) return [];
  const mimic = view.isLow('tsh') && (view.isHigh('ft4') || view.isHigh('ft3'));
  return [
    {
      code: 'health/biotin',
      urgent: false,
      source: 'fda-biotin-2019',
      words: `Biotin is being taken: it falsifies immunoassays, troponin too. Tell the laboratory and repeat after a pause (72 h commonly advised, none guaranteed).${
        mimic
          ? ' Low TSH with high free thyroid hormone on biotin looks like an overactive thyroid without being one: repeat before anything is treated.'
          : ''
      }`,
    },
  ];
}

function creatine(view: PanelView): PanelCaution[] {
  if (!view.takes('creatine') || view.number('creatinine') === undefined) return [];
  const asked = view.number('cystatinC') === undefined ? ' Ask for cystatin C.' : '';
  return [
    {
      code: 'health/creatine',
      urgent: false,
      source: 'vilar-neto-2020',
      words: `Creatine is being taken: creatinine reads higher and the filtration computed from it lower, without harm to the kidney.${asked}`,
    },
  ];
}

function state(view: PanelView): PanelCaution[] {
  const cautions: PanelCaution[] = [];
  const measured = (keys: readonly string[]) => keys.some((key) => view.result(key) !== undefined);
  if (isFasted(view) === false && measured(['glucose', 'insulin', 'triglycerides'])) {
    cautions.push({
      code: 'health/not-fasting',
      urgent: false,
      source: 'simundic-2014',
      words: `Drawn ${view.request.drawn.fastedHours} h after food: glucose, insulin and triglycerides, and what is computed from them, are not fasting values.`,
    });
  }
  if (view.request.drawn.haemolysed) {
    cautions.push({
      code: 'health/haemolysed',
      urgent: false,
      source: 'draw-practice',
      words:
        'Red cells burst in the tube: potassium, AST and LDH read falsely high. Have it drawn again; until then a critical value counts.',
    });
  }
  const deficit = view.request.diet?.deficitKcalPerDay;
  const lowered = ['ft3', 't3', 'testosterone', 'lh'].filter((key) => view.isLow(key));
  if (lowered.length > 0 && (deficit === undefined || deficit > 0)) {
    const names = lowered.map((key) => view.result(key)?.read.name).join(', ');
    cautions.push({
      code: 'health/energy-deficit',
      urgent: false,
      source: 'mountjoy-2023',
      words: `Low: ${names}. That is what too little energy for too long does; bone, hormones and mood go with it. Show it to a physician and weigh the deficit.`,
    });
  }
  return cautions;
}

/** Notes on one value that can mislead the reading of the whole panel. */
const promotedCodes = [
  'health/testosterone-late',
  'health/testosterone-time-not-known',
  'health/testosterone-fed',
  'health/haemolysis-possible',
];

function promoted(view: PanelView): PanelCaution[] {
  return view.results.flatMap((result) =>
    result.notes
      .filter(({ code }) => promotedCodes.includes(code))
      .map((note): PanelCaution => ({ ...note, urgent: false, words: `${result.read.name}: ${note.words}` })),
  );
}

function youngIndex(view: PanelView, { derived }: DerivedPanel): PanelCaution[] {
  if (view.request.athlete.age >= FIB4_POOR_BELOW_AGE || !derived.some(({ key }) => key === 'fib4'))
    return [];
  return [
    {
      code: 'health/index-young',
      urgent: false,
      source: 'mcpherson-2017',
      words: `FIB-4 is poor below ${FIB4_POOR_BELOW_AGE} years: do not lean on it.`,
    },
  ];
}

/** Substances that are not known here, and prohibited or refused ones, said without judgement: a physician must know. */
function taken(view: PanelView): PanelCaution[] {
  const unknown = view.taken.filter((item) => item.key === undefined).map((item) => item.name);
  if (unknown.length === 0) return [];
  return [
    {
      code: 'health/substance-not-known',
      urgent: false,
      words: `Not known here, so nothing is said of what it does to a value: ${unknown.join(', ')}. Name it to the physician.`,
    },
  ];
}

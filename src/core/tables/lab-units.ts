/**
 * Units of laboratory results as UCUM writes them (case-sensitive), by what they measure and how many of the kind's
 * base unit each is. All but the katals stand in the standard's list of common codes (tested against the FHIR R4
 * value set "ucum-common"); kat is a base unit of UCUM that takes prefixes.
 */
export type UnitMeasure =
  | 'mass per volume'
  | 'amount per volume'
  | 'enzyme activity per volume'
  | 'arbitrary units per volume'
  | 'count per volume'
  | 'share'
  | 'cell volume'
  | 'cell mass'
  | 'cell amount'
  | 'sedimentation'
  | 'filtration';

export interface LabUnit {
  readonly code: string;
  readonly measure: UnitMeasure;
  /** How many base units of the measure: g/L, mol/L, U/L, [IU]/L, per L, 1, fL, pg, fmol, mm/h, mL/min/1.73 m2. */
  readonly baseUnits: number;
}

const codes: Readonly<Record<UnitMeasure, Readonly<Record<string, number>>>> = {
  'mass per volume': {
    'g/dL': 10,
    'g/L': 1,
    'mg/mL': 1,
    'mg/dL': 1e-2,
    'mg/L': 1e-3,
    'ug/mL': 1e-3,
    'ug/dL': 1e-5,
    'ug/L': 1e-6,
    'ng/mL': 1e-6,
    'ng/dL': 1e-8,
    'ng/L': 1e-9,
    'pg/mL': 1e-9,
  },
  'amount per volume': {
    'mol/L': 1,
    'mmol/L': 1e-3,
    'umol/L': 1e-6,
    'nmol/L': 1e-9,
    'pmol/L': 1e-12,
    'meq/L': 1e-3,
  },
  'enzyme activity per volume': { 'U/L': 1, 'U/mL': 1000, 'ukat/L': 60, 'nkat/L': 0.06 },
  'arbitrary units per volume': {
    '[IU]/L': 1,
    '[IU]/mL': 1000,
    'm[IU]/L': 1e-3,
    'm[IU]/mL': 1,
    'u[IU]/mL': 1e-3,
  },
  'count per volume': {
    '/uL': 1e6,
    '10*3/uL': 1e9,
    '10*6/uL': 1e12,
    '10*6/L': 1e6,
    '10*9/L': 1e9,
    '10*12/L': 1e12,
  },
  share: { '%': 0.01, 'L/L': 1, '1': 1, 'mmol/mol': 1e-3 },
  'cell volume': { fL: 1 },
  'cell mass': { pg: 1 },
  'cell amount': { fmol: 1 },
  sedimentation: { 'mm/h': 1 },
  filtration: { 'mL/min/{1.73_m2}': 1 },
};

export const labUnits: ReadonlyMap<string, LabUnit> = new Map(
  (Object.keys(codes) as UnitMeasure[]).flatMap((measure) =>
    Object.entries(codes[measure]).map(([code, baseUnits]) => [code, { code, measure, baseUnits }] as const),
  ),
);

/** Prints that no rule below covers. */
const printed: readonly (readonly [string, string])[] = [
  ['mEq/L', 'meq/L'],
  ['mEq/l', 'meq/L'],
  ['IU/L', '[IU]/L'],
  ['mU/L', 'm[IU]/L'],
  ['mU/l', 'm[IU]/L'],
  ['mU/mL', 'm[IU]/mL'],
  ['mU/ml', 'm[IU]/mL'],
  ['uU/mL', 'u[IU]/mL'],
  ['uU/ml', 'u[IU]/mL'],
  ['\u00B5U/mL', 'u[IU]/mL'],
  ['\u00B5U/ml', 'u[IU]/mL'],
  ['\u03BCU/mL', 'u[IU]/mL'],
  ['\u03BCU/ml', 'u[IU]/mL'],
  ['K/uL', '10*3/uL'],
  ['k/uL', '10*3/uL'],
  ['K/\u00B5L', '10*3/uL'],
  ['Thousand/uL', '10*3/uL'],
  ['thou/uL', '10*3/uL'],
  ['/nL', '10*9/L'],
  ['/nl', '10*9/L'],
  ['G/L', '10*9/L'],
  ['G/l', '10*9/L'],
  ['Gpt/L', '10*9/L'],
  ['M/uL', '10*6/uL'],
  ['M/\u00B5L', '10*6/uL'],
  ['Million/uL', '10*6/uL'],
  ['mill/uL', '10*6/uL'],
  ['/pL', '10*12/L'],
  ['/pl', '10*12/L'],
  ['T/L', '10*12/L'],
  ['T/l', '10*12/L'],
  ['Tpt/L', '10*12/L'],
  ['cells/uL', '/uL'],
  ['cells/\u00B5L', '/uL'],
  ['/mm3', '/uL'],
  ['mm/hr', 'mm/h'],
  ['mm/1h', 'mm/h'],
  ['percent', '%'],
  ['l/l', 'L/L'],
  ['mL/min/1.73m2', 'mL/min/{1.73_m2}'],
  ['mL/min/1.73 m2', 'mL/min/{1.73_m2}'],
  ['mL/min/1.73m\u00B2', 'mL/min/{1.73_m2}'],
  ['mL/min/1.73 m\u00B2', 'mL/min/{1.73_m2}'],
  ['mL/min/1.73', 'mL/min/{1.73_m2}'],
  ['ml/min/1.73m2', 'mL/min/{1.73_m2}'],
  ['ml/min/1.73 m2', 'mL/min/{1.73_m2}'],
  ['mL/min/{1.73m2}', 'mL/min/{1.73_m2}'],
];

/**
 * Ways laboratories print the codes above that are not UCUM but cannot be mistaken. Letters' case still counts: "Mg/dL"
 * would be a thousand million times "mg/dL" and stays unknown.
 */
export const unitSpellings: ReadonlyMap<string, string> = spellings();

function spellings(): Map<string, string> {
  const known = new Map<string, string>(printed);
  for (const code of labUnits.keys()) {
    for (const way of waysToPrint(code)) if (!labUnits.has(way)) known.set(way, code);
  }
  return known;
}

/** Small l for litre; the micro sign, the Greek letter or mc for micro; IU without brackets; x10^n for 10*n. */
function waysToPrint(code: string): string[] {
  const litre = (text: string) => [text, text.replace(/L$/, 'l').replace(/^L\//, 'l/')];
  const micro = (text: string) => [
    text,
    ...['\u00B5', '\u03BC', 'mc'].map((sign) => text.replace(/\bu(?=[a-zA-Z[])/g, sign)),
  ];
  const arbitrary = (text: string) => [text, text.replace('[IU]', 'IU')];
  const power = (text: string) => [
    text,
    ...['10^', 'x10^', 'x 10^', '10e', '10E', 'x10e', 'x10E'].map((ten) => text.replace('10*', ten)),
  ];
  return [code].flatMap(arbitrary).flatMap(power).flatMap(micro).flatMap(litre);
}

/**
 * Conversions that hold for one analyte only: how many of its conventional unit one of the given unit is.
 * Hemoglobin by moles counts the chain, 16 114.5 g/mol; calcium and magnesium carry two charges; prolactin by the third
 * international standard 84/500, 21.2 m[IU] to the ug (all from memory, common in European reports).
 */
export const extraUnits: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  hgb: { 'mmol/L': 1.61145 },
  mchc: { 'mmol/L': 1.61145, '%': 1 },
  mch: { fmol: 16.1145 },
  calcium: { 'meq/L': 0.5 / 0.2495 },
  magnesium: { 'meq/L': 0.5 / 0.4114 },
  prolactin: { 'm[IU]/L': 1 / 21.2, 'u[IU]/mL': 1 / 21.2 },
};

/** Analytes whose amount may also be written in milliequivalents: they carry one charge. */
export const singleCharge: readonly string[] = ['sodium', 'potassium', 'chloride', 'co2'];

/** Analytes whose activity laboratories print as "IU/L": for these it is the enzyme unit U/L. */
export const enzymes: readonly string[] = ['alp', 'alt', 'ast', 'ggt', 'ldh', 'ck'];

/**
 * Analytes of an adult blood panel: codes, units and the factor from the conventional unit to the SI unit.
 *
 * Codes are LOINC; every one passes the Mod-10 check digit (tested). The standard gives a result in moles another code
 * than the same result in grams: `loincSi`. Units are UCUM, case-sensitive. Factors are the printed ones of the
 * medical journals' SI table (source "jama-si"); each agrees with the molar mass beside it to 0.4 % (tested).
 * Enzymes: 1 U is 1 umol a minute, so 60 U/L are 1 ukat/L exactly. Hemoglobin A1c has no factor; see the equation.
 */
export interface LabAnalyte {
  readonly key: string;
  readonly name: string;
  /** Code of a result in `unit`. */
  readonly loinc: string;
  /** Code of a result in `unitSi`; the same where the standard has one code for both. */
  readonly loincSi: string;
  readonly unit: string;
  readonly unitSi: string;
  /** Multiplies a value in `unit` into `unitSi`; undefined where the two are not proportional. */
  readonly siPerUnit: number | undefined;
  /** g/mol behind the factor where it goes from grams to moles; undefined elsewhere. */
  readonly molarMassGPerMol: number | undefined;
}

type Row = readonly [
  key: string,
  name: string,
  loinc: string,
  loincSi: string | undefined,
  unit: string,
  unitSi: string,
  siPerUnit: number | undefined,
  molarMassGPerMol: number | undefined,
];

const same = undefined;
const none = undefined;
const PER_SIXTY = 1 / 60;

/** Blood count. */
const bloodCountRows: readonly Row[] = [
  ['wbc', 'White blood cells', '6690-2', same, '10*3/uL', '10*9/L', 1, none],
  ['rbc', 'Red blood cells', '789-8', same, '10*6/uL', '10*12/L', 1, none],
  ['hgb', 'Hemoglobin', '718-7', same, 'g/dL', 'g/L', 10, none],
  ['hct', 'Hematocrit', '4544-3', same, '%', 'L/L', 0.01, none],
  ['mcv', 'Mean cell volume', '787-2', same, 'fL', 'fL', 1, none],
  ['mch', 'Mean cell hemoglobin', '785-6', same, 'pg', 'pg', 1, none],
  ['mchc', 'Mean cell hemoglobin concentration', '786-4', same, 'g/dL', 'g/L', 10, none],
  ['rdw', 'Red cell distribution width', '788-0', same, '%', '%', 1, none],
  ['plt', 'Platelets', '777-3', same, '10*3/uL', '10*9/L', 1, none],
  ['neut', 'Neutrophils', '751-8', same, '10*3/uL', '10*9/L', 1, none],
  ['esr', 'Sedimentation rate', '4537-7', same, 'mm/h', 'mm/h', 1, none],
];

/** Salts, kidney, liver, muscle, protein. */
const chemistryRows: readonly Row[] = [
  ['sodium', 'Sodium', '2951-2', same, 'mmol/L', 'mmol/L', 1, none],
  ['potassium', 'Potassium', '2823-3', same, 'mmol/L', 'mmol/L', 1, none],
  ['chloride', 'Chloride', '2075-0', same, 'mmol/L', 'mmol/L', 1, none],
  ['co2', 'Bicarbonate', '2028-9', same, 'mmol/L', 'mmol/L', 1, none],
  ['calcium', 'Calcium, total', '17861-6', '2000-8', 'mg/dL', 'mmol/L', 0.2495, 40.078],
  ['magnesium', 'Magnesium', '19123-9', '2601-3', 'mg/dL', 'mmol/L', 0.4114, 24.305],
  ['phosphate', 'Phosphate', '2777-1', '14879-1', 'mg/dL', 'mmol/L', 0.3229, 30.974],
  ['bun', 'Urea nitrogen', '3094-0', '22664-7', 'mg/dL', 'mmol/L', 0.357, 28.0134],
  ['creatinine', 'Creatinine', '2160-0', '14682-9', 'mg/dL', 'umol/L', 88.4, 113.12],
  [
    'egfrCr2021',
    'eGFR by creatinine (CKD-EPI 2021)',
    '98979-8',
    same,
    'mL/min/{1.73_m2}',
    'mL/min/{1.73_m2}',
    1,
    none,
  ],
  ['cystatinC', 'Cystatin C', '33863-2', same, 'mg/L', 'mg/L', 1, none],
  ['uricAcid', 'Uric acid', '3084-1', '14933-6', 'mg/dL', 'umol/L', 59.48, 168.11],
  ['totalProtein', 'Protein, total', '2885-2', same, 'g/dL', 'g/L', 10, none],
  ['albumin', 'Albumin', '1751-7', same, 'g/dL', 'g/L', 10, none],
  ['bilirubin', 'Bilirubin, total', '1975-2', '14631-6', 'mg/dL', 'umol/L', 17.1, 584.66],
  ['alp', 'Alkaline phosphatase', '6768-6', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['alt', 'ALT', '1742-6', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['ast', 'AST', '1920-8', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['ggt', 'GGT', '2324-2', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['ldh', 'LDH', '2532-0', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['ck', 'Creatine kinase', '2157-6', same, 'U/L', 'ukat/L', PER_SIXTY, none],
  ['crp', 'C-reactive protein', '1988-5', same, 'mg/L', 'mg/L', 1, none],
  ['hscrp', 'C-reactive protein, high sensitivity', '30522-7', same, 'mg/L', 'mg/L', 1, none],
  ['homocysteine', 'Homocysteine', '13965-9', same, 'umol/L', 'umol/L', 1, none],
];

/** Sugar and fats. */
const fuelRows: readonly Row[] = [
  ['glucose', 'Glucose', '2345-7', '14749-6', 'mg/dL', 'mmol/L', 0.0555, 180.156],
  ['hba1c', 'Hemoglobin A1c', '4548-4', '59261-8', '%', 'mmol/mol', undefined, none],
  ['insulin', 'Insulin', '20448-7', '14796-7', 'u[IU]/mL', 'pmol/L', 6, none],
  ['cholesterol', 'Cholesterol, total', '2093-3', '14647-2', 'mg/dL', 'mmol/L', 0.02586, 386.65],
  ['hdl', 'HDL cholesterol', '2085-9', '14646-4', 'mg/dL', 'mmol/L', 0.02586, 386.65],
  ['ldlCalc', 'LDL cholesterol, calculated', '13457-7', '39469-2', 'mg/dL', 'mmol/L', 0.02586, 386.65],
  ['nonHdl', 'Non-HDL cholesterol', '43396-1', same, 'mg/dL', 'mmol/L', 0.02586, 386.65],
  ['triglycerides', 'Triglycerides', '2571-8', '14927-8', 'mg/dL', 'mmol/L', 0.01129, 885.4],
  ['apoB', 'Apolipoprotein B', '1884-6', same, 'mg/dL', 'g/L', 0.01, none],
];

/** Hormones. */
const hormoneRows: readonly Row[] = [
  ['tsh', 'TSH', '3016-3', same, 'm[IU]/L', 'm[IU]/L', 1, none],
  ['ft4', 'Free T4', '3024-7', '14920-3', 'ng/dL', 'pmol/L', 12.87, 776.87],
  ['ft3', 'Free T3', '3051-0', '14928-6', 'pg/mL', 'pmol/L', 1.536, 650.97],
  ['t3', 'T3, total', '3053-6', '14930-2', 'ng/dL', 'nmol/L', 0.01536, 650.97],
  ['testosterone', 'Testosterone, total', '2986-8', '14913-8', 'ng/dL', 'nmol/L', 0.03467, 288.42],
  ['freeTestosterone', 'Testosterone, free', '2991-8', '14914-6', 'pg/mL', 'pmol/L', 3.467, 288.42],
  ['shbg', 'SHBG', '13967-5', same, 'nmol/L', 'nmol/L', 1, none],
  ['estradiol', 'Estradiol', '2243-4', '14715-7', 'pg/mL', 'pmol/L', 3.671, 272.38],
  ['lh', 'LH', '10501-5', same, 'm[IU]/mL', '[IU]/L', 1, none],
  ['fsh', 'FSH', '15067-2', same, 'm[IU]/mL', '[IU]/L', 1, none],
  ['prolactin', 'Prolactin', '2842-3', same, 'ng/mL', 'ug/L', 1, none],
  ['cortisol', 'Cortisol', '2143-6', '14675-3', 'ug/dL', 'nmol/L', 27.59, 362.46],
  ['dheas', 'DHEA sulfate', '2191-5', '14688-6', 'ug/dL', 'umol/L', 0.02714, 368.49],
  ['igf1', 'IGF-1', '2484-4', same, 'ng/mL', 'nmol/L', 0.131, 7649],
  ['pth', 'Parathyroid hormone', '2731-8', same, 'pg/mL', 'ng/L', 1, none],
  ['psa', 'PSA', '2857-1', same, 'ng/mL', 'ug/L', 1, none],
];

/** Iron and vitamins. */
const storesRows: readonly Row[] = [
  ['ferritin', 'Ferritin', '2276-4', same, 'ng/mL', 'ug/L', 1, none],
  ['iron', 'Iron', '2498-4', '14798-3', 'ug/dL', 'umol/L', 0.1791, 55.845],
  ['tibc', 'Iron binding capacity', '2500-7', '14800-7', 'ug/dL', 'umol/L', 0.1791, 55.845],
  ['tsat', 'Transferrin saturation', '2502-3', same, '%', '%', 1, none],
  ['vitD', '25-hydroxyvitamin D', '62292-8', '68438-1', 'ng/mL', 'nmol/L', 2.496, 400.64],
  ['b12', 'Vitamin B12', '2132-9', '14685-2', 'pg/mL', 'pmol/L', 0.7378, 1355.37],
  ['folate', 'Folate', '2284-8', '14732-2', 'ng/mL', 'nmol/L', 2.266, 441.4],
];

export const labAnalytes: readonly LabAnalyte[] = [
  ...bloodCountRows,
  ...chemistryRows,
  ...fuelRows,
  ...hormoneRows,
  ...storesRows,
].map(([key, name, loinc, loincSi, unit, unitSi, siPerUnit, molarMassGPerMol]) => ({
  key,
  name,
  loinc,
  loincSi: loincSi ?? loinc,
  unit,
  unitSi,
  siPerUnit,
  molarMassGPerMol,
}));

/** Wherever codes are shown or written to a file, this notice goes with them: the licence of the code list asks it. */
export const LOINC_NOTICE =
  'This material contains content from LOINC (http://loinc.org). LOINC is copyright Regenstrief Institute, Inc. and the LOINC Committee and is available at no cost under the license at http://loinc.org/license. LOINC is a registered United States trademark of Regenstrief Institute, Inc.';

import type { SourceKey } from './sources.ts';

/**
 * How much a value wanders from draw to draw in one healthy person (within) and between people (between), and how
 * exactly laboratories count it (analytical), each a coefficient of variation in percent. The enzymes are those of
 * the EuBIVAS study: 91 healthy adults, ten weekly samples, hard training excluded; people who lift vary more.
 */
export interface BiologicalVariation {
  readonly withinPercent: number;
  readonly betweenPercent: number;
  readonly analyticalPercent: number;
  readonly source: SourceKey;
}

/** Analytical imprecision where nothing better is known: common practice, no source. */
const USUAL_ANALYTICAL_PERCENT = 3;

/** Tightly kept or very exactly counted analytes, for which 3 % would swamp the person's own variation (from memory). */
const analyticalPercent: Readonly<Record<string, number>> = {
  creatinine: 2,
  sodium: 0.8,
  chloride: 1,
  calcium: 1.5,
  mcv: 1,
  hba1c: 1.5,
};

const enzymes: Readonly<Record<string, readonly [within: number, between: number]>> = {
  alt: [9.3, 28.2],
  ast: [9.5, 20.3],
  ggt: [8.9, 41.7],
  alp: [5.3, 24.9],
  ldh: [5.2, 12.6],
  ck: [14.5, 31.5],
};

const others: Readonly<Record<string, readonly [within: number, between: number]>> = {
  wbc: [10.8, 18],
  rbc: [2.8, 6.5],
  hgb: [2.7, 6.2],
  hct: [2.8, 6],
  mcv: [0.8, 4],
  plt: [7.3, 20],
  glucose: [5, 7.5],
  bun: [13.9, 20],
  creatinine: [4.4, 14],
  cystatinC: [3.9, 12.7],
  sodium: [0.5, 1.1],
  potassium: [4.1, 4.5],
  chloride: [1, 1.3],
  co2: [4, 5],
  calcium: [1.8, 2.8],
  magnesium: [2.9, 5.7],
  phosphate: [7.8, 10.7],
  totalProtein: [2.6, 4.7],
  albumin: [2.5, 5.1],
  bilirubin: [20, 30],
  uricAcid: [8.3, 22],
  cholesterol: [5.3, 16],
  hdl: [5.7, 24],
  ldlCalc: [8.3, 25],
  triglycerides: [19.9, 37],
  tsh: [17.9, 36],
  ft4: [4.8, 8],
  ft3: [5, 8],
  testosterone: [10, 20],
  shbg: [9, 40],
  lh: [23, 30],
  fsh: [9, 45],
  prolactin: [25, 40],
  cortisol: [16, 38],
  ferritin: [13, 60],
  iron: [27, 33],
  vitD: [6.8, 30],
  hba1c: [1.2, 5.1],
  insulin: [25, 35],
  crp: [34, 80],
  hscrp: [34, 80],
};

const rows = (table: typeof others, source: SourceKey) =>
  Object.entries(table).map(
    ([key, [withinPercent, betweenPercent]]) =>
      [
        key,
        {
          withinPercent,
          betweenPercent,
          analyticalPercent: analyticalPercent[key] ?? USUAL_ANALYTICAL_PERCENT,
          source,
        },
      ] as const,
  );

export const biologicalVariation: ReadonlyMap<string, BiologicalVariation> = new Map([
  ...rows(enzymes, 'carobene-2017'),
  ...rows(others, 'eflm-variation'),
]);

import type { SourceKey } from './sources.ts';

/** Commonly used adult interval of an analyte, in its conventional unit. A missing end is open. */
export interface LabInterval {
  readonly male: { readonly low?: number; readonly high?: number };
  readonly female: { readonly low?: number; readonly high?: number };
  readonly source: SourceKey;
  /** What the interval presupposes, for the sentence beside it. */
  readonly note?: string;
}

type End = number | undefined;
type Row = readonly [
  male: readonly [End, End],
  female: readonly [End, End],
  source: SourceKey,
  note?: string,
];
const open = undefined;

/** These only fill gaps: the interval printed by the laboratory that ran the sample goes first. */
const rows: Readonly<Record<string, Row>> = {
  wbc: [[4, 11], [4, 11], 'abim-2024'],
  rbc: [[4.2, 5.9], [4.2, 5.9], 'interval-memory'],
  hgb: [[14, 18], [12, 16], 'abim-2024'],
  hct: [[42, 50], [37, 47], 'abim-2024'],
  mcv: [[80, 98], [80, 98], 'abim-2024'],
  mch: [[28, 32], [28, 32], 'abim-2024'],
  mchc: [[33, 36], [33, 36], 'abim-2024'],
  rdw: [[9, 14.5], [9, 14.5], 'abim-2024'],
  plt: [[150, 450], [150, 450], 'abim-2024'],
  neut: [[1.8, 7.7], [1.8, 7.7], 'interval-memory'],
  esr: [[0, 15], [0, 20], 'abim-2024'],
  sodium: [[136, 145], [136, 145], 'abim-2024'],
  potassium: [[3.5, 5], [3.5, 5], 'abim-2024'],
  chloride: [[98, 106], [98, 106], 'abim-2024'],
  co2: [[23, 28], [23, 28], 'abim-2024'],
  calcium: [[8.6, 10.2], [8.6, 10.2], 'abim-2024'],
  magnesium: [[1.6, 2.6], [1.6, 2.6], 'abim-2024'],
  phosphate: [[3, 4.5], [3, 4.5], 'abim-2024'],
  bun: [[8, 20], [8, 20], 'abim-2024'],
  creatinine: [[0.7, 1.3], [0.5, 1.1], 'abim-2024'],
  egfrCr2021: [[90, open], [90, open], 'kdigo-2024'],
  cystatinC: [[0.6, 1], [0.6, 1], 'interval-memory'],
  uricAcid: [[3, 7], [2.5, 7], 'abim-2024'],
  totalProtein: [[5.5, 9], [5.5, 9], 'abim-2024'],
  albumin: [[3.5, 5.5], [3.5, 5.5], 'abim-2024'],
  bilirubin: [[0.3, 1], [0.3, 1], 'abim-2024'],
  alp: [[30, 120], [30, 120], 'abim-2024'],
  alt: [[10, 40], [10, 40], 'abim-2024'],
  ast: [[10, 40], [10, 40], 'abim-2024'],
  ggt: [[9, 50], [8, 40], 'abim-2024'],
  ldh: [[80, 225], [80, 225], 'abim-2024'],
  ck: [[55, 170], [30, 135], 'abim-2024'],
  crp: [[open, 8], [open, 8], 'abim-2024'],
  hscrp: [[open, 1], [open, 1], 'pearson-2003', 'band of lowest risk; 1 to 3 mg/L is the middle band'],
  homocysteine: [[5, 15], [5, 15], 'abim-2024'],
  glucose: [[70, 99], [70, 99], 'abim-2024', 'fasting'],
  hba1c: [[4, 5.6], [4, 5.6], 'ada-standards'],
  insulin: [[open, 20], [open, 20], 'abim-2024', 'fasting'],
  cholesterol: [[open, 200], [open, 200], 'ncep-2002'],
  hdl: [[40, open], [50, open], 'ncep-2002'],
  ldlCalc: [
    [open, 100],
    [open, 100],
    'ncep-2002',
    "optimal class; who treats whom is a physician's judgement",
  ],
  nonHdl: [[open, 130], [open, 130], 'ncep-2002', 'optimal class'],
  triglycerides: [[open, 150], [open, 150], 'ncep-2002', 'fasting'],
  apoB: [[open, 100], [open, 100], 'interval-memory'],
  tsh: [[0.5, 4], [0.5, 4], 'abim-2024'],
  ft4: [[0.8, 1.8], [0.8, 1.8], 'abim-2024'],
  ft3: [[2.3, 4.2], [2.3, 4.2], 'abim-2024'],
  t3: [[80, 180], [80, 180], 'abim-2024'],
  testosterone: [[291, 1100], [18, 54], 'abim-2024', 'drawn in the morning, fasting'],
  freeTestosterone: [[70, 300], [open, open], 'abim-2024'],
  shbg: [[10, 57], [18, 144], 'interval-memory'],
  estradiol: [[10, 40], [10, 400], 'abim-2024', 'in women it follows the phase of the cycle'],
  lh: [[1.5, 9.3], [1.9, 100], 'interval-memory', 'in women it follows the phase of the cycle'],
  fsh: [[1.5, 12.4], [1.5, 135], 'interval-memory', 'in women it follows the phase of the cycle'],
  prolactin: [[open, 20], [open, 25], 'abim-2024'],
  cortisol: [[5, 25], [5, 25], 'abim-2024', 'drawn about 08:00'],
  dheas: [[89, 457], [44, 332], 'abim-2024'],
  pth: [[10, 65], [10, 65], 'abim-2024'],
  psa: [[0, 4], [open, open], 'abim-2024'],
  ferritin: [[24, 336], [11, 307], 'abim-2024'],
  iron: [[50, 150], [50, 150], 'abim-2024'],
  tibc: [[250, 310], [250, 310], 'interval-memory'],
  tsat: [[20, 50], [20, 50], 'abim-2024'],
  vitD: [[20, 60], [20, 60], 'iom-2011-vitamin-d', 'sufficient from 20 ng/mL; upper end from memory'],
  b12: [[200, 800], [200, 800], 'abim-2024'],
  folate: [[1.8, 9], [1.8, 9], 'abim-2024'],
};

const ends = ([low, high]: readonly [End, End]) => ({
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
});

export const labIntervals: ReadonlyMap<string, LabInterval> = new Map(
  Object.entries(rows).map(([key, [male, female, source, note]]) => [
    key,
    { male: ends(male), female: ends(female), source, ...(note === undefined ? {} : { note }) },
  ]),
);

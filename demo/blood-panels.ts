import type { LabValue } from '#core/journal/kinds/lab-value.ts';
import type { Scribe } from './scribe.ts';

const laboratory = 'Hallmouth Infirmary laboratory';

type Line = readonly [
  name: string,
  first: number,
  second: number,
  unit: string,
  low?: number | undefined,
  high?: number,
];

/** Two mornings of the same invented laboratory; the second came the morning after the legs. */
const lines: readonly Line[] = [
  ['Hemoglobin', 13.4, 12.9, 'g/dL', 12, 15.5],
  ['Hematocrit', 40.1, 38.8, '%', 36, 46],
  ['White blood cells', 5.6, 5.1, '10*3/uL', 4, 10],
  ['Platelets', 248, 239, '10*3/uL', 150, 400],
  ['Ferritin', 31, 24, 'ng/mL', 15, 150],
  ['Sodium', 140, 139, 'mmol/L', 135, 145],
  ['Potassium', 4.3, 4.5, 'mmol/L', 3.5, 5.1],
  ['Creatinine', 0.88, 1.01, 'mg/dL', 0.5, 0.95],
  ['Cystatin C', 0.79, 0.8, 'mg/L', 0.6, 1],
  ['AST', 24, 82, 'U/L', undefined, 35],
  ['ALT', 21, 51, 'U/L', undefined, 35],
  ['Creatine kinase', 164, 1860, 'U/L', undefined, 170],
  ['GGT', 14, 13, 'U/L', undefined, 40],
  ['Alkaline phosphatase', 62, 60, 'U/L', 35, 105],
  ['Bilirubin, total', 0.6, 0.7, 'mg/dL', undefined, 1.2],
  ['Albumin', 4.4, 4.3, 'g/dL', 3.5, 5],
  ['Glucose', 84, 79, 'mg/dL', 70, 99],
  ['Insulin', 5.1, 3.4, 'u[IU]/mL'],
  ['Cholesterol, total', 176, 188, 'mg/dL', undefined, 200],
  ['HDL cholesterol', 68, 74, 'mg/dL', 50],
  ['Triglycerides', 72, 61, 'mg/dL', undefined, 150],
  ['TSH', 1.8, 1.6, 'm[IU]/L', 0.4, 4],
  ['Free T4', 1.2, 1.1, 'ng/dL', 0.8, 1.8],
  ['Free T3', 3.2, 2.9, 'pg/mL', 2, 4.4],
  ['25-hydroxyvitamin D', 26, 34, 'ng/mL', 20, 50],
];

/** The morning of a panel as it was entered in the evening. `which` 0 is the first. */
export function writePanel(scribe: Scribe, day: string, which: 0 | 1): void {
  scribe.write(day, '19:20', 'blood-drawn', {
    panel: which === 0 ? 'panel-early' : 'panel-after-legs',
    laboratory,
    drawn: {
      date: day,
      time: which === 0 ? '07:40' : '07:35',
      fastedHours: 12,
    },
    taking: [
      { substance: 'creatine', mgPerDay: 5000 },
      { substance: 'biotin', mgPerDay: 0.05, hoursSinceLast: 24 },
    ],
    values: [...lines.map((line) => valueOf(line, which)), crpOf(which)],
    origin: 'typed',
  });
}

function valueOf([name, first, second, unit, low, high]: Line, which: 0 | 1): LabValue {
  const interval = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
  return {
    name,
    value: which === 0 ? first : second,
    unit,
    ...(Object.keys(interval).length > 0 && { interval }),
  };
}

/** Below what the method can count, the first time. */
function crpOf(which: 0 | 1): LabValue {
  return {
    name: 'C-reactive protein',
    value: which === 0 ? '<0.6' : 1.9,
    unit: 'mg/L',
    interval: { high: 5 },
  };
}

/** The third draw, a week ahead of the story's today. */
export function writeDrawPlan(scribe: Scribe, day: string, date: string): void {
  scribe.write(day, '20:40', 'draw-planned', {
    draw: 'draw-before-the-end',
    date,
    at: '07:40',
    laboratory,
    analytes: [
      'AST',
      'ALT',
      'Creatine kinase',
      'GGT',
      'Creatinine',
      'Cystatin C',
      'Ferritin',
      'Iron',
      'Free T3',
    ],
    fasting: true,
  });
}

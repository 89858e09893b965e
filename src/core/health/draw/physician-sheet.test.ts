import { describe, expect, it } from 'vitest';
import { readPanel } from '../panel/read-panel.ts';
import { physicianSheet, type PhysicianSheet } from './physician-sheet.ts';

function sheet(values: object[], more: object = {}): PhysicianSheet {
  const reading = readPanel({
    athlete: { sex: 'male', age: 35 },
    drawn: { date: '2027-03-01', time: '07:30', hoursSinceHardTraining: 30 },
    taking: ['creatine', { substance: 'biotin', mgPerDay: 5, hoursSinceLast: 20 }],
    values,
    ...more,
  });
  if (!reading.ok) throw new Error(reading.problem.message);
  return physicianSheet(reading.value, { training: ['Legs on 2027-02-28'] });
}

const values = [
  { name: 'GGT', value: 20, unit: 'U/L' },
  { name: 'ALT', value: 60, unit: 'U/L' },
  { name: 'potassium', value: 6.3, unit: 'mmol/L' },
  { name: 'creatinine', value: 1.4, unit: 'mg/dL', interval: { low: 0.7, high: 1.2 } },
];
const earlier = [{ drawn: { date: '2027-01-05' }, values: [{ name: 'ALT', value: 0.5, unit: 'ukat/L' }] }];

describe('the sheet for the physician', () => {
  it('[HLT-53] puts what needs care now first and alone, then what is out of its interval', () => {
    const page = sheet(values);
    expect(page.urgent).toHaveLength(1);
    expect(page.rows.map(({ name, flag }) => [name, flag])).toEqual([
      ['Potassium', 'CARE NOW'],
      ['ALT', 'HIGH'],
      ['Creatinine', 'HIGH'],
      ['GGT', ''],
    ]);
    expect(page.cautions.join()).not.toContain('seek care now.');
  });

  it('[HLT-53] shows older values in today’s unit, and whether the change is real', () => {
    const row = sheet(values, { earlier }).rows.find(({ name }) => name === 'ALT');
    expect(row?.before).toEqual([{ date: '2027-01-05', value: '30' }]);
    expect(row?.change).toBe('+100 %, real');
  });

  it('[HLT-53] says what was taken, when, and the state of the draw, unknown things too', () => {
    const page = sheet(values);
    expect(page.taken).toEqual(['creatine', 'biotin, 5 mg a day, last 20 h before the draw']);
    expect(page.drawn).toContain('Fasted: not known');
    expect(page.drawn).toContain('Since hard training: 30 h');
    expect(page.training).toEqual(['Legs on 2027-02-28']);
  });

  it('[HLT-53] marks intervals of the table with a star, the laboratory’s own without', () => {
    const rows = sheet(values).rows;
    expect(rows.find(({ name }) => name === 'Creatinine')?.interval).toBe('0.7 - 1.2');
    expect(rows.find(({ name }) => name === 'ALT')?.interval).toBe('10 - 40 *');
  });

  it('[HLT-53] asks what the panel raises: today’s danger first, muscle, creatine, biotin, the way on', () => {
    const { questions } = sheet(values);
    expect(questions[0]).toContain('what is to be done today');
    expect(questions.join(' ')).toContain('could it be muscle');
    expect(questions.join(' ')).toContain('cystatin C');
    expect(questions.join(' ')).toContain('biotin');
    expect(questions.at(-1)).toContain('May I go on preparing');
    expect(sheet([values[0] ?? {}]).questions).toHaveLength(2);
  });
});

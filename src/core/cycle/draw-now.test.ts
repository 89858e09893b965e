import { describe, expect, it } from 'vitest';
import { datedEntry as entry } from '../../../test/journal/dated-entry.ts';
import type { PlannedDraw } from '../health/draw/draw-plan.ts';
import { createLedger } from '../journal/ledger.ts';
import { drawAhead, drawLinesOn, regimensForDraw } from './draw-now.ts';

const draw: PlannedDraw = {
  draw: 'd',
  date: '2027-03-12',
  at: '07:30',
  analytes: ['TSH', 'Iron'],
  fasting: true,
};
const regimen = (name: string, supplement: string) => ({
  regimen: name,
  supplement,
  units: 1,
  tie: { to: 'first meal' },
  cadence: { of: 'every day' },
  from: '2027-01-01',
});
const shelf = [
  entry('supplement-defined', {
    supplement: 'biotin',
    name: 'Biotin',
    unit: 'capsule',
    perUnits: 1,
    contents: [{ of: 'biotin', amount: 5, unit: 'mg' }],
  }),
  entry('supplement-defined', {
    supplement: 'iron',
    name: 'Iron',
    unit: 'capsule',
    perUnits: 1,
    contents: [{ of: 'iron', amount: 25, unit: 'mg' }],
  }),
  entry('regimen-set', regimen('b', 'biotin')),
  entry('regimen-set', regimen('fe', 'iron')),
];

describe('a planned draw in the journal', () => {
  const planned = createLedger([...shelf, entry('draw-planned', draw)]);

  it('[HLT-54] is ahead until its panel is there, or it is cancelled', () => {
    expect(drawAhead(planned, '2027-03-04')?.data.draw).toBe('d');
    expect(drawAhead(planned, '2027-03-13')).toBeUndefined();
    const drawn = entry('blood-drawn', {
      panel: 'p',
      drawn: { date: '2027-03-12' },
      taking: [],
      values: [{ name: 'TSH', value: 2, unit: 'mIU/L' }],
      origin: 'typed',
    });
    expect(
      drawAhead(createLedger([...shelf, entry('draw-planned', draw), drawn]), '2027-03-12'),
    ).toBeUndefined();
    const first = entry('draw-planned', draw);
    const cancelled = entry('draw-planned', { ...draw, cancelled: true });
    expect(drawAhead(createLedger([first, cancelled]), '2027-03-04')).toBeUndefined();
  });

  it('[HLT-54] its lines stand on their days: biotin out from 72 h before (FDA 2019), the fast the evening before', () => {
    const words = (day: string) =>
      drawLinesOn(planned, day)
        .map((line) => line.words)
        .join(' ');
    expect(words('2027-03-09')).toContain('Biotin');
    expect(words('2027-03-11')).toContain('Last food by 19:30');
    expect(drawLinesOn(planned, '2027-03-06')).toEqual([]);
  });

  it('[HLT-54] pauses come with it, move with it, and go with it', () => {
    const first = regimensForDraw(planned, draw, '2027-03-04', undefined);
    expect(
      first.map(({ regimen: name, pauses }) => [name, pauses?.map(({ from, until }) => [from, until])]),
    ).toEqual([
      ['b', [['2027-03-09', '2027-03-12']]],
      ['fe', [['2027-03-11', '2027-03-12']]],
    ]);
    const paused = createLedger([...shelf, ...first.map((data) => entry('regimen-set', { ...data }))]);
    const moved = regimensForDraw(paused, { ...draw, date: '2027-03-19' }, '2027-03-04', draw.date);
    expect(moved.map(({ pauses }) => pauses?.map(({ until }) => until))).toEqual([
      ['2027-03-19'],
      ['2027-03-19'],
    ]);
    const lifted = regimensForDraw(paused, { ...draw, cancelled: true }, '2027-03-04', draw.date);
    expect(lifted.map(({ pauses }) => pauses)).toEqual([undefined, undefined]);
    expect(regimensForDraw(paused, draw, '2027-03-04', undefined)).toEqual([]);
  });

  it('[HLT-54] a pause that should have begun begins today', () => {
    const late = regimensForDraw(planned, draw, '2027-03-11', undefined);
    expect(late.find(({ regimen: name }) => name === 'b')?.pauses?.[0]?.from).toBe('2027-03-11');
  });
});

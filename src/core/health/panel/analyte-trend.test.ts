import { describe, expect, it } from 'vitest';
import { analyteTrend } from './analyte-trend.ts';
import { readPanelValues, type ReadPanel } from './read-panel-values.ts';

function panel(
  date: string,
  value: { value: number | string; unit?: string; interval?: { high: number } },
): ReadPanel {
  const read = readPanelValues([{ name: 'ALT', unit: 'U/L', ...value }], { date }, 'values', 'male');
  if (!read.ok) throw new Error(read.problem.message);
  return read.value;
}

describe('a trend', () => {
  it('[HLT-07] runs oldest first, in one unit, against one interval: that of the newest panel', () => {
    const trend = analyteTrend(
      [
        panel('2027-03-01', { value: 0.75, unit: 'ukat/L', interval: { high: 0.6 } }),
        panel('2027-01-01', { value: 30, interval: { high: 50 } }),
        panel('2027-02-01', { value: 41 }),
      ],
      'alt',
      'male',
    );
    expect(trend?.unit).toBe('ukat/L');
    expect(trend?.points.map(({ date }) => date)).toEqual(['2027-01-01', '2027-02-01', '2027-03-01']);
    expect(trend?.points.map(({ position }) => position)).toEqual(['in', 'high', 'high']);
    expect(trend?.points.map(({ otherList }) => otherList)).toEqual([true, true, false]);
    expect(trend?.interval).toMatchObject({ high: 0.6, own: true });
    expect(trend?.points[0]?.value).toBeCloseTo(0.5, 9);
  });

  it('[HLT-07] says of each step whether it is more than wandering (ALT: 27.1 %)', () => {
    const trend = analyteTrend(
      [
        panel('2027-01-01', { value: 30 }),
        panel('2027-02-01', { value: 38 }),
        panel('2027-03-01', { value: 50 }),
      ],
      'alt',
      'male',
    );
    expect(trend?.points.map(({ change }) => change?.real)).toEqual([undefined, false, true]);
    expect(trend?.rcvPercent).toBeCloseTo(27.1, 1);
  });

  it('[HLT-07] keeps a bound without a change', () => {
    const trend = analyteTrend(
      [panel('2027-01-01', { value: '<5' }), panel('2027-02-01', { value: 20 })],
      'alt',
      'male',
    );
    expect(trend?.points[0]).toMatchObject({ value: 5, comparator: '<' });
    expect(trend?.points[1]).not.toHaveProperty('change');
  });

  it('[HLT-07] is undefined for what was never measured', () => {
    expect(analyteTrend([panel('2027-01-01', { value: 30 })], 'ck', 'male')).toBeUndefined();
  });
});

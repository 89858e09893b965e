import { describe, expect, it, vi } from 'vitest';
import { knownCourse } from '../../../test/simulation/known-course.ts';
import { season } from './season.ts';

vi.setConfig({ testTimeout: 30_000 });

const target = { bodyFatPercent: { max: 12 } };

describe('[CRS-15] two shows in one season', () => {
  const course = knownCourse({ show: '2027-05-31' });
  const { landings, between } = season(course, [
    { show: 'autumn', date: '2027-05-31', target },
    { show: 'spring', date: '2027-05-03', target },
    { show: 'past', date: '2027-02-01', target },
  ]);

  it('[CRS-15] lands on each show ahead, in order of dates', () => {
    expect(landings.map(({ show }) => show)).toEqual(['spring', 'autumn']);
    const [first, second] = landings;
    expect(second?.bodyFatPercent.mean ?? 99).toBeLessThan(first?.bodyFatPercent.mean ?? 0);
    expect(second?.probability ?? 0).toBeGreaterThan(first?.probability ?? 1);
  });

  it('[CRS-15] sets holding beside going on between them', () => {
    expect(between).toHaveLength(1);
    const [gap] = between;
    expect(gap?.weeks).toBe(4);
    expect(gap?.probabilityHolding ?? 1).toBeLessThan(gap?.probabilityGoingOn ?? 0);
    // Balance without cardio is near 2900, adaptation and lost tissue take from it, 200 kcal of cardio add to it.
    expect(gap?.holdKcal ?? 0).toBeGreaterThan(2600);
    expect(gap?.holdKcal ?? 0).toBeLessThan(3150);
    expect(gap?.why[0]).toContain('4 weeks lie between 2027-05-03 and 2027-05-31');
  });
});

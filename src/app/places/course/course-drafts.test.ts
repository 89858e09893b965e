import { describe, expect, it } from 'vitest';
import { draftOfShow, showFrom, targetDoubt, type ShowDraft } from './show-draft.ts';
import { stretchFrom, type StretchDraft } from './stretch-draft.ts';

const show = (typed: Partial<ShowDraft>) =>
  showFrom(
    { ...draftOfShow(undefined), name: 'Harbour Cup', date: '2027-05-08', ...typed },
    'one',
    '2027-03-04',
  );
const stretch = (typed: Partial<StretchDraft>) =>
  stretchFrom({ type: 'diet break', from: '2027-03-10', until: '2027-03-16', ...typed }, '2027-03-04');
const pathOf = (outcome: { ok: true } | { ok: false; problem: { path: string } }) =>
  outcome.ok ? undefined : outcome.problem.path;

describe('[CRS-21] the show as it is typed', () => {
  it('[CRS-21] a show with a target is kept as it was typed, and read back the same', () => {
    const kept = show({ bodyFatPercentMax: 8, massMaxKg: 80, className: 'open' });
    if (!kept.ok) throw new Error(kept.problem.message);
    expect(kept.value).toEqual({
      show: 'one',
      name: 'Harbour Cup',
      date: '2027-05-08',
      class: { name: 'open' },
      target: { bodyFatPercentMax: 8, massMaxKg: 80 },
    });
    expect(showFrom(draftOfShow(kept.value), 'one', '2027-03-04')).toEqual(kept);
  });

  it('[CRS-21] no name, no date, a past date, no target, crossed bounds: each at its field', () => {
    expect(pathOf(show({ name: ' ', bodyFatPercentMax: 8 }))).toBe('name');
    expect(pathOf(show({ date: '', bodyFatPercentMax: 8 }))).toBe('date');
    expect(pathOf(show({ date: '2026-05-08', bodyFatPercentMax: 8 }))).toBe('date');
    expect(pathOf(show({}))).toBe('bodyFatPercentMax');
    expect(pathOf(show({ classMaxKg: 75, massMinKg: 76 }))).toBe('massMinKg');
  });

  it('[LIM-15] a target below the floor says whose floor it is', () => {
    expect(targetDoubt(3, 'male')?.words).toContain('5 %');
    expect(targetDoubt(9, 'female')?.words).toContain('12 %');
    expect(targetDoubt(14, 'female')).toBeUndefined();
  });
});

describe('[CRS-11] days planned otherwise as they are typed', () => {
  it('[CRS-11] dates crossed, over, missing, or too many: each at its field', () => {
    expect(stretch({})).toEqual({
      ok: true,
      value: { type: 'diet break', from: '2027-03-10', until: '2027-03-16' },
    });
    expect(pathOf(stretch({ from: '' }))).toBe('from');
    expect(pathOf(stretch({ until: '2027-03-09' }))).toBe('until');
    expect(pathOf(stretch({ from: '2027-02-20', until: '2027-02-25' }))).toBe('until');
    expect(pathOf(stretch({ until: '2027-05-16' }))).toBe('until');
  });
});

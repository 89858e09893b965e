import { describe, expect, it } from 'vitest';
import { barSet, gymJournal, type GymJournal } from '../../../../test/journal/gym-journal.ts';
import { strengthLog } from '../strength/strength-log.ts';
import { hardSetsByMuscle } from './hard-sets.ts';

function squats(journal: GymJournal, day: number, sets: number, more: Parameters<typeof barSet>[3] = {}) {
  journal.onDay(day);
  for (let i = 0; i < sets; i++)
    journal.write(
      '17:00',
      'set-done',
      barSet('back-squat', 100, 8, { session: `s${day}`, number: i + 1, ...more }),
    );
}

function volume({ ledger }: GymJournal, until: string) {
  const { hardSets, book } = strengthLog(ledger);
  return new Map(hardSetsByMuscle(hardSets, book, until).map((row) => [row.muscle, row]));
}

describe('hard sets for each muscle', () => {
  it('[GYM-71] counts whole for prime movers and half for those that assist, in plain words', () => {
    const journal = gymJournal();
    squats(journal, 0, 4);
    const rows = volume(journal, '2027-03-01');
    expect(rows.get('vastus muscles')).toMatchObject({ sets: 4, words: 'front of the thigh' });
    expect(rows.get('adductor magnus')).toMatchObject({ sets: 2 });
    expect(rows.get('vastus muscles')?.trend).toBe('not four weeks of log yet');
  });

  it('[GYM-71] warm-ups, missed lifts and sets with more than four left are no hard sets', () => {
    const journal = gymJournal();
    squats(journal, 0, 2, { set: 'warm-up' });
    squats(journal, 1, 2, { rir: 5 });
    squats(journal, 2, 2, { reps: 0 });
    expect(volume(journal, '2027-03-03').get('vastus muscles')).toBeUndefined();
  });

  it('[GYM-71] left and right together are one set', () => {
    const journal = gymJournal();
    squats(journal, 0, 3, { side: 'left' });
    squats(journal, 0, 3, { side: 'right' });
    expect(volume(journal, '2027-03-01').get('vastus muscles')?.sets).toBe(3);
  });

  it('[GYM-71] the week is held against the four before', () => {
    const journal = gymJournal();
    for (const week of [0, 1, 2, 3]) squats(journal, 7 * week, 10);
    squats(journal, 28, 6);
    expect(volume(journal, '2027-04-04').get('vastus muscles')).toMatchObject({
      sets: 6,
      usual: 10,
      trend: '4 fewer than in the four weeks before',
    });
  });
});

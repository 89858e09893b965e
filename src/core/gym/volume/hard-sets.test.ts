import { describe, expect, it } from 'vitest';
import { barSet, gymJournal, type GymJournal } from '../../../../test/journal/gym-journal.ts';
import { strengthLog } from '../strength/strength-log.ts';
import { hardSetsByMuscle } from './hard-sets.ts';
import { volumeWeeks } from './volume-weeks.ts';

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

describe('hard sets week by week', () => {
  const weeksOf = (journal: GymJournal, from: string, until: string) => {
    const { hardSets, book } = strengthLog(journal.ledger);
    return volumeWeeks(hardSets, book, from, until).find(({ muscle }) => muscle === 'vastus muscles');
  };

  it('[GYM-72] whole weeks that end on the last day, weeks without a set among them', () => {
    const journal = gymJournal();
    squats(journal, 0, 5);
    squats(journal, 6, 1);
    squats(journal, 14, 3);
    expect(weeksOf(journal, '2027-03-01', '2027-03-21')?.weeks).toEqual([6, 0, 3]);
    expect(weeksOf(journal, '2027-03-02', '2027-03-21')?.weeks).toEqual([0, 3]);
    expect(weeksOf(journal, '2027-03-02', '2027-03-21')?.trend).toBe('not eight weeks of log yet');
    expect(weeksOf(journal, '2027-03-20', '2027-03-21')).toBeUndefined();
  });

  it('[GYM-72] the last four weeks are held against the first four of the preparation', () => {
    const journal = gymJournal();
    for (const week of [0, 1, 2, 3, 4]) squats(journal, 7 * week, 10);
    for (const week of [5, 6, 7, 8]) squats(journal, 7 * week, 6);
    expect(weeksOf(journal, '2027-03-01', '2027-05-02')?.trend).toBe('6 a week, 4 fewer than at the start');
    expect(weeksOf(journal, '2027-02-22', '2027-03-28')?.trend).toBe('not eight weeks of log yet');
  });
});

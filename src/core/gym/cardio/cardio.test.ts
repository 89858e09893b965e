import { describe, expect, it } from 'vitest';
import { gymJournal } from '../../../../test/journal/gym-journal.ts';
import { exerciseBook } from '../book/exercise-book.ts';
import { cardioConflicts, isLegsDay } from './cardio-conflicts.ts';
import { cardioDose } from './cardio-dose.ts';

const legs = { start: 17 * 60, minutes: 75, legs: true };
const walk = { start: 13 * 60, minutes: 45, activity: 'Treadmill walk' };
const day = { cardio: [walk], training: legs, sleep: 22 * 60 + 30 };

describe('cardio against the rest of the day', () => {
  it('[GYM-81] long cardio shortly before a legs session is said', () => {
    expect(cardioConflicts(day)).toEqual([
      'Treadmill walk at 13:00 ends 3 h 15 min before a legs session: put it after, or on another day, if the legs are to be fresh.',
    ]);
  });

  it('[GYM-81] short, after it, long before it, or before another session it is not', () => {
    for (const cardio of [
      { ...walk, minutes: 20 },
      { ...walk, start: 19 * 60 },
      { ...walk, start: 6 * 60 },
    ])
      expect(cardioConflicts({ ...day, cardio: [cardio] })).toEqual([]);
    expect(cardioConflicts({ ...day, training: { ...legs, legs: false } })).toEqual([]);
  });

  it('[GYM-81] overlapping the session, or ending close to sleep, is said', () => {
    expect(cardioConflicts({ ...day, cardio: [{ ...walk, start: 17 * 60 + 30 }] })).toEqual([
      'Treadmill walk at 17:30 overlaps the legs session.',
    ]);
    expect(cardioConflicts({ ...day, cardio: [{ ...walk, start: 21 * 60 + 15 }] })).toEqual([
      'Treadmill walk ends 30 min before sleep: an hour and more between them is better.',
    ]);
  });

  it('[GYM-81] a legs day is one where the legs move half of the exercises and more', () => {
    const book = exerciseBook(gymJournal().ledger);
    expect(isLegsDay(['back-squat', 'leg-extension', 'barbell-curl'], book)).toBe(true);
    expect(isLegsDay(['bench-press', 'barbell-curl', 'back-squat'], book)).toBe(false);
    expect(isLegsDay([], book)).toBe(false);
  });
});

describe('the dose of cardio', () => {
  it('[GYM-80] a week against the week before; from nothing there is no growth', () => {
    const lines = [
      { day: '2027-03-02', minutes: 40, netKcal: 200 },
      { day: '2027-03-09', minutes: 30, netKcal: undefined },
      { day: '2027-03-10', minutes: 30, netKcal: 150 },
    ];
    expect(cardioDose(lines, '2027-03-14')).toEqual({
      week: { minutes: 60, netKcal: 150, sessions: 2 },
      before: { minutes: 40, netKcal: 200, sessions: 1 },
      growth: 0.5,
    });
    expect(cardioDose(lines, '2027-03-05').growth).toBeUndefined();
  });
});

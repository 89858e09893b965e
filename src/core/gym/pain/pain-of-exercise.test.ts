import { describe, expect, it } from 'vitest';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { gymJournal } from '../../../../test/journal/gym-journal.ts';
import { cautionWithPain, painOfExercise } from './pain-of-exercise.ts';

type Note = Partial<DataOf<'pain-noted'>>;

function noted(...notes: readonly (readonly [day: number, note: Note])[]) {
  const journal = gymJournal();
  for (const [day, note] of notes) {
    journal.onDay(day);
    journal.write('18:00', 'pain-noted', { joint: 'knee', score: 4, exercise: 'leg-press', ...note });
  }
  return painOfExercise(journal.ledger, 'leg-press', '2027-03-31');
}

describe('pain noted at an exercise', () => {
  it('[GYM-60] is told the next time, and lowers nothing by itself', () => {
    const pain = noted([20, { side: 'left', words: 'below the kneecap' }]);
    expect(pain).toMatchObject({ ceilingShare: 1, seekCare: undefined });
    expect(pain?.words).toBe('On 2027-03-21 left knee 4 of 10: below the kneecap.');
  });

  it('[GYM-60] repeated, it holds the load a tenth lower', () => {
    const pain = noted([20, {}], [24, {}]);
    expect(pain).toMatchObject({ ceilingShare: 0.9, seekCare: undefined });
    const hurt = { figureKg: 200, bodyKg: 0 };
    expect(cautionWithPain(undefined, pain, hurt)).toEqual({ ceilingKg: 180 });
    expect(cautionWithPain({ ceilingKg: 150, repsFloor: 10 }, pain, hurt)).toEqual({
      ceilingKg: 135,
      repsFloor: 10,
    });
  });

  it('[GYM-60] twice on one day, or faint, is not repeated', () => {
    expect(noted([20, {}], [20, {}])?.ceilingShare).toBe(1);
    expect(noted([20, { score: 2 }], [24, { score: 3 }])?.ceilingShare).toBe(1);
  });

  it('[GYM-60] going on for two weeks, severe, or with a sign that is never waited out: see a clinician', () => {
    expect(noted([10, {}], [24, {}])?.seekCare).toContain('two weeks and more');
    expect(noted([24, { score: 8 }])?.seekCare).toContain('Severe');
    expect(noted([24, { score: 1, signs: ['locking'] }])?.seekCare).toContain('locking');
  });

  it('[GYM-62] faint pain noted three times over two weeks goes on too; twice it does not', () => {
    expect(noted([10, { score: 2 }], [17, { score: 1 }], [25, { score: 2 }])).toMatchObject({
      ceilingShare: 1,
      seekCare: 'It has gone on for two weeks and more: have a clinician look at it.',
    });
    expect(noted([10, { score: 2 }], [25, { score: 2 }])?.seekCare).toBeUndefined();
  });

  it('[GYM-62] what was noted before it was gone counts no more', () => {
    expect(noted([8, {}], [12, { score: 0 }], [26, {}])).toMatchObject({
      ceilingShare: 1,
      seekCare: undefined,
    });
  });

  it('[GYM-60] gone is gone, and old notes are told no more', () => {
    expect(noted([20, {}], [24, {}], [28, { score: 0 }])).toMatchObject({
      ceilingShare: 1,
      seekCare: undefined,
    });
    const journal = gymJournal();
    journal.write('18:00', 'pain-noted', { joint: 'knee', score: 5, exercise: 'leg-press' });
    expect(painOfExercise(journal.ledger, 'leg-press', '2027-04-20')).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import { randomStream } from '#core/random/random-stream.ts';
import { gymJournal } from '../../../../test/journal/gym-journal.ts';
import { strengthLog } from '../strength/strength-log.ts';
import { sideDifferences } from './side-difference.ts';

/** Twelve weeks of an exercise done one side at a time; `right` repetitions more on the right. */
function twelveWeeks(more: number, noise: number) {
  const journal = gymJournal();
  const stream = randomStream(7, 'sides');
  let last = '';
  for (let week = 0; week < 12; week++) {
    last = journal.onDay(7 * week);
    for (const number of [1, 2]) {
      for (const side of ['left', 'right'] as const) {
        const reps = 10 + (side === 'right' ? more : 0) + Math.round(noise * stream.normal());
        journal.write('17:00', 'set-done', {
          session: `week-${week}`,
          exercise: 'one-leg-extension',
          set: 'working',
          number,
          side,
          load: { of: 'stack', pinKg: 40 },
          reps,
          rir: 1,
        });
      }
    }
  }
  return sideDifferences(strengthLog(journal.ledger), last)[0];
}

describe('sides', () => {
  it('[GYM-51] a difference beyond the own variation names the weaker side, which goes first', () => {
    const difference = twelveWeeks(4, 0.5);
    expect(difference).toMatchObject({ exercise: 'one-leg-extension', weaker: 'left' });
    expect(difference?.percent).toBeGreaterThan(6);
    expect(difference?.words).toMatch(
      /^The left side is [\d.]+ % weaker, give or take [\d.]+: it goes first/,
    );
  });

  it('[GYM-51] a difference inside it is said to be none', () => {
    const difference = twelveWeeks(0, 1);
    expect(difference?.weaker).toBeUndefined();
    expect(difference?.words).toContain('No difference beyond your own variation');
  });

  it('[GYM-51] an exercise logged for one side only is not compared', () => {
    const journal = gymJournal();
    for (let week = 0; week < 6; week++) {
      journal.onDay(7 * week);
      journal.write('17:00', 'set-done', {
        session: `week-${week}`,
        exercise: 'one-leg-extension',
        set: 'working',
        side: 'left',
        load: { of: 'stack', pinKg: 40 },
        reps: 10,
      });
    }
    expect(sideDifferences(strengthLog(journal.ledger), '2027-05-01')).toEqual([]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDate } from '#core/units/civil-date.ts';
import { parseInstant } from '#core/units/instant.ts';
import { dateAtPlace, showDaySheet, type ShowDayInput, type ShowTask, stageMoved } from './show-day.ts';

const input: ShowDayInput = {
  wake: 6 * 60,
  stage: 13 * 60,
  checkIn: 10 * 60,
  travelMinutes: 60,
  carbohydrateG: 310,
  proteinG: 164,
  fatG: 39,
};

const sheetOf = (change: Partial<ShowDayInput> = {}): readonly ShowTask[] => {
  const sheet = showDaySheet({ ...input, ...change });
  return sheet.ok ? sheet.value : [];
};
const total = (tasks: readonly ShowTask[]) =>
  tasks.reduce((sum, { meal }) => sum + (meal?.carbohydrateG ?? 0), 0);

describe('[CRS-25] the show day', () => {
  it('[CRS-25] runs from waking to the stage, with small meals to the gram', () => {
    const sheet = sheetOf({ finals: 19 * 60 });
    expect(sheet.map(({ at, type }) => [at, type])).toEqual([
      [360, 'wake'],
      [390, 'meal'],
      [540, 'leave'],
      [548, 'meal'],
      [600, 'check-in'],
      [705, 'meal'],
      [735, 'last touches'],
      [755, 'pump-up'],
      [780, 'stage'],
      [1140, 'finals'],
    ]);
    expect(total(sheet)).toBe(310);
  });

  it('[CRS-25] whatever the times, the meals sum to the day and keep away from the stage', () => {
    fc.assert(
      fc.property(fc.integer({ min: 240, max: 480 }), fc.integer({ min: 600, max: 1320 }), (wake, stage) => {
        const sheet = sheetOf({ wake, stage, checkIn: undefined, travelMinutes: 20 });
        fc.pre(sheet.length > 0);
        expect(total(sheet)).toBe(310);
        for (const { at, type } of sheet)
          expect(type === 'meal' && at > stage - 75 && at > wake + 30).toBe(false);
        expect(sheet.map(({ at }) => at)).toEqual(sheet.map(({ at }) => at).toSorted((a, b) => a - b));
      }),
      { seed: 25 },
    );
  });

  it('[CRS-25] a late stage moves what hangs on it, leaves what is past, and feeds a long wait', () => {
    const moved = stageMoved(sheetOf(), 12 * 60, 15 * 60);
    expect(moved.ok && moved.value.map(({ at, type }) => [at, type]).slice(-4)).toEqual([
      [735, 'meal'],
      [855, 'last touches'],
      [875, 'pump-up'],
      [900, 'stage'],
    ]);
    expect(moved.ok && moved.value.filter(({ at }) => at < 720)).toEqual(
      sheetOf().filter(({ at }) => at < 720),
    );
    const soon = stageMoved(sheetOf(), 12 * 60, 13 * 60 + 30);
    expect(soon.ok && total(soon.value)).toBe(310);
  });

  it('[CRS-25] a day that cannot be is said', () => {
    const codes = [
      showDaySheet({ ...input, wake: 9 * 60 }),
      showDaySheet({ ...input, finals: 12 * 60 }),
      stageMoved(sheetOf(), 14 * 60, 13 * 60),
      stageMoved([], 0, 60),
    ].map((outcome) => !outcome.ok && outcome.problem.code);
    expect(codes).toEqual([
      'course/show-day-too-tight',
      'course/finals-before-stage',
      'course/stage-is-past',
      'course/stage-is-past',
    ]);
  });

  it('[CRS-25] the date of the show is counted where the show is, across the date line too', () => {
    const now = parseInstant('2027-05-09T22:00:00-10:00');
    expect(formatDate(dateAtPlace(now?.epochMs ?? 0, -600))).toBe('2027-05-09');
    expect(formatDate(dateAtPlace(now?.epochMs ?? 0, 13 * 60))).toBe('2027-05-10');
  });
});

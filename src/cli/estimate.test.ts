import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { addDays } from '#core/units/civil-date.ts';
import { asLines, askCommand } from '../../test/contract/ask-command.ts';
import { estimateCommand } from './estimate.ts';

const run = (requests: readonly object[], switches: readonly string[] = []) =>
  askCommand(estimateCommand, asLines(requests), switches);

const request = {
  id: 'one',
  athlete: { sex: 'female', heightCm: 166, age: 29 },
  days: Array.from({ length: 30 }, (_, i) => ({
    date: addDays('2027-03-01', i),
    weightKg: 61 - 0.05 * i,
    intake: { energyKcal: 1800, proteinG: 130, carbohydrateG: 170, fatG: 60 },
  })),
  asOf: '2027-03-20',
};

describe('stagewright estimate', () => {
  it('[EST-01] answers as its schema says: days to asOf, the forecast after it', async () => {
    const { status, answers } = await run([request]);
    expect(status).toBe(0);
    const answer = parse(estimateCommand.answer, answers[0]);
    expect(answer).toMatchObject({ id: 'one', days: { length: 20 }, forecast: { length: 10 } });
  });

  it('[EST-08] a request that cannot be read costs the others nothing', async () => {
    const { status, answers } = await run([
      { ...request, dayz: [] },
      request,
      { ...request, days: request.days.toReversed() },
    ]);
    expect(status).toBe(1);
    expect(answers).toEqual([
      { problem: expect.objectContaining({ code: 'body/unknown-field', path: 'dayz' }) },
      expect.objectContaining({ id: 'one' }),
      { problem: expect.objectContaining({ code: 'body/dates-out-of-order', path: 'days.1.date' }) },
    ]);
  });

  it('[EST-15] --smooth sees early days in the light of later ones', async () => {
    const [filtered, smooth] = [await run([request]), await run([request], ['smooth'])];
    expect(smooth.answers[0]).not.toEqual(filtered.answers[0]);
    expect(smooth.answers[0]).toMatchObject({
      why: expect.arrayContaining(['Each day is seen in the light of all days up to the last.']),
    });
  });
});

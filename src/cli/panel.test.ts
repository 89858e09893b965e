import { parse } from 'valibot';
import { describe, expect, it } from 'vitest';
import { asLines, askCommand } from '../../test/contract/ask-command.ts';
import { panelCommand } from './panel.ts';

const run = (requests: readonly object[]) => askCommand(panelCommand, asLines(requests));

const request = {
  athlete: { sex: 'female', age: 29 },
  drawn: { date: '2027-03-01', time: '07:30', fastedHours: 12 },
  taking: [],
  values: [{ loinc: '2823-3', value: 4.2, unit: 'mmol/L' }],
};

describe('stagewright panel', () => {
  it('[HLT-06] answers as its schema says', async () => {
    const { status, answers } = await run([request]);
    expect(status).toBe(0);
    expect(parse(panelCommand.answer, answers[0])).toMatchObject({
      results: [{ loinc: '2823-3', name: 'Potassium', flag: 'in', si: { value: 4.2, unit: 'mmol/L' } }],
    });
  });

  it('[HLT-15] a request that cannot be read costs the others nothing', async () => {
    const { status, answers } = await run([
      { ...request, drown: 1 },
      request,
      { ...request, taking: undefined },
    ]);
    expect(status).toBe(1);
    expect(answers).toEqual([
      { problem: expect.objectContaining({ code: 'health/unknown-field', path: 'drown' }) },
      expect.objectContaining({ results: expect.any(Array) }),
      { problem: expect.objectContaining({ code: 'health/missing-field', path: 'taking' }) },
    ]);
  });
});

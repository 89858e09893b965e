import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readShape } from '#core/problems/from-issues.ts';
import { answered } from '#core/problems/problem.ts';
import { askCommand } from '../../test/contract/ask-command.ts';
import type { LineCommand } from './command.ts';

const request = v.strictObject({ grams: v.number() });
const halving: LineCommand = {
  name: 'halve',
  summary: 'Halves.',
  room: 'halve',
  request,
  answer: v.strictObject({ half: v.number() }),
  respond: (input) => {
    const read = readShape(request, input, 'halve');
    if (!read.ok) return read;
    if (read.value.grams === 13) throw new Error('thirteen');
    return answered({ half: read.value.grams / 2 });
  },
};

const run = (text: string) => askCommand(halving, text);

describe('answering lines', () => {
  it('[GND-08] answers every line in order, and a bad one does not cost the others', async () => {
    const { status, answers } = await run('{"grams":4}\nnot json\n\n{"gram":1}\n{"grams":6}\n');
    expect(status).toBe(1);
    expect(answers).toEqual([
      { half: 2 },
      {
        problem: {
          code: 'halve/not-json',
          path: 'line 2',
          message: 'Line 2 is not JSON.',
          remedy: 'Write one whole JSON object on the line.',
        },
      },
      {
        problem: {
          code: 'halve/unknown-field',
          path: 'gram',
          message: '"gram" is not a field that is known here.',
          remedy: 'Remove it or correct its spelling.',
        },
      },
      { half: 3 },
    ]);
  });

  it('[GND-09] writes no -0 and no number that is not finite', async () => {
    expect(await run('{"grams":-0}\n')).toEqual({ status: 0, answers: [{ half: 0 }] });
    const { status, answers } = await run('{"grams":1e999}\n');
    expect(status).toBe(1);
    expect(answers).toHaveLength(1);
  });

  it('[GND-08] a fault of the program is answered as a problem of its own', async () => {
    const { status, answers } = await run('{"grams":13}\n{"grams":2}\n');
    expect(status).toBe(1);
    expect(answers[0]).toHaveProperty('problem.code', 'halve/fault');
    expect(answers[1]).toEqual({ half: 1 });
  });
});

import { Readable, Writable } from 'node:stream';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readShape } from '#core/problems/from-issues.ts';
import { answered } from '#core/problems/problem.ts';
import { answerLines } from './answer-lines.ts';
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

async function run(text: string): Promise<{ status: number; lines: unknown[] }> {
  let out = '';
  const sink = new Writable({
    write(chunk, _encoding, done) {
      out += String(chunk);
      done();
    },
  });
  const status = await answerLines(halving, new Set(), Readable.from([text]), sink);
  return {
    status,
    lines: out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as unknown),
  };
}

describe('answering lines', () => {
  it('[GND-08] answers every line in order, and a bad one does not cost the others', async () => {
    const { status, lines } = await run('{"grams":4}\nnot json\n\n{"gram":1}\n{"grams":6}\n');
    expect(status).toBe(1);
    expect(lines).toEqual([
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
    expect(await run('{"grams":-0}\n')).toEqual({ status: 0, lines: [{ half: 0 }] });
    const { status, lines } = await run('{"grams":1e999}\n');
    expect(status).toBe(1);
    expect(lines).toHaveLength(1);
  });

  it('[GND-08] a fault of the program is answered as a problem of its own', async () => {
    const { status, lines } = await run('{"grams":13}\n{"grams":2}\n');
    expect(status).toBe(1);
    expect(lines[0]).toHaveProperty('problem.code', 'halve/fault');
    expect(lines[1]).toEqual({ half: 1 });
  });
});

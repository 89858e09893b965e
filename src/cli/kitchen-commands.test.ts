import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { asLines, askCommand } from '../../test/contract/ask-command.ts';
import { batchCommand } from './batch.ts';
import type { LineCommand } from './command.ts';
import { labelCommand } from './label.ts';

const run = (command: LineCommand, requests: readonly object[]) => askCommand(command, asLines(requests));

/** The schema as it is printed: JSON and nothing else. */
function plain(schema: object): Record<string, unknown> {
  return JSON.parse(JSON.stringify(schema)) as Record<string, unknown>;
}

const beef = { energyKcal: 176, proteinG: 20, fatG: 10, carbohydrateG: 0 };
const pan = { ingredients: [{ name: 'beef', rawG: 680, per100g: beef }], cookedGrossG: 480, portions: 3 };
const label = {
  rules: 'us',
  servingG: 13,
  nutrients: { energyKcal: 50, proteinG: 6, fatG: 1.5, carbohydrateG: 5 },
};

const cases: readonly [LineCommand, object, object][] = [
  [batchCommand, pan, { ...pan, portions: 0 }],
  [labelCommand, label, { ...label, servingG: 0 }],
];

describe.each(cases)('the command $name', (command, good, bad) => {
  const ajv = new Ajv2020({ strict: false });
  const options = { errorMode: 'ignore', target: 'draft-2020-12' } as const;
  const fitsRequest = ajv.compile(plain(toJsonSchema(command.request, options)));
  const fitsAnswer = ajv.compile(plain(toJsonSchema(command.answer, options)));

  it('[BAT-70] answers in order, a problem among answers, and ends with status 1', async () => {
    const { status, answers } = await run(command, [good, bad, good]);
    expect(status).toBe(1);
    expect(answers[0]).toEqual(answers[2]);
    expect(answers[1]).toMatchObject({ problem: { code: 'kitchen/wrong-value' } });
    expect((await run(command, [good])).status).toBe(0);
  });

  it('[BAT-70] its request and its answer fit the schema it prints', async () => {
    const { answers } = await run(command, [good]);
    expect(fitsRequest(good)).toBe(true);
    expect(fitsRequest(bad)).toBe(false);
    expect(fitsAnswer(answers[0])).toBe(true);
    expect(fitsAnswer({ ...good })).toBe(false);
  });
});

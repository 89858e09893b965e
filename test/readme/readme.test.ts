import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lineCommands } from '../../src/cli/commands.ts';

const readme = readFileSync(join(import.meta.dirname, '../../README.md'), 'utf8');

describe('the README', () => {
  test('[HSE-10] its worked example answers what the page says', async () => {
    const [, name, request] = /bin\/stagewright (\w+) <<'LINE'\n(.*)\nLINE/.exec(readme) ?? [];
    const command = lineCommands.find((candidate) => candidate.name === name);
    const outcome = await command?.respond(JSON.parse(request ?? ''), new Set());
    expect(outcome).toMatchObject({ ok: true, value: { cookedG: 588, portionsG: [147, 147, 147, 147] } });
    const text = JSON.stringify(outcome);
    for (const said of ['588 g', '930 g', '63.2 %', '147 g'])
      expect([said, readme.includes(said) && text.includes(said)]).toEqual([said, true]);
    expect(text).toContain('"minced turkey":180');
  });

  test('[HSE-10] every page it leads to is there', () => {
    const links = [...readme.matchAll(/\]\(([^)#:]+)\)/g)].map(([, link = '']) => link);
    const lost = links.filter((link) => {
      try {
        return readFileSync(join(import.meta.dirname, '../..', link)).length === 0;
      } catch (fault) {
        return !(fault instanceof Error && 'code' in fault && fault.code === 'EISDIR');
      }
    });
    expect(links.length).toBeGreaterThan(5);
    expect(lost).toEqual([]);
  });
});

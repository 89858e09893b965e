import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const APP = fileURLToPath(new URL('..', import.meta.url));
const SHEETS = readdirSync(APP, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.css'),
);
const read = (name: string): string => readFileSync(join(APP, name), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');

describe('style sheets of the app', () => {
  it('are found', () => {
    expect(SHEETS.length).toBeGreaterThan(20);
  });

  it.each(SHEETS)('[LOOK-07] %s names no colour of its own: tokens.css does', (name) => {
    if (name.endsWith('tokens.css')) return;
    expect(read(name).match(/#[0-9a-f]{3,8}\b|\b(rgb|rgba|hsl|oklch|color-mix)\(/gi)).toBeNull();
  });

  it.each(SHEETS)('[LOOK-06] %s needs no hover and styles nothing by force', (name) => {
    expect(read(name)).not.toMatch(/:hover|!important/);
  });

  it.each(SHEETS)('[LOOK-13] %s loads nothing', (name) => {
    expect(read(name)).not.toMatch(/url\(|@import/);
  });
});

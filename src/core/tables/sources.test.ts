import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { retentionRows } from './retention.ts';
import { citation, sources, type SourceKey } from './sources.ts';
import { storageRules } from './storage-clock.ts';
import { tableFoods } from './foods.ts';
import { yieldRows } from './yields.ts';

const tables = fileURLToPath(new URL('.', import.meta.url));
const src = fileURLToPath(new URL('../../', import.meta.url));

function codeOutsideTheLists(): string {
  const files = readdirSync(src, { recursive: true, encoding: 'utf8' });
  return files
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$|sources(-[a-z]+)?\.ts$/.test(file))
    .map((file) => readFileSync(`${src}/${file}`, 'utf8'))
    .join('\n');
}

describe('the list of sources', () => {
  const parts = readdirSync(tables).filter((file) => /^sources-[a-z]+\.ts$/.test(file));

  it('[BAT-05] merges the list of every room', () => {
    const merged = readFileSync(`${tables}/sources.ts`, 'utf8');
    for (const part of parts) expect(merged).toContain(`'./${part}'`);
    expect(parts).toContain('sources-tables.ts');
  });

  it('[BAT-05] holds each key once, over all rooms', () => {
    const keys = parts.flatMap((part) =>
      [...readFileSync(`${tables}/${part}`, 'utf8').matchAll(/^ {2}'?([a-z][\w-]*)'?:/gm)].map(
        (match) => match[1],
      ),
    );
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
    expect(new Set(keys)).toEqual(new Set(Object.keys(sources)));
  });

  it('[BAT-05] every key is used, and every table names one', () => {
    const code = codeOutsideTheLists();
    const unused = Object.keys(sources).filter((key) => !code.includes(key));
    expect(unused).toEqual([]);
    for (const row of [...tableFoods, ...yieldRows, ...storageRules]) {
      const key: SourceKey = row.source;
      expect(citation(key).length).toBeGreaterThan(20);
    }
    expect(citation(retentionRows[0]?.source ?? 'common-practice')).toContain('Retention');
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REPOSITORY } from './imports.ts';

const SPEC = join(REPOSITORY, 'docs/spec');

/** A rule in a spec page stands at the head of its line: "- **JRN-07** A correction …". */
const RULE = /^[^\w\n]*([A-Z]{3,4}-\d{2,3})\b/gm;
const TITLE = /(?<![.\w])(?:test|it)(?:\.each\([\s\S]*?\))?\(\s*(['"`])([\s\S]*?)\1/g;
const CONTRACT_TITLE = /^ {4}title: '(.*)',$/gm;
const LEADING = /^(?:\[[A-Z]{3,4}-\d{2,3}\] ?)+/;

const pages = readdirSync(SPEC).filter((name) => name.endsWith('.md'));
const rules = pages.flatMap((page) =>
  [...readFileSync(join(SPEC, page), 'utf8').matchAll(RULE)].map(([, id = '']) => ({ page, id })),
);
const known = new Set(rules.map(({ id }) => id));

function testFiles(folder: string): string[] {
  return readdirSync(join(REPOSITORY, folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile() && /\.test\.tsx?$/.test(item.name))
    .map((item) => join(item.parentPath, item.name).slice(REPOSITORY.length + 1));
}

/** Titles of a test file that break the rule about rules. A contract's rules bring their own titles ("%s"). */
function badTitles(text: string): string[] {
  const titles = [...text.matchAll(TITLE)].map(([, , title = '']) => title);
  const contract = [...text.matchAll(CONTRACT_TITLE)].map(([, title = '']) => title);
  return [...titles, ...contract].filter((title) => {
    if (title.startsWith('%s') && /Contract\b/.test(text)) return false;
    const ids = LEADING.exec(title)?.[0].match(/[A-Z]{3,4}-\d{2,3}/g) ?? [];
    return ids.length === 0 || ids.some((id) => !known.has(id));
  });
}

describe('numbered rules', () => {
  test('[HSE-04] every rule has one number, on the page of its area', () => {
    const ids = rules.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    expect(rules.filter(({ page, id }) => !page.startsWith(id.slice(0, 3)))).toEqual([]);
    expect(ids.length).toBeGreaterThan(60);
  });

  test('[HSE-05] every test of the core, the stores, the command line and the server begins with a rule that exists', () => {
    const files = ['src/core', 'src/outside', 'src/cli', 'src/server', 'test']
      .flatMap(testFiles)
      .filter((file) => file !== 'test/arrows/rules.test.ts');
    const contract = 'test/contract/journal-store-contract.ts';
    const bad = [...files, contract].flatMap((file) =>
      badTitles(readFileSync(join(REPOSITORY, file), 'utf8')).map((title) => `${file}: ${title}`),
    );
    expect(files.length).toBeGreaterThan(20);
    expect(bad).toEqual([]);
  });

  test('[HSE-05] a planted title without a rule, or with one that does not exist, is found', () => {
    const planted =
      "test('adds up', () => {}); test.each([1, 2])('[JRN-99] counts', () => {}); test('[JRN-02] reads', () => {});";
    expect(badTitles(planted)).toEqual(['adds up', '[JRN-99] counts']);
  });
});

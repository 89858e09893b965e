import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REPOSITORY } from './imports.ts';

const FOLDERS = ['src', 'demo', 'test', 'bench', 'docs', 'bin'];
const PAGES = [
  'README.md',
  'ARCHITECTURE.md',
  'CONTRIBUTING.md',
  'SECURITY.md',
  'CHANGELOG.md',
  'package.json',
];

/** Built up from parts, so that this file does not hold what it looks for. */
const MARKS = [
  ['TO', 'DO'],
  ['FIX', 'ME'],
  ['.sk', 'ip('],
  ['.on', 'ly('],
  ['@ts-', 'ignore'],
  ['@ts-', 'expect-error'],
  ['eslint-', 'disable'],
  ['oxlint-', 'disable'],
  ['biome-', 'ignore'],
  [' as a', 'ny'],
  [': a', 'ny;'],
  [': a', 'ny)'],
  ['as un', 'known as'],
].map((parts) => parts.join(''));

const PATHS = [
  ['/wo', 'rk/'],
  ['/ro', 'ot/'],
  ['/ho', 'me/'],
].map((parts) => parts.join(''));

const files = FOLDERS.flatMap((folder) =>
  readdirSync(join(REPOSITORY, folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath, item.name).slice(REPOSITORY.length + 1)),
);
const texts = [...files.filter((file) => /\.(tsx?|mjs|css|html|md|json|js)$/.test(file)), ...PAGES];

function linesWith(needles: readonly string[], among: readonly string[]): string[] {
  return among.flatMap((file) =>
    readFileSync(join(REPOSITORY, file), 'utf8')
      .split('\n')
      .flatMap((line, i) => {
        const found = needles.find((needle) => line.includes(needle));
        return found === undefined ? [] : [`${file}:${i + 1}: ${found}`];
      }),
  );
}

describe('the house is tidy', () => {
  test('[HSE-06] nothing is put off, skipped, cast away or switched off', () => {
    expect(
      linesWith(
        MARKS,
        texts.filter((file) => /\.(tsx?|mjs|css|js)$/.test(file)),
      ),
    ).toEqual([]);
  });

  test('[HSE-06] the marks would be found', () => {
    expect(MARKS.every((mark) => `x${mark}y`.includes(mark) && mark.length > 3)).toBe(true);
    expect(linesWith(["describe('the house is tidy'"], ['test/arrows/house.test.ts']).length).toBeGreaterThan(
      0,
    );
  });

  test('[HSE-07] no path of anyone’s machine is written down', () => {
    expect(
      linesWith(
        PATHS,
        texts.filter((file) => file !== 'test/arrows/house.test.ts'),
      ),
    ).toEqual([]);
  });

  test('[HSE-08] files are named kebab-case after what they hold, never after nothing', () => {
    const code = files.filter((file) => /\.(tsx?|css)$/.test(file));
    const odd = code.filter((file) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z]+)*$/.test(basename(file)));
    const empty = code.filter((file) => /(^|[-/])(utils?|helpers?|common|misc|stuff)([-./]|$)/.test(file));
    expect([odd, empty]).toEqual([[], []]);
  });

  test('[HSE-09] what is said to a person does not blame, beg or apologise', () => {
    const words = /(['"`])[^'"`\n]*(?<!-)\b(invalid|please|sorry|oops|forbidden)\b[^'"`\n]*\1/i;
    // It reads the library's own wording in order to replace it.
    const exempt = 'src/core/problems/from-issues.ts';
    const found = texts
      .filter((file) => /^(src|demo)\/.*\.tsx?$/.test(file) && !/\.test\.tsx?$/.test(file) && file !== exempt)
      .flatMap((file) =>
        readFileSync(join(REPOSITORY, file), 'utf8')
          .split('\n')
          .flatMap((line, i) => (words.test(line) ? [`${file}:${i + 1}: ${line.trim()}`] : [])),
      );
    expect(found).toEqual([]);
    expect(words.test("'Your food is invalid.'")).toBe(true);
  });
});

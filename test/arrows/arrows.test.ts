import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exists, importsOf, REPOSITORY } from './imports.ts';
import { CORE_PACKAGES, LINES, roomOf, wrongArrow } from './rooms.ts';

const isTest = (file: string) => /\.test\.tsx?$/.test(file);

function filesUnder(folder: string): string[] {
  return readdirSync(join(REPOSITORY, folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath, item.name).slice(REPOSITORY.length + 1));
}

const sources = [...filesUnder('src'), ...filesUnder('demo')].filter((file) => /\.tsx?$/.test(file));

/** Everything wrong with the imports of one file. */
function faults(file: string, text: string): string[] {
  const from = roomOf(file);
  if (from === undefined) return [`${file} is in no room`];
  const found: string[] = [];
  for (const { specifier, file: target } of importsOf(text, file)) {
    if (target === undefined) {
      const name = specifier.startsWith('@')
        ? specifier.split('/').slice(0, 2).join('/')
        : specifier.split('/')[0];
      if (from.startsWith('core/') && !CORE_PACKAGES.includes(name ?? ''))
        found.push(`${file}: the core imports "${specifier}"`);
      continue;
    }
    const to = roomOf(target);
    const wrong = to === undefined ? 'it leads out of the house' : wrongArrow(from, to);
    if (wrong) found.push(`${file}: "${specifier}": ${wrong}`);
  }
  return found;
}

describe('arrows', () => {
  test('[HSE-01] every import points down the house, and the core uses no package but its schemas', () => {
    const found = sources
      .filter((file) => !isTest(file))
      .flatMap((file) => faults(file, readFileSync(file, 'utf8')));
    expect(found).toEqual([]);
  });

  test('[HSE-01] every import leads to a file that is there', () => {
    const lost = sources.flatMap((file) =>
      importsOf(readFileSync(file, 'utf8'), file)
        .filter(({ file: target }) => target !== undefined && !exists(target))
        .map(({ specifier }) => `${file}: "${specifier}"`),
    );
    expect(lost).toEqual([]);
  });

  test.each([
    [
      'src/core/day/x.ts',
      "import { x } from '#core/course/x.ts';",
      '"core/day" and "core/course" stand on one line',
    ],
    ['src/core/units/x.ts', "export { x } from '#core/day/x.ts';", '"core/day" stands above "core/units"'],
    [
      'src/core/body/x.ts',
      "import type { X } from '#outside/files/x.ts';",
      '"outside" stands above "core/body"',
    ],
    ['src/core/body/x.ts', "import papaparse from 'papaparse';", 'the core imports "papaparse"'],
    ['src/core/body/x.ts', "import { readFileSync } from 'node:fs';", 'the core imports "node:fs"'],
    ['src/core/body/x.ts', "const x = await import('../../app/main.ts');", '"app" stands above "core/body"'],
    ['src/outside/files/x.ts', "import { x } from '../../cli/x.ts';", '"cli" stands above "outside"'],
    ['src/app/x.ts', "import { x } from '../server/x.ts';", '"app" and "server" stand on one line'],
    [
      'src/core/kitchen/x.ts',
      "import { x } from '#core/pantry/x.ts';",
      '"core/pantry" is no room of the house',
    ],
    ['src/app/x.ts', "import { x } from '../../test/x.ts';", 'it leads out of the house'],
  ])('[HSE-01] a planted violation is found: %s %s', (file, text, why) => {
    expect(faults(file, text)).toEqual([expect.stringContaining(why)]);
  });

  test('[HSE-01] imports in comments are none, imports over several lines are', () => {
    const text =
      "// import { x } from './no.ts'\n/* from './neither.ts' */\nimport {\n  a,\n  b,\n} from './yes.ts';";
    expect(importsOf(text, 'src/app/x.ts')).toEqual([{ specifier: './yes.ts', file: 'src/app/yes.ts' }]);
  });
});

describe('rooms', () => {
  const rooms = ['core', 'outside']
    .flatMap((top) => readdirSync(join(REPOSITORY, 'src', top)).map((name) => `src/${top}/${name}`))
    .filter((path) => statSync(join(REPOSITORY, path)).isDirectory());

  test('[HSE-02] every room of the core is on the list, and no room is empty', () => {
    const core = rooms
      .filter((room) => room.startsWith('src/core/'))
      .map((room) => room.slice('src/'.length));
    const planned = LINES.flat().filter((room) => room.startsWith('core/'));
    expect(core.filter((room) => !planned.includes(room))).toEqual([]);
    expect(planned.filter((room) => !core.includes(room))).toEqual([]);
    const empty = rooms.filter(
      (room) => !filesUnder(room).some((file) => /\.tsx?$/.test(file) && !isTest(file)),
    );
    expect(empty).toEqual([]);
  });

  test('[HSE-03] every room says in ROOM.md what it is for', () => {
    const faces = ['src/app/state', 'src/app/shell', 'src/app/parts', 'src/server', 'src/cli'];
    const without = [...rooms, ...faces].filter((room) => !exists(`${room}/ROOM.md`));
    expect(without).toEqual([]);
    const long = [...rooms, ...faces].filter(
      (room) => readFileSync(join(REPOSITORY, room, 'ROOM.md'), 'utf8').split('\n').length > 100,
    );
    expect(long).toEqual([]);
  });
});

import fs from 'node:fs';
import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { compileFunction } from 'node:vm';
import type sqlite from 'node-sqlite3-wasm';

const LOCK = '.lock';
const fromHere = createRequire(import.meta.url);

/**
 * The library locks a file by a folder beside it. Two things about that are put right here.
 *
 * Asked whether somebody else is about to write, it looks whether that folder is there, and finds its own: it then takes
 * what a killed process left half written for another's work under way and never undoes it (SYN-34). It only asks while
 * it holds the lock, which one alone can hold, so the answer is no.
 *
 * A new folder needs a block of the disk, and on a full one nobody could even read (SYN-32). An empty file needs none.
 */
const itsFiles: typeof fs = Object.create(fs, {
  accessSync: {
    value: (path: string, mode: number): void => {
      if (path.endsWith(LOCK)) throw new Error('nobody else holds the lock');
      fs.accessSync(path, mode);
    },
  },
  mkdirSync: { value: (path: string): void => fs.closeSync(fs.openSync(path, 'wx', 0o600)) },
  rmdirSync: { value: (path: string): void => fs.unlinkSync(path) },
});

function load(): typeof sqlite {
  const file = fromHere.resolve('node-sqlite3-wasm');
  const loaded: { exports: typeof sqlite } = { exports: Object.create(null) };
  const itsRequire = (name: string): unknown => (name === 'node:fs' ? itsFiles : fromHere(name));
  const names = ['module', 'require', '__filename', '__dirname'];
  compileFunction(fs.readFileSync(file, 'utf8'), names, { filename: file }).call(
    undefined,
    loaded,
    itsRequire,
    file,
    dirname(file),
  );
  return loaded.exports;
}

/** SQLite, with its lock put right. */
export const { Database } = load();

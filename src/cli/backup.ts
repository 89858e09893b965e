import { copyFileSync, existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { openSealedFolder } from '#outside/sealed-store/open-sealed-folder.ts';
import { openSqliteStore } from '#outside/sealed-store/sqlite-sealed-store.ts';
import type { PlainCommand } from './command.ts';

const backupHelp = `stagewright backup DIR FILE     a whole copy of a server's sealed journals, also while it runs

DIR    the folder given to serve --data
FILE   a file that is not there yet`;

export const backupCommand: PlainCommand = {
  name: 'backup',
  summary: "A whole copy of a server's sealed journals.",
  help: backupHelp,
  run: async ([folder, file, ...more]) => {
    if (folder === undefined || file === undefined || more.length > 0) return complain(backupHelp, 2);
    const from = join(resolve(folder), 'sealed.sqlite');
    if (!existsSync(from)) return complain(`There is no "sealed.sqlite" in "${folder}".`, 1);
    if (existsSync(file)) return complain(`"${file}" is there already. Name a new file.`, 1);
    // Reading does not wait for a running server's writes; what was committed when it begins is what is copied.
    const store = openSqliteStore(from);
    try {
      store.backup(resolve(file));
    } finally {
      store.close();
    }
    process.stdout.write(`Copied to ${file}.\n`);
    return 0;
  },
};

const restoreHelp = `stagewright restore FILE DIR     puts a backup in the place of a server's sealed journals

FILE   written by stagewright backup
DIR    the folder given to serve --data; the server must not be running`;

export const restoreCommand: PlainCommand = {
  name: 'restore',
  summary: "Puts a backup in the place of a server's sealed journals.",
  help: restoreHelp,
  run: async ([file, folder, ...more]) => {
    if (file === undefined || folder === undefined || more.length > 0) return complain(restoreHelp, 2);
    if (!existsSync(file)) return complain(`There is no file "${file}".`, 1);
    const fault = faultOf(resolve(file));
    if (fault !== undefined)
      return complain(`"${file}" is no whole backup (${fault}). Nothing was changed.`, 1);
    const to = join(resolve(folder), 'sealed.sqlite');
    if (existsSync(to)) copyFileSync(to, `${to}.before`);
    copyFileSync(resolve(file), to);
    const store = openSealedFolder(resolve(folder));
    if (!store.ok) return complain(`${store.problem.message} ${store.problem.remedy}`, 1);
    store.value.close();
    process.stdout.write(`Restored into ${folder}; what was there is kept as sealed.sqlite.before.\n`);
    return 0;
  },
};

function faultOf(file: string): string | undefined {
  try {
    const store = openSqliteStore(file);
    const [fault] = store.check();
    store.close();
    return fault;
  } catch (fault) {
    return fault instanceof Error ? fault.message : String(fault);
  }
}

function complain(text: string, status: number): number {
  process.stderr.write(`${text}\n`);
  return status;
}

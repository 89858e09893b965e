import { existsSync, renameSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { flushFile } from '#outside/sealed-store/flush-file.ts';
import { clearDatabase, freeFromTheDead } from '#outside/sealed-store/open-sealed-folder.ts';
import { reasonOf } from '#outside/sealed-store/reason-of.ts';
import { restoreSealedFolder } from '#outside/sealed-store/restore-sealed-folder.ts';
import { openSqliteStore } from '#outside/sealed-store/sqlite-sealed-store.ts';
import type { PlainCommand } from './command.ts';
import { complain } from './complain.ts';
import { usualFolder } from './open-kept-store.ts';

const backupHelp = `stagewright backup DIR FILE     a whole copy of a server's sealed journals, also while it runs

DIR    the folder given to serve --data; ${usualFolder()} where nothing was said
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
    const fault = await copyTo(from, resolve(file));
    if (fault !== undefined) return complain(`No copy was made (${fault}). What was there is as it was.`, 1);
    process.stdout.write(`Copied to ${file}.\n`);
    return 0;
  },
};

/** Written beside, flushed, and named at the end: a copy broken off never looks like a whole one (SYN-35). */
async function copyTo(from: string, file: string): Promise<string | undefined> {
  const beside = `${file}.part`;
  try {
    clearDatabase(beside);
    freeFromTheDead(dirname(from));
    const store = openSqliteStore(from);
    try {
      store.backup(beside);
    } finally {
      await store.close();
    }
    // SQLite does not flush a copy of this kind itself.
    flushFile(beside);
    renameSync(beside, file);
    return undefined;
  } catch (fault) {
    return `${reasonOf(fault)}${clearedAway(beside)}`;
  }
}

function clearedAway(beside: string): string {
  try {
    clearDatabase(beside);
    return '';
  } catch (fault) {
    return `; "${beside}" is left over and could not be removed: ${reasonOf(fault)}`;
  }
}

const restoreHelp = `stagewright restore FILE DIR     puts a backup in the place of a server's sealed journals

FILE   written by stagewright backup
DIR    the folder given to serve --data; ${usualFolder()} where nothing was said. The server must not be running`;

export const restoreCommand: PlainCommand = {
  name: 'restore',
  summary: "Puts a backup in the place of a server's sealed journals.",
  help: restoreHelp,
  run: async ([file, folder, ...more]) => {
    if (file === undefined || folder === undefined || more.length > 0) return complain(restoreHelp, 2);
    if (!existsSync(file)) return complain(`There is no file "${file}".`, 1);
    const restored = await restoreSealedFolder(resolve(file), resolve(folder));
    if (!restored.ok) return complain(`${restored.problem.message} ${restored.problem.remedy}`, 1);
    process.stdout.write(
      `Restored ${restored.value.journals} journals into ${folder}; what was there is kept as sealed.sqlite.before.\n`,
    );
    return 0;
  },
};

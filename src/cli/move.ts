import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { moveJournals } from '#outside/sealed-store/move-journals.ts';
import { openSealedFolder } from '#outside/sealed-store/open-sealed-folder.ts';
import type { SealedFile, SealedStore } from '#outside/sealed-store/sealed-store.ts';
import { StoreAwayError } from '#outside/sealed-store/store-away-error.ts';
import type { PlainCommand } from './command.ts';
import { complain } from './complain.ts';
import { DATABASE, openNamedDatabase, usualFolder } from './open-kept-store.ts';

const help = `stagewright move DIR [--database-file FILE]     carries a folder's sealed journals into a database

DIR               the folder given to serve --data, ${usualFolder()} where nothing was said; the server must not be running
--database-file   a file with the connection string, as for serve; or ${DATABASE} in the environment

Order, tallies, what is lent and closed names go along: devices notice nothing. The folder stays as it is.
A move that was broken off is begun again.`;

export const moveCommand: PlainCommand = {
  name: 'move',
  summary: "Carries a server's sealed journals from its folder into a database.",
  help,
  run: async (args) => {
    const asked = readArguments(args);
    if (asked === undefined) return complain(help, 2);
    const { folder, databaseFile } = asked;
    if (!existsSync(join(folder, 'sealed.sqlite')))
      return complain(`There is no "sealed.sqlite" in "${folder}".`, 1);
    const to = await openNamedDatabase(databaseFile, process.env[DATABASE]);
    if (to === undefined) return complain(`No database is named.\n\n${help}`, 2);
    if (!to.ok) return complain(`${to.problem.message} ${to.problem.remedy}`, 1);
    const from = await openSealedFolder(folder);
    if (!from.ok) {
      await to.value.close();
      return complain(`${from.problem.message} ${from.problem.remedy}`, 1);
    }
    try {
      return await carry(from.value, to.value);
    } finally {
      await from.value.close();
      await to.value.close();
    }
  },
};

function readArguments(args: readonly string[]): { folder: string; databaseFile?: string } | undefined {
  try {
    const options = { 'database-file': { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    const [folder, ...more] = positionals;
    if (folder === undefined || more.length > 0) return undefined;
    const databaseFile = values['database-file'];
    return {
      folder: resolve(folder),
      ...(databaseFile !== undefined && { databaseFile: resolve(databaseFile) }),
    };
  } catch {
    // An option that is not known: the help says which are.
    return undefined;
  }
}

async function carry(from: SealedFile, to: SealedStore): Promise<number> {
  try {
    const { journals, entries, closed, refused } = await moveJournals(from, to);
    process.stdout.write(
      `Now in the database: ${journals} journals, ${entries} entries, ${closed} closed names.\n`,
    );
    if (refused === 0) return 0;
    return complain(
      `${refused} journals are closed in the database or open there with another key; they were left as they are.`,
      1,
    );
  } catch (fault) {
    if (!(fault instanceof StoreAwayError)) throw fault;
    return complain(
      `The move was broken off: ${fault.message}. Begin it again when the database is back.`,
      1,
    );
  }
}

import { mkdir, readFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { openSealedFolder } from '#outside/sealed-store/open-sealed-folder.ts';
import { reasonOf } from '#outside/sealed-store/reason-of.ts';
import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';

/** The environment's name for a connection string. */
export const DATABASE = 'STAGEWRIGHT_DATABASE';

/** Where "serve" was told to keep sealed journals; with neither, and nothing in the environment, in the usual folder. */
export interface KeptIn {
  readonly data?: string;
  readonly databaseFile?: string;
}

/** Where journals are kept when nothing is said. */
export function usualFolder(home = homedir()): string {
  return join(home, '.stagewright');
}

/**
 * The store that was asked for (SYN-27). Where none was, the usual folder's; undefined, and said, where that cannot be
 * used: the app itself needs none.
 */
export async function openKeptStore(
  { data, databaseFile }: KeptIn,
  inEnvironment: string | undefined,
  usual = usualFolder(),
): Promise<Outcome<SealedStore | undefined>> {
  const twice = namedTwice({ data, databaseFile, inEnvironment });
  if (twice) return twice;
  if (data !== undefined) return openFolder(data);
  return (await openNamedDatabase(databaseFile, inEnvironment)) ?? openUsual(usual);
}

/** The database that is named by a file or the environment; undefined where none is. */
export async function openNamedDatabase(
  databaseFile: string | undefined,
  inEnvironment: string | undefined,
): Promise<Outcome<SealedStore> | undefined> {
  const twice = namedTwice({ databaseFile, inEnvironment });
  if (twice) return twice;
  if (databaseFile === undefined)
    return inEnvironment === undefined ? undefined : openDatabase(DATABASE, inEnvironment);
  const read = await readText(databaseFile);
  return read.ok ? openDatabase('--database-file', read.value) : read;
}

interface Named {
  readonly data?: string | undefined;
  readonly databaseFile: string | undefined;
  readonly inEnvironment: string | undefined;
}

function namedTwice({ data, databaseFile, inEnvironment }: Named): Outcome<never> | undefined {
  const named = [
    ...(data === undefined ? [] : ['--data']),
    ...(databaseFile === undefined ? [] : ['--database-file']),
    ...(inEnvironment === undefined ? [] : [DATABASE]),
  ];
  if (named.length < 2) return undefined;
  return refused(
    'server/kept-twice',
    'database',
    `Journals are kept in one place, and ${named.join(' and ')} name ${named.length}.`,
    'Leave one of them, and take the others away.',
  );
}

async function openUsual(folder: string): Promise<Outcome<SealedStore | undefined>> {
  const opened = await openFolder(folder);
  if (opened.ok) return opened;
  const { message, remedy } = opened.problem;
  process.stderr.write(`serve: No journals are kept for other devices. ${message} ${remedy}\n`);
  return answered(undefined);
}

async function openDatabase(source: string, connectionString: string): Promise<Outcome<SealedStore>> {
  // The driver is loaded by who asks for a database, not by every command.
  const { openPostgresStore } = await import('#outside/sealed-store/open-postgres-store.ts');
  const opened = await openPostgresStore(connectionString.trim(), (words) =>
    process.stderr.write(`serve: ${words}\n`),
  );
  if (opened.ok) return opened;
  const { code, path, message, remedy } = opened.problem;
  return refused(code, path, `${source}: ${message}`, remedy);
}

async function readText(file: string): Promise<Outcome<string>> {
  try {
    return answered(await readFile(file, 'utf8'));
  } catch (fault) {
    return refused(
      'server/no-database-file',
      'database-file',
      `The file "${file}" cannot be read (${reasonOf(fault)}).`,
      'Name a file that this user may read, with the connection string as its one line.',
    );
  }
}

async function openFolder(folder: string): Promise<Outcome<SealedStore>> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
  } catch (fault) {
    return refused(
      'server/no-data-folder',
      'data',
      `The folder "${folder}" cannot be made (${reasonOf(fault)}).`,
      'Name one this user may write to.',
    );
  }
  return openSealedFolder(folder);
}

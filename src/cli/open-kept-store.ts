import { mkdir, readFile } from 'node:fs/promises';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { openSealedFolder } from '#outside/sealed-store/open-sealed-folder.ts';
import type { SealedStore } from '#outside/sealed-store/sealed-store.ts';

/** The environment's name for a connection string. */
export const DATABASE = 'STAGEWRIGHT_DATABASE';

/** Where "serve" was told to keep sealed journals; with neither, and nothing in the environment, none are kept. */
export interface KeptIn {
  readonly data?: string;
  readonly databaseFile?: string;
}

/** The store that was asked for (SYN-27); undefined where none was. */
export async function openKeptStore(
  { data, databaseFile }: KeptIn,
  inEnvironment: string | undefined,
): Promise<Outcome<SealedStore | undefined>> {
  const named = [
    ...(data === undefined ? [] : ['--data']),
    ...(databaseFile === undefined ? [] : ['--database-file']),
    ...(inEnvironment === undefined ? [] : [DATABASE]),
  ];
  if (named.length > 1)
    return refused(
      'server/kept-twice',
      'database',
      `Journals are kept in one place, and ${named.join(' and ')} name ${named.length}.`,
      'Leave one of them, and take the others away.',
    );
  if (data !== undefined) return openFolder(data);
  if (databaseFile !== undefined) {
    const read = await readText(databaseFile);
    return read.ok ? openDatabase('--database-file', read.value) : read;
  }
  return inEnvironment === undefined ? answered(undefined) : openDatabase(DATABASE, inEnvironment);
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
      `The file "${file}" cannot be read (${codeOf(fault)}).`,
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
      `The folder "${folder}" cannot be made (${codeOf(fault)}).`,
      'Name one this user may write to.',
    );
  }
  return openSealedFolder(folder);
}

function codeOf(fault: unknown): string {
  return fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault);
}

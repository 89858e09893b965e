import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { reasonOf } from './reason-of.ts';
import type { SealedFile } from './sealed-store.ts';
import { openSqliteStore } from './sqlite-sealed-store.ts';

export const FILE = 'sealed.sqlite';
const OWNER = 'sealed.owner';

/**
 * The store of a data folder, checked from end to end before it is used (SYN-12). One process at a time owns the folder;
 * a lock left by one that was killed is taken over, one of a process that lives is not.
 */
export async function openSealedFolder(folder: string): Promise<Outcome<SealedFile>> {
  const owned = ownFolder(folder);
  if (!owned.ok) return owned;
  const file = join(folder, FILE);
  clearUnfinished(file);
  // The file's own lock lies beside it; its owner is dead, or it would have been found above.
  rmSync(`${file}.lock`, { recursive: true, force: true });
  const store = await openWhole(file);
  if (!store.ok) {
    owned.value.leave();
    return store;
  }
  return answered({
    ...store.value,
    close: async () => {
      await store.value.close();
      owned.value.leave();
    },
  });
}

/** Takes a folder for this process, until it is left. */
export function ownFolder(folder: string): Outcome<{ leave(): void }> {
  const owner = join(folder, OWNER);
  const other = ownerOf(folder);
  if (other !== undefined && other !== process.pid)
    return refused(
      'server/data-in-use',
      'data',
      `The folder "${folder}" is in use by another server (process ${other}).`,
      'Stop it, or name another folder.',
    );
  try {
    // Named when it is whole: half a number would be another process.
    writeFileSync(`${owner}.part`, String(process.pid), { mode: 0o600 });
    renameSync(`${owner}.part`, owner);
  } catch (fault) {
    return refused(
      'server/data-not-writable',
      'data',
      `The folder "${folder}" cannot be written to (${reasonOf(fault)}).`,
      'Make room on its disk, or let this user write there.',
    );
  }
  return answered({ leave: () => rmSync(owner, { force: true }) });
}

/** The process that has a folder; undefined where none that lives has it. */
function ownerOf(folder: string): number | undefined {
  const owner = join(folder, OWNER);
  const process_ = existsSync(owner) ? Number(readFileSync(owner, 'utf8')) : 0;
  return lives(process_) ? process_ : undefined;
}

/** Frees a folder's file from the lock of a server that was killed; a server that lives keeps its own. */
export function freeFromTheDead(folder: string): void {
  if (ownerOf(folder) === undefined) rmSync(join(folder, `${FILE}.lock`), { recursive: true, force: true });
}

/** Clears what a restore that was killed left beside a file: a copy not yet in place, and one not yet named. */
export function clearUnfinished(file: string): void {
  for (const left of [`${file}.restoring`, `${file}.before.part`]) clearDatabase(left);
}

/** Removes a database file and what SQLite puts beside it. */
export function clearDatabase(file: string): void {
  for (const ending of ['', '-journal', '.lock'])
    rmSync(`${file}${ending}`, { recursive: true, force: true });
}

/** A store whose file is whole from end to end. */
export async function openWhole(file: string): Promise<Outcome<SealedFile>> {
  try {
    const store = openSqliteStore(file);
    const [fault] = store.check();
    if (fault === undefined) return answered(store);
    await store.close();
    return damaged(file, fault);
  } catch (fault) {
    return damaged(file, reasonOf(fault));
  }
}

function damaged(file: string, fault: string): Outcome<SealedFile> {
  return refused(
    'server/data-damaged',
    'data',
    `The file "${file}" is damaged (${fault}).`,
    'Put a backup in its place with "stagewright restore"; each device still has its whole journal and sends it anew.',
  );
}

function lives(process_: number): boolean {
  if (!Number.isSafeInteger(process_) || process_ <= 0) return false;
  try {
    process.kill(process_, 0);
    return true;
  } catch {
    // No such process, or one that is not ours to ask: a dead one leaves its mark behind.
    return false;
  }
}

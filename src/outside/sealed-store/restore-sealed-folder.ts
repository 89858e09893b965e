import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { flushFile } from './flush-file.ts';
import { clearUnfinished, FILE, openWhole, ownFolder } from './open-sealed-folder.ts';
import { reasonOf } from './reason-of.ts';

interface Restored {
  readonly journals: number;
}

/**
 * Puts a backup in the place of a folder's sealed journals (SYN-17): the folder is taken first, the backup is checked as
 * a copy beside, and only then takes the place in one step. Where anything fails before that, all is as it was (SYN-35).
 */
export async function restoreSealedFolder(backup: string, folder: string): Promise<Outcome<Restored>> {
  const owned = takeFolder(folder);
  if (!owned.ok) return owned;
  const file = join(folder, FILE);
  try {
    return await putInPlace(backup, file);
  } catch (fault) {
    return refused(
      'server/not-restored',
      'file',
      `"${backup}" could not be put in place (${reasonOf(fault)}); what was there is as it was.`,
      'Make room on the disk, or let this user write there, and restore once more.',
    );
  } finally {
    tidyUp(file, owned.value);
  }
}

function takeFolder(folder: string): ReturnType<typeof ownFolder> {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (fault) {
    return refused(
      'server/no-data-folder',
      'data',
      `The folder "${folder}" cannot be made (${reasonOf(fault)}).`,
      'Name one this user may write to.',
    );
  }
  return ownFolder(folder);
}

async function putInPlace(backup: string, file: string): Promise<Outcome<Restored>> {
  const beside = `${file}.restoring`;
  clearUnfinished(file);
  copyFileSync(backup, beside);
  const journals = await journalsIn(beside);
  if (journals === 0) return notWhole(backup);
  flushFile(beside);
  keepBefore(file);
  await settle(file);
  renameSync(beside, file);
  flushNames(dirname(file));
  return answered({ journals });
}

/** How many journals a whole file holds; none where it is not whole. */
async function journalsIn(file: string): Promise<number> {
  const checked = await openWhole(file);
  if (!checked.ok) return 0;
  const journals = await checked.value.journals();
  await checked.value.close();
  return journals;
}

/** The old file with what it had under way, which SQLite undoes when it is opened; named at the end, so never half of it. */
function keepBefore(file: string): void {
  const before = `${file}.before`;
  rmSync(before, { force: true });
  rmSync(`${before}-journal`, { force: true });
  if (existsSync(`${file}-journal`)) copyFileSync(`${file}-journal`, `${before}-journal`);
  if (!existsSync(file)) return;
  copyFileSync(file, `${before}.part`);
  renameSync(`${before}.part`, before);
}

/**
 * What the old file had under way must not be undone in the new one, nor be lost to the old one if this is where it ends:
 * it is undone now, and only what could not be is dropped.
 */
async function settle(file: string): Promise<void> {
  rmSync(`${file}.lock`, { recursive: true, force: true });
  if (!existsSync(`${file}-journal`)) return;
  const old = await openWhole(file);
  if (old.ok) await old.value.close();
  rmSync(`${file}-journal`, { force: true });
}

function flushNames(folder: string): void {
  try {
    flushFile(folder);
  } catch {
    // Not every system flushes a folder; the new name is then as durable as that system makes names.
  }
}

function tidyUp(file: string, owned: { leave(): void }): void {
  try {
    clearUnfinished(file);
    owned.leave();
  } catch {
    // What is left over takes no part in anything; the next start clears it and takes the folder over.
  }
}

function notWhole(backup: string): Outcome<never> {
  return refused(
    'server/no-backup',
    'file',
    `"${backup}" is no whole backup, or holds no journal; nothing was changed.`,
    'Name a file that "stagewright backup" wrote.',
  );
}

import {
  copyFileSync,
  existsSync,
  mkdirSync,
  openSync,
  closeSync,
  fsyncSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { join } from 'node:path';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { FILE, openWhole, ownFolder } from './open-sealed-folder.ts';

/**
 * Puts a backup in the place of a folder's sealed journals (SYN-17): the folder is taken first, the backup is checked as
 * a copy beside, and only then takes the place in one step. Where anything fails before that, all is as it was.
 */
export async function restoreSealedFolder(
  backup: string,
  folder: string,
): Promise<Outcome<{ readonly journals: number }>> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const owned = ownFolder(folder);
  if (!owned.ok) return owned;
  const file = join(folder, FILE);
  const beside = `${file}.restoring`;
  try {
    rmSync(beside, { force: true });
    copyFileSync(backup, beside);
    const checked = await openWhole(beside);
    if (!checked.ok) return notWhole(backup);
    const journals = await checked.value.journals();
    await checked.value.close();
    if (journals === 0) return notWhole(backup);
    flush(beside);
    keepBefore(file);
    // What the old file had under way must not be rolled back into the new one.
    rmSync(`${file}-journal`, { force: true });
    rmSync(`${file}.lock`, { recursive: true, force: true });
    renameSync(beside, file);
    return answered({ journals });
  } finally {
    rmSync(beside, { force: true });
    rmSync(`${beside}-journal`, { force: true });
    owned.value.leave();
  }
}

/** The old file with what it had under way, which SQLite undoes when it is opened. */
function keepBefore(file: string): void {
  for (const [from, to] of [
    [file, `${file}.before`],
    [`${file}-journal`, `${file}.before-journal`],
  ] as const) {
    rmSync(to, { force: true });
    if (existsSync(from)) copyFileSync(from, to);
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

function flush(file: string): void {
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

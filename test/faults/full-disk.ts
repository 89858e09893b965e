import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder on a disk that can be filled to the last byte and given room again. */
export interface Disk {
  readonly folder: string;
  fill(): void;
  makeRoom(): void;
  remove(): void;
}

/** The ways to a full disk on this machine: one acted out, and a real one where this user may mount it. */
export function disks(): readonly (readonly [name: string, make: () => Disk])[] {
  const probe = mounted();
  probe?.remove();
  const real = () => {
    const disk = mounted();
    if (!disk) throw new Error('the small disk could be mounted a moment ago');
    return disk;
  };
  return [['acted out', actedOut], ...(probe ? ([['mounted', real]] as const) : [])];
}

function folderFor(): string {
  return fs.mkdtempSync(join(tmpdir(), 'full-disk-'));
}

/** A small disk in memory, filled by a file of ballast. */
function mounted(): Disk | undefined {
  const folder = folderFor();
  const mount = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=512k', 'tmpfs', folder]);
  const ballast = join(folder, 'ballast');
  const disk: Disk = {
    folder,
    fill: () => {
      const handle = fs.openSync(ballast, 'w');
      try {
        for (;;) fs.writeSync(handle, Buffer.alloc(4096));
      } catch {
        // That it takes no more is what was wanted.
      } finally {
        fs.closeSync(handle);
      }
    },
    makeRoom: () => fs.rmSync(ballast),
    remove: () => {
      spawnSync('umount', [folder]);
      fs.rmSync(folder, { recursive: true, force: true });
    },
  };
  if (mount.status === 0) return disk;
  fs.rmSync(folder, { recursive: true, force: true });
  return undefined;
}

/**
 * While it is "full" no file can grow and no folder be made, as on a disk without a free block (tried on ext4): what a
 * file has can be written over, and an empty file still has its name.
 */
function actedOut(): Disk {
  const folder = folderFor();
  const [write, make] = [fs.writeSync, fs.mkdirSync];
  const put = (writing: typeof fs.writeSync, making: typeof fs.mkdirSync): void => {
    [fs.writeSync, fs.mkdirSync] = [writing, making];
    syncBuiltinESMExports();
  };
  const noSpace = () => Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
  const grow = (handle: number, ...args: readonly unknown[]): number => {
    const [, , length, at] = args;
    if (Number(length) + Number(at) > fs.fstatSync(handle).size) throw noSpace();
    return Number(Reflect.apply(write, fs, [handle, ...args]));
  };
  const refuse = (): never => {
    throw noSpace();
  };
  const makeRoom = (): void => put(write, make);
  return {
    folder,
    fill: () => put(grow, refuse),
    makeRoom,
    remove: () => {
      makeRoom();
      fs.rmSync(folder, { recursive: true, force: true });
    },
  };
}

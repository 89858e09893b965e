import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

/**
 * How a step of the file system goes wrong. "Fails": the disk is full at this step, before it or half-way through it, and
 * what comes after goes well. "Killed": nothing comes after it, as for a process that is killed in it or behind it (which
 * is before the next).
 */
export const FILE_FAULTS = ['fails', 'fails half-way', 'is killed half-way', 'is killed after'] as const;
export type FileFault = (typeof FILE_FAULTS)[number];

/** The steps that change something on the disk. */
const STEPS = [
  'writeSync',
  'writeFileSync',
  'ftruncateSync',
  'fsyncSync',
  'renameSync',
  'copyFileSync',
  'unlinkSync',
  'rmSync',
  'mkdirSync',
  'rmdirSync',
  'openSync',
] as const;
type Step = (typeof STEPS)[number];

class DiskFault extends Error {
  readonly code = 'ENOSPC';
}

const real = new Map(STEPS.map((step) => [step, Reflect.get(fs, step)]));

function carryOut(step: Step, args: readonly unknown[]): unknown {
  const whole: unknown = real.get(step);
  return typeof whole === 'function' ? Reflect.apply(whole, fs, args) : undefined;
}

/** Half of what a step would have done, where a step can be half done. */
function halfOf(step: Step, args: readonly unknown[]): void {
  const [first, second] = args;
  if (step === 'writeSync' && second instanceof Uint8Array) {
    const [, , from = 0, length = second.length, at] = args;
    carryOut(step, [first, second, from, Number(length) >> 1, at]);
  } else if (step === 'writeFileSync') {
    const text = String(second);
    carryOut(step, [first, text.slice(0, text.length >> 1), ...args.slice(2)]);
  } else if (step === 'copyFileSync') {
    carryOut(step, args);
    fs.truncateSync(String(second), fs.statSync(String(second)).size >> 1);
  }
}

/** Opening to read changes nothing on the disk. */
function changes(step: Step, args: readonly unknown[]): boolean {
  return step !== 'openSync' || (args[1] !== 'r' && args[1] !== fs.constants.O_RDONLY);
}

export interface Faulted<Result> {
  /** What the work answered; absent where it threw, or was killed before it could answer. */
  readonly answer?: Result;
  /** Whether the step was reached. */
  readonly happened: boolean;
}

/** Does work on a disk on which one step goes wrong. Nothing else of this program may write meanwhile. */
export async function withFileFault<Result>(
  at: number,
  fault: FileFault,
  work: () => Promise<Result>,
): Promise<Faulted<Result>> {
  const disk = faultyDisk(at, fault);
  disk.putIn();
  try {
    return { answer: await work(), happened: disk.happened() };
  } catch {
    // What threw is the fault itself, or what it led to: what it left on the disk is what counts.
    return { happened: disk.happened() };
  } finally {
    disk.takeOut();
  }
}

function faultyDisk(at: number, fault: FileFault) {
  const open = new Set<number>();
  const close = fs.closeSync;
  let [steps, inside, killed] = [0, false, false];
  const take = (step: Step, args: readonly unknown[]): unknown => {
    if (killed) throw new DiskFault('killed');
    if (!changes(step, args) || (steps += 1) !== at) return carryOut(step, args);
    killed = fault.startsWith('is killed');
    if (fault.endsWith('half-way')) halfOf(step, args);
    if (fault !== 'is killed after') throw new DiskFault('the disk is full');
    return carryOut(step, args);
  };
  const taken =
    (step: Step) =>
    (...args: readonly unknown[]): unknown => {
      // A step may be made of others (writing a whole file opens it): it counts once.
      if (inside) return carryOut(step, args);
      inside = true;
      try {
        const done = take(step, args);
        if (step === 'openSync') open.add(Number(done));
        return done;
      } finally {
        inside = false;
      }
    };
  return {
    happened: () => steps >= at,
    putIn(): void {
      for (const step of STEPS) Reflect.set(fs, step, taken(step));
      fs.closeSync = (handle) => {
        open.delete(handle);
        close(handle);
      };
      syncBuiltinESMExports();
    },
    takeOut(): void {
      for (const [step, whole] of real) Reflect.set(fs, step, whole);
      fs.closeSync = close;
      syncBuiltinESMExports();
      // A system closes the files of a process that is killed.
      if (killed) for (const handle of open) close(handle);
    },
  };
}

/**
 * Lets a fault happen at step 1, 2, 3 … until the work ends without reaching it; answers how many happened. `run` does the
 * work anew with the fault at a step, holds what it left to what must be, and answers whether the fault happened.
 */
export async function sweepSteps(run: (at: number) => Promise<boolean>): Promise<number> {
  let at = 1;
  while (await run(at)) at += 1;
  return at - 1;
}

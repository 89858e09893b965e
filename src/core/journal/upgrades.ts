import { answered, refused, type Outcome } from '../problems/problem.ts';
import type { Entry } from './entry.ts';

type Data = Entry['data'];

/** One small named step from a version of a kind's data to the next. None is needed while every kind is at 1. */
export interface UpgradeStep {
  readonly kind: string;
  readonly from: number;
  readonly step: (data: Data) => Data;
}

export const upgradeSteps: readonly UpgradeStep[] = [];

/** The version new data of a kind is written at: 1, and one more for every registered step. */
export function newestVersion(kind: string, steps: readonly UpgradeStep[] = upgradeSteps): number {
  let newest = 1;
  for (const step of steps) if (step.kind === kind) newest = Math.max(newest, step.from + 1);
  return newest;
}

/**
 * Data of an entry at the newest version this program knows. An entry of a later version is kept and passed on, but
 * answered as a problem: an older program must not read what it does not understand.
 */
export function upgrade(entry: Entry, steps: readonly UpgradeStep[] = upgradeSteps): Outcome<Data> {
  const newest = newestVersion(entry.kind, steps);
  let version = entry.version ?? 1;
  if (version === newest) return answered(entry.data);
  if (version > newest) {
    return refused(
      'journal/newer-version',
      entry.id,
      `The entry "${entry.kind}" of ${entry.day} was written by a newer version of this program (${version}, here ${newest}).`,
      'It is kept as it is; update this device to have it counted.',
    );
  }
  let data = entry.data;
  while (version < newest) {
    const step = steps.find((candidate) => candidate.kind === entry.kind && candidate.from === version);
    if (!step) return noWay(entry, version);
    data = step.step(data);
    version += 1;
  }
  return answered(data);
}

function noWay(entry: Entry, version: number): Outcome<Data> {
  return refused(
    'journal/no-upgrade',
    entry.id,
    `The entry "${entry.kind}" of ${entry.day} is of version ${version}, which this program no longer reads.`,
    'It is kept as it is; report it, for every older version should be readable.',
  );
}

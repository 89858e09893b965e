import type { Problem } from '../problems/problem.ts';
import { isKnownKind } from './kinds/registry.ts';
import { createLedger } from './ledger.ts';
import { readJournal } from './read-journal.ts';
import { writeJournal } from './write-journal.ts';

export interface CheckedJournal {
  /** In the order of the file. */
  readonly problems: readonly Problem[];
  readonly summary: {
    readonly entries: number;
    readonly problems: number;
    /** Superseded or removed. */
    readonly notInForce: number;
    readonly repeatedLines: number;
    readonly unknownKinds: readonly string[];
    readonly firstDay?: string;
    readonly lastDay?: string;
    /** Whether the file is, byte for byte, what this program would write. */
    readonly canonical: boolean;
  };
}

/**
 * Looks a journal file over. Never throws; names every damaged line, every id that stands for two entries, and
 * every entry kept but not counted, with its place ("line N").
 */
export function checkJournal(lines: readonly (string | undefined)[]): CheckedJournal {
  const read = readJournal(lines);
  const ledger = createLedger(read.entries);
  const problems = [...read.problems];
  for (const problem of ledger.problems) problems.push({ ...problem, path: placeOf(problem.path) });
  problems.sort((a, b) => lineNumber(a) - lineNumber(b));
  const days = ledger.days();
  const [firstDay, lastDay] = [days[0], days.at(-1)];
  return {
    problems,
    summary: {
      entries: read.entries.length,
      problems: problems.length,
      notInForce: read.entries.filter((entry) => !ledger.inForce(entry.id)).length,
      repeatedLines: read.repeated,
      unknownKinds: [...new Set(read.entries.map((entry) => entry.kind))]
        .filter((k) => !isKnownKind(k))
        .sort(),
      ...(firstDay === undefined ? {} : { firstDay }),
      ...(lastDay === undefined ? {} : { lastDay }),
      canonical: lines.join('\n') === writeJournal(read.entries),
    },
  };

  function placeOf(id: string): string {
    return `line ${read.lineOf.get(id) ?? 0}`;
  }
}

function lineNumber(problem: Problem): number {
  return Number(problem.path.slice('line '.length));
}

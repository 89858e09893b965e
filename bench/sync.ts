import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findPostgres } from '../test/postgres/find-postgres.ts';
import { ownPostgres } from '../test/postgres/own-postgres.ts';
import { ownServer } from '../test/sync/own-server.ts';
import { A_DAY, ATHLETES, better, type Figures, MANY, SIZES, syncFigures } from './sync-figures.ts';

/** A first sync of many entries, many athletes at once and journals of several sizes, over HTTP on this machine: SQLite and PostgreSQL side by side. */
export async function benchSync(): Promise<void> {
  const has = findPostgres() !== undefined;
  // In turns, and the better of two: what else this machine does at the time hits neither alone.
  let sqlite = await againstSqlite();
  let postgres = has ? await againstPostgres() : undefined;
  sqlite = better(sqlite, await againstSqlite());
  if (postgres) postgres = better(postgres, await againstPostgres());
  if (postgres === undefined) console.log('sync: there is no PostgreSQL on this machine; SQLite alone');
  const rows: readonly (readonly [string, string, (figures: Figures) => number])[] = [
    [`first sync of ${MANY} entries, up`, 's', ({ upMs }) => upMs / 1000],
    ['the same, down to an empty device', 's', ({ downMs }) => downMs / 1000],
    [`a day's ${A_DAY} entries more, one round trip`, 'ms', ({ dayMs }) => dayMs],
    [
      `${ATHLETES} athletes with ${A_DAY} entries each, 16 at a time`,
      'exchanges/s',
      (of) => of.exchangesPerSecond,
    ],
    ['the same, half of them within', 'ms', ({ p50Ms }) => p50Ms],
    ['the same, 99 of 100 within', 'ms', ({ p99Ms }) => p99Ms],
    ['the same, errors', '', ({ errors }) => errors],
    ['the same, entries missing when read back', '', ({ missing }) => missing],
    ...SIZES.map(
      (size) =>
        [
          `${A_DAY} entries on a journal of ${size}, median`,
          'ms',
          (figures: Figures) => figures.grownMs.get(size) ?? Number.NaN,
        ] as const,
    ),
  ];
  console.log(line('sync', 'SQLite', postgres ? 'PostgreSQL' : '', postgres ? 'ratio' : ''));
  for (const [what, unit, of] of rows) {
    const [one, other] = [of(sqlite), postgres && of(postgres)];
    const ratio = other === undefined || one === 0 ? '' : (other / one).toFixed(2);
    console.log(
      line(what, `${shown(one)} ${unit}`, other === undefined ? '' : `${shown(other)} ${unit}`, ratio),
    );
  }
}

async function againstSqlite(): Promise<Figures> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-sync-'));
  try {
    return await served(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** As PostgreSQL comes: each commit flushed to the disk, as SQLite does it here. */
async function againstPostgres(): Promise<Figures> {
  const database = await ownPostgres();
  try {
    return await served(await database.address('bench'));
  } finally {
    await database.remove();
  }
}

/** The server in a process of its own, the devices in this one. */
async function served(place: string): Promise<Figures> {
  const server = await ownServer(place);
  const ended = new Promise((resolve) => server.process.once('exit', resolve));
  try {
    return await syncFigures(server.address);
  } finally {
    server.process.kill('SIGKILL');
    await ended;
  }
}

function shown(value: number): string {
  return value.toFixed(value < 10 && !Number.isInteger(value) ? 1 : 0);
}

function line(what: string, one: string, other: string, ratio: string): string {
  return `${what.padEnd(52)}${one.padStart(18)}${other.padStart(18)}${ratio.padStart(8)}`.trimEnd();
}

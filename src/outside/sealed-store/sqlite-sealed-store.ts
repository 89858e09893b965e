import { createHash } from 'node:crypto';
import sqlite, { type Database, type QueryResult } from 'node-sqlite3-wasm';
import type { SealedEntry } from '../seal/seal-entry.ts';
import type { Entrance, SealedStore } from './sealed-store.ts';

const SCHEMA = `
  create table if not exists journal (name text primary key, access text not null) without rowid, strict;
  create table if not exists entry (
    journal text not null, seq integer not null, id text not null, stamp text not null, body text not null,
    chain text not null, primary key (journal, seq), unique (journal, id)
  ) without rowid, strict;
  create table if not exists tally (
    journal text not null, id text not null, stamp text not null, body text not null,
    primary key (journal, id)
  ) without rowid, strict;
`;

/** No digest reads so: nobody enters any more. */
const CLOSED = 'closed';

/**
 * Sealed journals in one SQLite file. Commits are flushed to the disk before they are answered; a crash in the middle
 * leaves the file as it was before. `:memory:` keeps nothing.
 */
export function openSqliteStore(file: string): SealedStore {
  const database = new sqlite.Database(file);
  database.exec('pragma busy_timeout = 5000; pragma synchronous = full;');
  database.exec(SCHEMA);
  return {
    knows: (journal) => database.get('select 1 from journal where name = ?', journal) !== null,
    enter: (journal, digest) => enter(database, journal, digest),
    append: (journal, entries, tally) =>
      within(database, () => {
        if (tally) setTally(database, journal, tally);
        return append(database, journal, entries);
      }),
    after: (journal, seq, limit) =>
      database
        .all(
          'select seq, id, stamp, body, chain from entry where journal = ? and seq > ? order by seq limit ?',
          [journal, seq, limit],
        )
        .map((row) => ({ ...sealedOf(row), seq: Number(row['seq']), chain: textOf(row, 'chain') })),
    chainAt: (journal, seq) => {
      const row = database.get('select chain from entry where journal = ? and seq = ?', [journal, seq]);
      return row === null ? '' : textOf(row, 'chain');
    },
    ids: (journal) =>
      database
        .all('select id from entry where journal = ? order by seq', [journal])
        .map((row) => textOf(row, 'id')),
    tallies: (journal) =>
      database
        .all('select id, stamp, body from tally where journal = ? order by id', [journal])
        .map(sealedOf),
    drop: (journal) => {
      within(database, () => {
        for (const table of ['entry', 'tally'])
          database.run(`delete from ${table} where journal = ?`, [journal]);
        database.run('insert or replace into journal (name, access) values (?, ?)', [journal, CLOSED]);
      });
    },
    journals: () =>
      Number(database.get('select count(*) as number from journal where access <> ?', CLOSED)?.['number']),
    check: () =>
      database
        .all('pragma integrity_check')
        .map((row) => textOf(row, 'integrity_check'))
        .filter((words) => words !== 'ok'),
    backup: (copy) => {
      database.run('vacuum into ?', [copy]);
    },
    close: () => database.close(),
  };
}

function setTally(database: Database, journal: string, { id, stamp, body }: SealedEntry): void {
  database.run('insert or replace into tally (journal, id, stamp, body) values (?, ?, ?, ?)', [
    journal,
    id,
    stamp,
    body,
  ]);
}

function enter(database: Database, journal: string, digest: string): Entrance {
  database.run('insert or ignore into journal (name, access) values (?, ?)', [journal, digest]);
  const row = database.get('select access from journal where name = ?', journal);
  return row !== null && textOf(row, 'access') === digest ? 'open' : 'closed';
}

function append(database: Database, journal: string, entries: readonly SealedEntry[]): number {
  const row = database.get(
    'select seq, chain from entry where journal = ? order by seq desc limit 1',
    journal,
  );
  let [last, chain] = row === null ? [0, ''] : [Number(row['seq']), textOf(row, 'chain')];
  const insert = database.prepare(
    'insert or ignore into entry (journal, seq, id, stamp, body, chain) values (?, ?, ?, ?, ?, ?)',
  );
  try {
    for (const { id, stamp, body } of entries) {
      const next = linkOf(chain, id, body);
      if (insert.run([journal, last + 1, id, stamp, body, next]).changes > 0)
        [last, chain] = [last + 1, next];
    }
  } finally {
    insert.finalize();
  }
  return last;
}

/** Whoever names a link has heard exactly what led to it. */
function linkOf(before: string, id: string, body: string): string {
  return createHash('sha256').update(`${before}\n${id}\n${body}`).digest('base64url').slice(0, 22);
}

function within<Result>(database: Database, work: () => Result): Result {
  database.exec('begin immediate');
  try {
    const result = work();
    database.exec('commit');
    return result;
  } catch (fault) {
    if (database.inTransaction) database.exec('rollback');
    throw fault;
  }
}

function sealedOf(row: QueryResult): SealedEntry {
  return { id: textOf(row, 'id'), stamp: textOf(row, 'stamp'), body: textOf(row, 'body') };
}

function textOf(row: QueryResult, column: string): string {
  const value = row[column];
  if (typeof value !== 'string') throw new TypeError(`the column ${column} holds no text`);
  return value;
}

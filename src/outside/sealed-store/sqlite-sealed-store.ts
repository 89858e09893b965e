import type { Database, QueryResult } from 'node-sqlite3-wasm';
import type { SealedEntry } from '../seal/seal-entry.ts';
import { linkOf } from './link-of.ts';
import { NoRoomError } from './no-room-error.ts';
import { Database as SqliteFile } from './sqlite-library.ts';
import type { Entrance, JournalName, SealedFile } from './sealed-store.ts';

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
  create table if not exists loan (
    journal text primary key, reader text not null, until_ms integer not null
  ) without rowid, strict;
`;

/** No digest reads so: nobody enters any more. */
const CLOSED = 'closed';

/**
 * Sealed journals in one SQLite file. Commits are flushed to the disk before they are answered; a crash in the middle
 * leaves the file as it was before. `:memory:` keeps nothing.
 */
export function openSqliteStore(file: string): SealedFile {
  const database = new SqliteFile(file);
  database.exec('pragma busy_timeout = 5000; pragma synchronous = full;');
  database.exec(SCHEMA);
  return { ...entrances(database), ...orders(database), ...loans(database), ...wholeFile(database) };
}

type Part<Name extends keyof SealedFile> = Pick<SealedFile, Name>;

function entrances(database: Database): Part<'knows' | 'enter' | 'drop' | 'journals'> {
  return {
    knows: async (journal) => database.get('select 1 from journal where name = ?', journal) !== null,
    enter: async (journal, digest) => enter(database, journal, digest),
    drop: async (journal) => {
      within(database, () => {
        for (const table of ['entry', 'tally', 'loan'])
          database.run(`delete from ${table} where journal = ?`, [journal]);
        database.run('insert or replace into journal (name, access) values (?, ?)', [journal, CLOSED]);
      });
    },
    journals: async () =>
      Number(database.get('select count(*) as number from journal where access <> ?', CLOSED)?.['number']),
  };
}

function orders(database: Database): Part<'append' | 'after' | 'chainAt' | 'ids' | 'tallies'> {
  return {
    append: async (journal, entries, tally) =>
      within(database, () => {
        // Dropped since this device was let in: as if it had been dropped an instant later.
        if (isClosed(database, journal)) return 0;
        if (tally) setTally(database, journal, tally);
        return append(database, journal, entries);
      }),
    after: async (journal, seq, limit) =>
      database
        .all(
          'select seq, id, stamp, body, chain from entry where journal = ? and seq > ? order by seq limit ?',
          [journal, seq, limit],
        )
        .map((row) => ({ ...sealedOf(row), seq: Number(row['seq']), chain: textOf(row, 'chain') })),
    chainAt: async (journal, seq) => {
      const row = database.get('select chain from entry where journal = ? and seq = ?', [journal, seq]);
      return row === null ? '' : textOf(row, 'chain');
    },
    ids: async (journal) =>
      database
        .all('select id from entry where journal = ? order by seq', [journal])
        .map((row) => textOf(row, 'id')),
    tallies: async (journal) =>
      database
        .all('select id, stamp, body from tally where journal = ? order by id', [journal])
        .map(sealedOf),
  };
}

function loans(database: Database): Part<'lend' | 'lentUntil' | 'ended'> {
  return {
    lend: async (journal, reader, untilMs) => {
      within(database, () =>
        database.run('insert or replace into loan (journal, reader, until_ms) values (?, ?, ?)', [
          journal,
          reader,
          untilMs,
        ]),
      );
    },
    lentUntil: async (journal, reader) => {
      const row = database.get('select until_ms from loan where journal = ? and reader = ?', [
        journal,
        reader,
      ]);
      return row === null ? undefined : Number(row['until_ms']);
    },
    ended: async (nowMs) =>
      database
        .all('select journal from loan where until_ms < ? order by journal', [nowMs])
        .map((row) => textOf(row, 'journal')),
  };
}

function wholeFile(database: Database): Part<'names' | 'check' | 'backup' | 'close'> {
  return {
    names: () =>
      database
        .all(
          'select name, access, reader, until_ms from journal left join loan on journal = name order by name',
        )
        .map(nameOf),
    check: () =>
      database
        .all('pragma integrity_check')
        .map((row) => textOf(row, 'integrity_check'))
        .filter((words) => words !== 'ok'),
    backup: (copy) => {
      database.run('vacuum into ?', [copy]);
    },
    close: async () => database.close(),
  };
}

function nameOf(row: QueryResult): JournalName {
  const access = textOf(row, 'access');
  const loan =
    row['reader'] === null ? undefined : { reader: textOf(row, 'reader'), untilMs: Number(row['until_ms']) };
  return { name: textOf(row, 'name'), ...(access !== CLOSED && { access }), ...(loan && { loan }) };
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
  const known = accessTo(database, journal);
  // Who is known is let in without a write, so that a full disk shuts nobody out from reading.
  if (known === undefined)
    within(database, () =>
      database.run('insert or ignore into journal (name, access) values (?, ?)', [journal, digest]),
    );
  return (known ?? accessTo(database, journal)) === digest ? 'open' : 'closed';
}

function accessTo(database: Database, journal: string): string | undefined {
  const row = database.get('select access from journal where name = ?', journal);
  return row === null ? undefined : textOf(row, 'access');
}

function isClosed(database: Database, journal: string): boolean {
  return database.get('select 1 from journal where name = ? and access = ?', [journal, CLOSED]) !== null;
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

/** All of the work or none of it; a disk that does not take it is said as that. */
function within<Result>(database: Database, work: () => Result): Result {
  try {
    return atOnce(database, work);
  } catch (fault) {
    throw noRoomIn(fault) ?? fault;
  }
}

function atOnce<Result>(database: Database, work: () => Result): Result {
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

/** SQLite says "full" at a limit of its own; a full disk it sees as one that does not take a write or a new file. */
function noRoomIn(fault: unknown): NoRoomError | undefined {
  const words = fault instanceof Error ? fault.message : '';
  const full = /^(database or disk is full|disk I\/O error|unable to open database file)$/.test(words);
  return full ? new NoRoomError(words) : undefined;
}

function sealedOf(row: QueryResult): SealedEntry {
  return { id: textOf(row, 'id'), stamp: textOf(row, 'stamp'), body: textOf(row, 'body') };
}

function textOf(row: QueryResult, column: string): string {
  const value = row[column];
  if (typeof value !== 'string') throw new TypeError(`the column ${column} holds no text`);
  return value;
}

import { answered, type Outcome } from '#core/problems/problem.ts';
import { databaseRefusal, readDatabasePlace } from './database-place.ts';
import { type AskDatabase, openDatabase } from './postgres-database.ts';
import { postgresSealedStore } from './postgres-sealed-store.ts';
import { reasonOf } from './reason-of.ts';
import type { SealedStore } from './sealed-store.ts';

/** Ciphertext does not compress: it is not tried. Names compare by their bytes in every locale. */
const TABLES = `
  create table if not exists journal (
    name text collate "C" primary key, access text, seq bigint not null default 0, chain text not null default ''
  );
  create table if not exists entry (
    journal text collate "C" not null, seq bigint not null, id text collate "C" not null,
    stamp text collate "C" not null, body text not null, chain text not null,
    primary key (journal, seq), unique (journal, id)
  );
  alter table entry alter column body set storage external;
  create table if not exists tally (
    journal text collate "C" not null, id text collate "C" not null, stamp text collate "C" not null,
    body text not null, primary key (journal, id)
  );
  create table if not exists loan (
    journal text collate "C" primary key, reader text not null, until_ms bigint not null
  );
`;

/** Any number that no other program in this database takes for a lock of its own. */
const MAKING_TABLES = 7_310_551_902;

/**
 * The store in a PostgreSQL, its tables made where they are not there yet. `say` hears when the database goes away and
 * comes back. Nothing said or refused here holds the password.
 */
export async function openPostgresStore(
  connectionString: string,
  say: (words: string) => void,
): Promise<Outcome<SealedStore>> {
  const place = readDatabasePlace(connectionString);
  if (!place.ok) return place;
  const database = openDatabase(connectionString, say);
  try {
    await database.within(makeTables);
    for (const words of await loose(database.ask)) say(words);
    return answered(postgresSealedStore(database));
  } catch (fault) {
    await database.close();
    return databaseRefusal(reasonOf(fault), place.value);
  }
}

/** Safe when several processes start at once: one makes the tables, the others wait and find them. */
async function makeTables(ask: AskDatabase): Promise<void> {
  await ask('select pg_advisory_xact_lock($1)', [MAKING_TABLES]);
  const [row] = await ask(
    `select bool_and(to_regclass(name) is not null) as there
     from unnest(array['journal', 'entry', 'tally', 'loan']) as name`,
  );
  // A user who may not make tables can still use those that somebody made before.
  if (row?.['there'] !== true) for (const statement of TABLES.split(';').slice(0, -1)) await ask(statement);
  for (const columns of [
    'name, access, seq, chain from journal',
    'journal, seq, id, stamp, body, chain from entry',
    'journal, id, stamp, body from tally',
    'journal, reader, until_ms from loan',
  ])
    await ask(`select ${columns} limit 0`);
}

/** What was acknowledged outlives a loss of power only where the database flushes it: said where it does not. */
async function loose(ask: AskDatabase): Promise<readonly string[]> {
  const [row] = await ask(
    `select name from pg_settings where name in ('fsync', 'synchronous_commit') and setting = 'off' limit 1`,
  );
  return row
    ? [
        `The setting ${String(row['name'])} of this database is off: what was acknowledged can be lost with the power.`,
      ]
    : [];
}

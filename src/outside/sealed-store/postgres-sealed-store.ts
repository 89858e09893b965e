import type { SealedEntry } from '../seal/seal-entry.ts';
import { linkOf } from './link-of.ts';
import type { AskDatabase, Database, Row } from './postgres-database.ts';
import type { Entrance, SealedStore } from './sealed-store.ts';

/** No digest reads so: nobody enters any more. */
const CLOSED = 'closed';

/**
 * Sealed journals in a PostgreSQL, for any number of server processes at once. The row of a journal holds the end of its
 * order and is locked while something is added to it: one order without a gap, and no journal waits for another.
 */
export function postgresSealedStore(database: Database): SealedStore {
  return {
    ...entrances(database),
    ...orders(database),
    ...loans(database),
    close: () => database.close(),
  };
}

type Part<Name extends keyof SealedStore> = Pick<SealedStore, Name>;

function entrances(database: Database): Part<'knows' | 'enter' | 'drop' | 'journals'> {
  return {
    knows: async (journal) => (await accessOf(database.ask, journal)) !== undefined,
    enter: (journal, digest) => enter(database.ask, journal, digest),
    drop: (journal) =>
      database.within(async (ask) => {
        // The journal's row first, as in every writing: two who drop at once wait for each other and do not deadlock.
        await ask(
          `insert into journal (name, access) values ($1, $2)
           on conflict (name) do update set access = excluded.access, seq = 0, chain = ''`,
          [journal, CLOSED],
        );
        for (const table of ['entry', 'tally', 'loan'])
          await ask(`delete from ${table} where journal = $1`, [journal]);
      }),
    journals: async () => {
      const [row] = await database.ask('select count(*) as number from journal where access <> $1', [CLOSED]);
      return Number(row?.['number']);
    },
  };
}

function orders(database: Database): Part<'append' | 'after' | 'chainAt' | 'ids' | 'tallies'> {
  const { ask } = database;
  return {
    append: (journal, entries, tally) => database.within((within) => append(within, journal, entries, tally)),
    after: async (journal, seq, limit) => {
      const rows = await ask(
        'select seq, id, stamp, body, chain from entry where journal = $1 and seq > $2 order by seq limit $3',
        [journal, seq, limit],
      );
      return rows.map((row) => ({ ...sealedOf(row), seq: Number(row['seq']), chain: textOf(row, 'chain') }));
    },
    chainAt: async (journal, seq) => {
      const [row] = await ask('select chain from entry where journal = $1 and seq = $2', [journal, seq]);
      return row === undefined ? '' : textOf(row, 'chain');
    },
    ids: async (journal) =>
      (await ask('select id from entry where journal = $1 order by seq', [journal])).map((row) =>
        textOf(row, 'id'),
      ),
    tallies: async (journal) =>
      (await ask('select id, stamp, body from tally where journal = $1 order by id', [journal])).map(
        sealedOf,
      ),
  };
}

function loans({ ask }: Database): Part<'lend' | 'lentUntil' | 'ended'> {
  return {
    lend: async (journal, reader, untilMs) => {
      await ask(
        `insert into loan (journal, reader, until_ms) values ($1, $2, $3)
         on conflict (journal) do update set reader = excluded.reader, until_ms = excluded.until_ms`,
        [journal, reader, untilMs],
      );
    },
    lentUntil: async (journal, reader) => {
      const [row] = await ask('select until_ms from loan where journal = $1 and reader = $2', [
        journal,
        reader,
      ]);
      return row === undefined ? undefined : Number(row['until_ms']);
    },
    ended: async (nowMs) =>
      (await ask('select journal from loan where until_ms < $1 order by journal', [nowMs])).map((row) =>
        textOf(row, 'journal'),
      ),
  };
}

async function accessOf(ask: AskDatabase, journal: string): Promise<string | undefined> {
  const [row] = await ask('select access from journal where name = $1 and access is not null', [journal]);
  return row && textOf(row, 'access');
}

async function enter(ask: AskDatabase, journal: string, digest: string): Promise<Entrance> {
  const known = await accessOf(ask, journal);
  if (known !== undefined) return known === digest ? 'open' : 'closed';
  await ask(
    `insert into journal (name, access) values ($1, $2)
     on conflict (name) do update set access = excluded.access where journal.access is null`,
    [journal, digest],
  );
  return (await accessOf(ask, journal)) === digest ? 'open' : 'closed';
}

interface Head {
  readonly last: number;
  readonly chain: string;
  readonly closed: boolean;
}

/** The end of a journal's order, held against everyone else until the transaction ends. */
async function holdHead(ask: AskDatabase, journal: string): Promise<Head> {
  const hold = 'select seq, chain, access from journal where name = $1 for update';
  let [row] = await ask(hold, [journal]);
  if (row === undefined) {
    await ask('insert into journal (name) values ($1) on conflict do nothing', [journal]);
    [row] = await ask(hold, [journal]);
  }
  if (row === undefined) throw new Error('a journal that was just made is not there');
  return { last: Number(row['seq']), chain: textOf(row, 'chain'), closed: row['access'] === CLOSED };
}

async function append(
  ask: AskDatabase,
  journal: string,
  entries: readonly SealedEntry[],
  tally?: SealedEntry,
): Promise<number> {
  const head = await holdHead(ask, journal);
  // Dropped by another process since this device was let in: as if it had been dropped an instant later.
  if (head.closed) return head.last;
  if (tally)
    await ask(
      `insert into tally (journal, id, stamp, body) values ($1, $2, $3, $4)
       on conflict (journal, id) do update set stamp = excluded.stamp, body = excluded.body`,
      [journal, tally.id, tally.stamp, tally.body],
    );
  const fresh = entries.length === 0 ? [] : await newAmong(ask, journal, entries);
  return fresh.length === 0 ? head.last : keep(ask, journal, head, fresh);
}

/** Those that are not there yet, each name once, the first of it. */
async function newAmong(
  ask: AskDatabase,
  journal: string,
  entries: readonly SealedEntry[],
): Promise<readonly SealedEntry[]> {
  const rows = await ask('select id from entry where journal = $1 and id = any($2::text[])', [
    journal,
    entries.map(({ id }) => id),
  ]);
  const known = new Set(rows.map((row) => textOf(row, 'id')));
  return entries.filter(({ id }) => !known.has(id) && known.add(id));
}

async function keep(
  ask: AskDatabase,
  journal: string,
  head: Head,
  fresh: readonly SealedEntry[],
): Promise<number> {
  let chain = head.chain;
  const chains = fresh.map(({ id, body }) => (chain = linkOf(chain, id, body)));
  const last = head.last + fresh.length;
  await ask(
    `insert into entry (journal, seq, id, stamp, body, chain)
     select $1, $2::bigint + place, id, stamp, body, chain
     from unnest($3::text[], $4::text[], $5::text[], $6::text[])
       with ordinality as given (id, stamp, body, chain, place)`,
    [
      journal,
      head.last,
      fresh.map(({ id }) => id),
      fresh.map(({ stamp }) => stamp),
      fresh.map(({ body }) => body),
      chains,
    ],
  );
  await ask('update journal set seq = $2, chain = $3 where name = $1', [journal, last, chain]);
  return last;
}

function sealedOf(row: Row): SealedEntry {
  return { id: textOf(row, 'id'), stamp: textOf(row, 'stamp'), body: textOf(row, 'body') };
}

function textOf(row: Row, column: string): string {
  const value = row[column];
  if (typeof value !== 'string') throw new TypeError(`the column ${column} holds no text`);
  return value;
}

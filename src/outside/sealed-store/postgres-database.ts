import pg from 'pg';
import { NoRoomError } from './no-room-error.ts';
import { reasonOf } from './reason-of.ts';
import { StoreAwayError } from './store-away-error.ts';

export type Row = Readonly<Record<string, unknown>>;
/** One statement; its values travel apart from its text. */
export type AskDatabase = (text: string, values?: readonly unknown[]) => Promise<readonly Row[]>;

export interface Database {
  readonly ask: AskDatabase;
  /** All of the statements or none, on one connection. */
  within<Result>(work: (ask: AskDatabase) => Promise<Result>): Promise<Result>;
  close(): Promise<void>;
}

/** So few that several processes fit the hundred connections of a PostgreSQL as it comes; no wait is without an end. */
const LIMITS = {
  max: 10,
  connectionTimeoutMillis: 5000,
  idleTimeoutMillis: 30_000,
  lock_timeout: 10_000,
  statement_timeout: 15_000,
  idle_in_transaction_session_timeout: 15_000,
  query_timeout: 20_000,
  keepAlive: true,
  application_name: 'stagewright',
} as const;

/**
 * A pool of connections that outlives its database: while that is away each call throws a StoreAwayError, afterwards
 * they answer again. `say` hears of each change once.
 */
export function openDatabase(connectionString: string, say: (words: string) => void): Database {
  const pool = new pg.Pool({ ...LIMITS, connectionString });
  const standing = watch(say);
  // A connection at rest that breaks is taken out of the pool; without a listener it would end the process.
  pool.on('error', (fault) => standing.fails(reasonOf(fault)));
  const told = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    try {
      const result = await work();
      standing.answers();
      return result;
    } catch (fault) {
      throw standing.translated(fault);
    }
  };
  return {
    ask: (text, values) => told(() => askOn(pool, text, values)),
    within: (work) => told(() => inTransaction(pool, work)),
    close: () => pool.end(),
  };
}

async function inTransaction<Result>(
  pool: pg.Pool,
  work: (ask: AskDatabase) => Promise<Result>,
): Promise<Result> {
  const client = await pool.connect();
  let broken = true;
  // What breaks between two statements is heard by the next of them; without a listener it would end the process.
  const heard = (): void => undefined;
  client.on('error', heard);
  try {
    await askOn(client, 'begin');
    const result = await work((text, values) => askOn(client, text, values));
    await askOn(client, 'commit');
    broken = false;
    return result;
  } finally {
    client.off('error', heard);
    // A connection that failed is not used again: the database undoes what was under way on it.
    client.release(broken);
  }
}

async function askOn(
  on: Pick<pg.Pool, 'query'> | pg.PoolClient,
  text: string,
  values: readonly unknown[] = [],
): Promise<readonly Row[]> {
  const { rows } = await on.query<Row>(text, [...values]);
  return rows;
}

function watch(say: (words: string) => void) {
  let state: 'unknown' | 'answers' | 'away' = 'unknown';
  const fails = (reason: string): void => {
    if (state === 'answers') say(`The database does not answer (${reason}); devices are told to try again.`);
    if (state === 'answers') state = 'away';
  };
  return {
    fails,
    answers: (): void => {
      if (state === 'away') say('The database answers again.');
      state = 'answers';
    },
    /** A fault of our own statements stays what it is; with any other the database is away. */
    translated: (fault: unknown): unknown => {
      const reason = reasonOf(fault);
      if (OWN_FAULT.test(reason)) return fault;
      if (reason === DISK_FULL) return new NoRoomError(reason);
      fails(reason);
      return new StoreAwayError(reason);
    },
  };
}

/** SQLSTATE classes (PostgreSQL manual, appendix A): wrong data, broken constraint, wrong statement or no permission. */
const OWN_FAULT = /^(22|23|42)[0-9A-Z]{3}$/;

/** SQLSTATE disk_full (appendix A): a file cannot grow; what is there is still read. */
const DISK_FULL = '53100';

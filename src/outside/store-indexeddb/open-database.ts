import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';

/**
 * `log` holds the journal: a record is a run of entries as JSON Lines, under a number that only grows. `blobs` holds
 * photographs by name. A number is never used twice, so it serves as the mark of what has been read.
 */
interface Schema extends DBSchema {
  log: { key: number; value: string };
  blobs: { key: string; value: Blob };
}

export type Database = IDBPDatabase<Schema>;
/** A change of the log under way. */
export type Change = IDBPTransaction<Schema, ['log'], 'readwrite'>;

/** One connection, opened when first needed and again after the browser cut it. */
export interface Connection {
  get(): Promise<Database>;
  close(): Promise<void>;
}

export function connect(name: string): Connection {
  let opened: Promise<Database> | undefined;

  function open(): Promise<Database> {
    const opening = openDB<Schema>(name, 1, {
      upgrade(database) {
        database.createObjectStore('log', { autoIncrement: true });
        database.createObjectStore('blobs');
      },
      // A newer version of the app in another tab must not wait for this one.
      blocking: (_current, _blocked, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        opened = undefined;
      },
      terminated: () => {
        opened = undefined;
      },
    });
    opening.catch(() => {
      opened = undefined;
    });
    return opening;
  }

  return {
    get: () => (opened ??= open()),
    close: async () => {
      const closing = opened;
      opened = undefined;
      (await closing)?.close();
    },
  };
}

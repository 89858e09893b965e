import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Debian keeps each version of PostgreSQL in a folder of its own. */
const VERSIONS = '/usr/lib/postgresql';

/** The folder of the newest PostgreSQL's programs on this machine, or the one named by POSTGRES_BIN; undefined where there is none. */
export function findPostgres(versions = VERSIONS, named = process.env['POSTGRES_BIN']): string | undefined {
  const folders = existsSync(versions)
    ? readdirSync(versions)
        .sort((a, b) => Number(b) - Number(a))
        .map((version) => join(versions, version, 'bin'))
    : [];
  return (named === undefined ? folders : [named]).find(
    (folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')),
  );
}

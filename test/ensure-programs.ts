/**
 * The browser tests drive a real Chromium, and the tests of test/postgres start a real PostgreSQL. Where there is none, this fetches
 * Debian's packages (as root), or says how. Without Chromium it fails; without PostgreSQL its tests are left out, and that is said.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { findPostgres } from './postgres/find-postgres.ts';

const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
/** Debian's package makes and starts a database server of its own unless it finds this. */
const CLUSTERS = '/etc/postgresql-common';

function run(command: string, ...args: string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive', UCF_FORCE_CONFFOLD: '1' };
  return spawnSync(command, args, { stdio: ['ignore', 2, 2], env }).status === 0;
}

function install(packages: readonly string[]): void {
  if (packages.length === 0 || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  if (packages.includes('postgresql') && !existsSync(CLUSTERS)) {
    mkdirSync(CLUSTERS);
    writeFileSync(`${CLUSTERS}/createcluster.conf`, 'create_main_cluster = false\n');
  }
  if (!run('apt-get', 'update')) return;
  // One by one: a package that cannot be had does not keep the other away.
  for (const name of packages) run('apt-get', 'install', '-y', '--no-install-recommends', name);
}

install([
  ...(existsSync(CHROMIUM) || process.env['CHROMIUM'] !== undefined ? [] : ['chromium']),
  ...(findPostgres() !== undefined || process.env['POSTGRES_BIN'] !== undefined ? [] : ['postgresql']),
]);
if (!existsSync(CHROMIUM)) {
  process.stderr.write(
    `The browser tests need Chromium, and there is none at ${CHROMIUM}: install it ("apt-get install chromium") or set CHROMIUM to its path.\n`,
  );
  process.exitCode = 1;
}
if (findPostgres() === undefined)
  process.stderr.write(
    'There is no PostgreSQL on this machine: the tests of test/postgres are left out. Install it ("apt-get install postgresql") or set POSTGRES_BIN to the folder of its programs.\n',
  );

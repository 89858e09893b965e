// The browser tests drive a real Chromium. Where there is none, this fetches Debian's package (as root), or says how.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

function run(command, ...args) {
  return spawnSync(command, args, { stdio: ['ignore', 2, 2] }).status === 0;
}

if (!existsSync(CHROMIUM)) {
  const mayInstall =
    process.env.CHROMIUM === undefined && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  const installed =
    mayInstall &&
    run('apt-get', 'update') &&
    run('apt-get', 'install', '-y', '--no-install-recommends', 'chromium') &&
    existsSync(CHROMIUM);
  if (!installed) {
    console.error(
      `The browser tests need Chromium, and there is none at ${CHROMIUM}: install it ("apt-get install chromium") or set CHROMIUM to its path.`,
    );
    process.exitCode = 1;
  }
}

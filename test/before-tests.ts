/** What comes before the tests: programs they need are fetched while types, lint, dead code and the build are gone through. */
import { spawn } from 'node:child_process';

/** One command after the other, until one fails; each prints to the end before the next begins. */
async function lane(commands: readonly (readonly string[])[]): Promise<boolean> {
  for (const [command = '', ...args] of commands) {
    const child = spawn(command, args, { stdio: 'inherit', shell: process.platform === 'win32' });
    const code = await new Promise((resolve, reject) => child.once('exit', resolve).once('error', reject));
    if (code !== 0) return false;
  }
  return true;
}

const lanes = await Promise.all([
  lane([[process.execPath, '--import', 'tsx', 'test/ensure-programs.ts']]),
  lane([
    ['npm', 'run', 'types'],
    ['npm', 'run', 'lint'],
    ['npm', 'run', 'dead'],
    ['npm', 'run', 'build', '--', '--logLevel', 'warn'],
  ]),
]);
if (!lanes.every(Boolean)) process.exitCode = 1;

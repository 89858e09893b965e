import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { loadAppFiles } from '../server/app-files.ts';
import { createServer } from '../server/create-server.ts';
import { listen } from '../server/listen.ts';
import type { PlainCommand } from './command.ts';

const PORT = 4173;
const REPOSITORY = join(import.meta.dirname, '../..');
const APP_FOLDER = join(REPOSITORY, 'dist/app');

const help = `stagewright serve [--port ${PORT}] [--data DIR]     the app on this machine

--port   where to listen, on 127.0.0.1 only; 0 takes any free port
--data   a folder of this server's own, made where it is missing; the journal itself stays in the browser`;

export const serveCommand: PlainCommand = {
  name: 'serve',
  summary: 'The app on this machine; prints the address to open.',
  help,
  async run(args) {
    const options = readOptions(args);
    if (!options.ok) return complain(`${options.problem.message} ${options.problem.remedy}\n\n${help}`, 2);
    const { port, data } = options.value;
    if (data !== undefined) {
      const made = await makeFolder(data);
      if (!made.ok) return complain(`${made.problem.message} ${made.problem.remedy}`, 1);
    }
    const files = loadAppFiles(APP_FOLDER) ?? (await buildApp());
    if (!files) return complain('The app could not be built. See what "npm run build" says.', 1);
    const listening = await listen(createServer({ files }), port);
    if (!listening.ok) return complain(`${listening.problem.message} ${listening.problem.remedy}`, 1);
    process.stdout.write(`Stagewright is at ${listening.value.address} (stop it with Ctrl+C)\n`);
    await stopAsked();
    await listening.value.stop();
    return 0;
  },
};

/** Straight after an install there is no built app yet: it is built here, once. */
async function buildApp(): Promise<ReturnType<typeof loadAppFiles>> {
  process.stderr.write('The app is not built yet; building it takes some seconds (npm run build).\n');
  try {
    const { build } = await import('vite');
    await build({
      configFile: join(REPOSITORY, 'vite.config.ts'),
      root: join(REPOSITORY, 'src/app'),
      logLevel: 'warn',
    });
  } catch (fault) {
    process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`);
  }
  return loadAppFiles(APP_FOLDER);
}

function readOptions(args: readonly string[]): Outcome<{ port: number; data?: string }> {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { port: { type: 'string' }, data: { type: 'string' } },
    });
    const port = Number(values.port ?? PORT);
    if (!/^\d{1,5}$/.test(values.port ?? String(PORT)) || port > 65_535) {
      return refused('server/port', 'port', `"${values.port}" is no port.`, 'Give a number from 0 to 65535.');
    }
    return answered({ port, ...(values.data === undefined ? {} : { data: resolve(values.data) }) });
  } catch (fault) {
    const message = fault instanceof Error ? fault.message : String(fault);
    return refused('server/unknown-option', '', message, 'Only --port and --data are known.');
  }
}

async function makeFolder(folder: string): Promise<Outcome<string>> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    return answered(folder);
  } catch (fault) {
    const reason = fault instanceof Error && 'code' in fault ? String(fault.code) : String(fault);
    return refused(
      'server/no-data-folder',
      'data',
      `The folder "${folder}" cannot be made (${reason}).`,
      'Name one this user may write to.',
    );
  }
}

function stopAsked(): Promise<void> {
  return new Promise((asked) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => asked());
  });
}

function complain(text: string, status: number): number {
  process.stderr.write(`${text}\n`);
  return status;
}

import { toJsonSchema } from '@valibot/to-json-schema';
import { answerLines } from './answer-lines.ts';
import type { LineCommand } from './command.ts';
import { lineCommands, plainCommands } from './commands.ts';

/** Runs the command named by the first argument; returns the exit status (0 done, 1 a problem, 2 wrong usage). */
export async function main(args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === 'help' || name === '--help') return print(overview());
  const line = lineCommands.find((command) => command.name === name);
  if (line) return runLineCommand(line, rest);
  const plain = plainCommands.find((command) => command.name === name);
  if (plain) return rest.includes('--help') ? print(plain.help) : plain.run(rest);
  process.stderr.write(`There is no command "${name}".\n\n${overview()}\n`);
  return 2;
}

async function runLineCommand(command: LineCommand, args: readonly string[]): Promise<number> {
  if (args.includes('--schema')) return print(schemaText(command));
  const switches = new Set<string>();
  for (const arg of args) {
    const known = arg.startsWith('--') && command.switches?.includes(arg.slice(2));
    if (arg === '--help') return print(lineHelp(command));
    if (!known) {
      process.stderr.write(`"${arg}" is not known to ${command.name}.\n\n${lineHelp(command)}\n`);
      return 2;
    }
    switches.add(arg.slice(2));
  }
  if (process.stdin.isTTY) return print(lineHelp(command));
  return answerLines(command, switches, process.stdin, process.stdout);
}

function overview(): string {
  const rows = [...lineCommands, ...plainCommands].map((c) => `  ${c.name.padEnd(10)}${c.summary}`);
  return ['stagewright COMMAND', '', ...rows, '', 'stagewright COMMAND --help says more.'].join('\n');
}

function lineHelp(command: LineCommand): string {
  const flags = ['--schema', ...(command.switches ?? []).map((s) => `--${s}`)].join(' ');
  return [
    `stagewright ${command.name} < requests > answers     ${command.summary}`,
    '',
    'Reads one JSON request a line on standard input, writes one JSON answer a line on standard output.',
    `Switches: ${flags}`,
  ].join('\n');
}

function schemaText(command: LineCommand): string {
  // A check such as "a date that is in the calendar" has no counterpart in JSON Schema; the type still stands.
  const options = { errorMode: 'ignore', target: 'draft-2020-12' } as const;
  return JSON.stringify(
    { request: toJsonSchema(command.request, options), answer: toJsonSchema(command.answer, options) },
    null,
    2,
  );
}

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return 0;
}

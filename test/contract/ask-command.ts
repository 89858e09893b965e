import { PassThrough, Readable } from 'node:stream';
import { answerLines } from '../../src/cli/answer-lines.ts';
import type { LineCommand } from '../../src/cli/command.ts';

/** What a command answers to text on its standard input: its exit status and the JSON of each line it writes. */
export async function askCommand(
  command: LineCommand,
  text: string,
  switches: readonly string[] = [],
): Promise<{ status: number; answers: unknown[] }> {
  const output = new PassThrough();
  const status = await answerLines(command, new Set(switches), Readable.from([text]), output);
  output.end();
  const written = Buffer.concat(await output.toArray()).toString('utf8');
  return {
    status,
    answers: written
      .trim()
      .split('\n')
      .map((line): unknown => JSON.parse(line)),
  };
}

/** Requests as lines of JSON. */
export function asLines(requests: readonly object[]): string {
  return requests.map((request) => `${JSON.stringify(request)}\n`).join('');
}

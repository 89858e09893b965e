import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Problem } from '#core/problems/problem.ts';
import type { LineCommand } from './command.ts';
import { finiteJson } from './finite-json.ts';

/**
 * One JSON request a line in, one JSON answer a line out, in order. A request that cannot be answered gives
 * {"problem": ...} on its own line; the others are still answered. Returns the exit status: 1 where there was one.
 */
export async function answerLines(
  command: LineCommand,
  switches: ReadonlySet<string>,
  input: Readable,
  output: Writable,
): Promise<number> {
  let status = 0;
  let number = 0;
  for await (const line of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    number += 1;
    if (line.trim() === '') continue;
    const answer = await answerLine(command, switches, line, number);
    if (answer.refused) status = 1;
    if (!output.write(`${answer.json}\n`)) await new Promise((resolve) => output.once('drain', resolve));
  }
  return status;
}

async function answerLine(
  command: LineCommand,
  switches: ReadonlySet<string>,
  line: string,
  number: number,
): Promise<Answer> {
  const parsed = parseJson(line);
  if (parsed === undefined) return refusal(unreadable(command.room, number));
  try {
    const outcome = await command.respond(parsed.value, switches);
    return outcome.ok ? { refused: false, json: finiteJson(outcome.value) } : refusal(outcome.problem);
  } catch (fault) {
    process.stderr.write(
      `${command.name}: line ${number}: ${fault instanceof Error ? fault.stack : String(fault)}\n`,
    );
    return refusal({
      code: `${command.room}/fault`,
      path: `line ${number}`,
      message: 'The request could not be worked out: a fault of this program, not of the request.',
      remedy: 'Report it together with the request and what was written to standard error.',
    });
  }
}

interface Answer {
  readonly refused: boolean;
  readonly json: string;
}

function refusal(problem: Problem): Answer {
  return { refused: true, json: finiteJson({ problem }) };
}

function parseJson(line: string): { value: unknown } | undefined {
  try {
    return { value: JSON.parse(line) };
  } catch {
    return undefined;
  }
}

function unreadable(room: string, number: number): Problem {
  return {
    code: `${room}/not-json`,
    path: `line ${number}`,
    message: `Line ${number} is not JSON.`,
    remedy: 'Write one whole JSON object on the line.',
  };
}

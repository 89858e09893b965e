import type { BaseIssue, GenericSchema, InferOutput } from 'valibot';
import { safeParse } from 'valibot';
import { answered, refused, type Outcome, type Problem } from './problem.ts';

/**
 * Holds a value against a schema. The first fault is answered as a problem with its path; a field that is not known
 * goes before all others, for a typo explains the field that then seems missing.
 */
export function readShape<Schema extends GenericSchema>(
  schema: Schema,
  input: unknown,
  room: string,
): Outcome<InferOutput<Schema>> {
  if (Array.isArray(input) && schema.type === 'strict_object') {
    return refused(`${room}/wrong-value`, '', 'The request is a list.', 'Make it an object.');
  }
  const result = safeParse(schema, input, { abortPipeEarly: true });
  if (result.success) return answered(result.output);
  const issues = result.issues.map(deepest);
  const telling = issues.find(isUnknownField) ?? deepest(result.issues[0]);
  return { ok: false, problem: problemFromIssue(telling, room) };
}

/** In a union, the branch that got furthest says most. */
function deepest(issue: BaseIssue<unknown>): BaseIssue<unknown> {
  let best = issue;
  for (const inner of issue.issues ?? []) {
    const candidate = deepest(inner);
    if (pathOf(candidate).length > pathOf(best).length) best = candidate;
  }
  return best;
}

function isUnknownField(issue: BaseIssue<unknown>): boolean {
  return issue.type === 'strict_object' && issue.expected === 'never';
}

function pathOf(issue: BaseIssue<unknown>): string {
  return (issue.path ?? []).map((step) => String(step.key)).join('.');
}

function problemFromIssue(issue: BaseIssue<unknown>, room: string): Problem {
  const path = pathOf(issue);
  const field = path === '' ? 'The request' : `"${path}"`;
  if (isUnknownField(issue)) {
    return {
      code: `${room}/unknown-field`,
      path,
      message: `${field} is not a field that is known here.`,
      remedy: 'Remove it or correct its spelling.',
    };
  }
  if (issue.received === 'undefined') {
    return { code: `${room}/missing-field`, path, message: `${field} is missing.`, remedy: `Add ${field}.` };
  }
  return {
    code: `${room}/wrong-value`,
    path,
    message: `${field} is ${found(issue.received)}.`,
    remedy: `Make it ${expectation(issue)}.`,
  };
}

const SPOKEN: Record<string, string> = {
  Object: 'an object',
  Array: 'a list',
  string: 'a text',
  boolean: 'true or false',
};

function found(received: string): string {
  const spoken = SPOKEN[received] ?? received;
  return spoken.length > 60 ? `${spoken.slice(0, 57)}...` : spoken;
}

/** A schema's own message is a noun phrase ("a clock time \"HH:MM\""); the library's default is put into words. */
function expectation(issue: BaseIssue<unknown>): string {
  if (!issue.message.startsWith('Invalid ')) return issue.message;
  const expected = issue.expected ?? 'a value that is allowed here';
  const options = /^\((.*)\)$/.exec(expected)?.[1]?.split(' | ');
  if (options) return `one of ${options.map((option) => SPOKEN[option] ?? option).join(', ')}`;
  return SPOKEN[expected] ?? expected.replace(/^>=/, 'at least ').replace(/^<=/, 'at most ');
}

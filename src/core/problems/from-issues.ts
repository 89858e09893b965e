import type { BaseIssue, GenericSchema, InferOutput } from 'valibot';
import { safeParse } from 'valibot';
import { answered, type Outcome, type Problem } from './problem.ts';

/**
 * Holds a value against a schema. The first fault is answered as a problem with its path, so that a typo or a
 * missing field is named and never becomes a default.
 */
export function readShape<Schema extends GenericSchema>(
  schema: Schema,
  input: unknown,
  room: string,
): Outcome<InferOutput<Schema>> {
  const result = safeParse(schema, input, { abortPipeEarly: true });
  if (result.success) return answered(result.output);
  return { ok: false, problem: problemFromIssue(deepest(result.issues[0]), room) };
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

function pathOf(issue: BaseIssue<unknown>): string {
  return (issue.path ?? []).map((step) => String(step.key)).join('.');
}

function problemFromIssue(issue: BaseIssue<unknown>, room: string): Problem {
  const path = pathOf(issue);
  const field = path === '' ? 'The request' : `"${path}"`;
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    return {
      code: `${room}/unknown-field`,
      path,
      message: `${field} is not a field that is known here.`,
      remedy: 'Remove it or correct its spelling.',
    };
  }
  if (issue.received === 'undefined') {
    return {
      code: `${room}/missing-field`,
      path,
      message: `${field} is missing.`,
      remedy: `Add it: ${expectation(issue)}.`,
    };
  }
  return {
    code: `${room}/wrong-value`,
    path,
    message: `${field} is ${issue.received}.`,
    remedy: `Make it ${expectation(issue)}.`,
  };
}

/** A schema's own message is a noun phrase ("a clock time \"HH:MM\""); the library's default is not shown. */
function expectation(issue: BaseIssue<unknown>): string {
  if (!issue.message.startsWith('Invalid ')) return issue.message;
  return issue.expected === null
    ? 'a value that is allowed here'
    : issue.expected.replace(/^>=/, 'at least ');
}

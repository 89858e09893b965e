/**
 * What went wrong, where, and how to mend it.
 * `code` is "room/short-name", `path` the place in the request or journal ("eaten.0.items.1.grams", "line 12"),
 * `message` one sentence of what happened, `remedy` one sentence of how to mend it.
 */
export interface Problem {
  readonly code: string;
  readonly path: string;
  readonly message: string;
  readonly remedy: string;
}

export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

export function answered<Value>(value: Value): Outcome<Value> {
  return { ok: true, value };
}

export function refused<Value = never>(
  code: string,
  path: string,
  message: string,
  remedy: string,
): Outcome<Value> {
  return { ok: false, problem: { code, path, message, remedy } };
}

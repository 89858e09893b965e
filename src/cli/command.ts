import type { GenericSchema } from 'valibot';
import type { Outcome } from '#core/problems/problem.ts';

/**
 * A command that answers requests. Its request arrives already held against `request`; what it answers is held
 * against `answer` in the tests. `room` prefixes the codes of shape problems.
 */
export interface LineCommand {
  readonly name: string;
  readonly summary: string;
  readonly room: string;
  readonly request: GenericSchema;
  readonly answer: GenericSchema;
  /** Command-line switches without value, such as "smooth". */
  readonly switches?: readonly string[];
  /** The core's door: it reads the request's shape itself and answers or refuses. */
  readonly respond: (
    input: unknown,
    switches: ReadonlySet<string>,
  ) => Outcome<object> | Promise<Outcome<object>>;
}

/** A command that works on files or serves; it does its own reading and writing. */
export interface PlainCommand {
  readonly name: string;
  readonly summary: string;
  readonly help: string;
  readonly run: (args: readonly string[]) => Promise<number>;
}

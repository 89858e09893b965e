import type { LineCommand, PlainCommand } from './command.ts';

/** Every command the program has. */
export const lineCommands: readonly LineCommand[] = [];
export const plainCommands: readonly PlainCommand[] = [];

import { batchCommand } from './batch.ts';
import type { LineCommand, PlainCommand } from './command.ts';
import { labelCommand } from './label.ts';

/** Every command the program has. */
export const lineCommands: readonly LineCommand[] = [batchCommand, labelCommand];
export const plainCommands: readonly PlainCommand[] = [];

import { backupCommand, restoreCommand } from './backup.ts';
import { batchCommand } from './batch.ts';
import { dayCommand } from './day.ts';
import type { LineCommand, PlainCommand } from './command.ts';
import { courseCommand } from './course.ts';
import { estimateCommand } from './estimate.ts';
import { journalCommand } from './journal.ts';
import { labelCommand } from './label.ts';
import { moveCommand } from './move.ts';
import { panelCommand } from './panel.ts';
import { rampCommand } from './ramp.ts';
import { serveCommand } from './serve.ts';
import { torqueCommand } from './torque.ts';

/** Every command the program has. */
export const lineCommands: readonly LineCommand[] = [
  dayCommand,
  batchCommand,
  estimateCommand,
  courseCommand,
  rampCommand,
  torqueCommand,
  labelCommand,
  panelCommand,
];
export const plainCommands: readonly PlainCommand[] = [
  journalCommand,
  serveCommand,
  backupCommand,
  restoreCommand,
  moveCommand,
];

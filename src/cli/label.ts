import { labelAnswer, labelRequest } from '#core/kitchen/label-request.ts';
import { answerLabel } from '#core/kitchen/read-label.ts';
import type { LineCommand } from './command.ts';

export const labelCommand: LineCommand = {
  name: 'label',
  summary: 'What a food label really says: what rounding allows, and whether it adds up.',
  room: 'kitchen',
  request: labelRequest,
  answer: labelAnswer,
  respond: answerLabel,
};

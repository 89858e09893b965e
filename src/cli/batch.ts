import { answerBatch } from '#core/kitchen/answer-batch.ts';
import { batchAnswer, batchRequest } from '#core/kitchen/batch-request.ts';
import type { LineCommand } from './command.ts';

export const batchCommand: LineCommand = {
  name: 'batch',
  summary: 'One pan: raw in, cooked out, and what a portion holds.',
  room: 'kitchen',
  request: batchRequest,
  answer: batchAnswer,
  respond: answerBatch,
};

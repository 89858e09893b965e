import { answerEstimate } from '#core/body/estimate.ts';
import { estimateAnswer, estimateRequest } from '#core/body/estimate-request.ts';
import type { LineCommand } from './command.ts';

export const estimateCommand: LineCommand = {
  name: 'estimate',
  summary: 'What the body did: mass, fat, lean, maintenance, and where the plan leads.',
  room: 'body',
  request: estimateRequest,
  answer: estimateAnswer,
  switches: ['smooth'],
  respond: (input, switches) => answerEstimate(input, switches.has('smooth')),
};

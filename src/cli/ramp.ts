import { ramp } from '#core/gym/loads/ramp.ts';
import { rampAnswer, rampRequest } from '#core/gym/loads/ramp-request.ts';
import type { LineCommand } from './command.ts';

export const rampCommand: LineCommand = {
  name: 'ramp',
  summary: 'Warm-up sets and plates up to a top set, with the fewest plates moved.',
  room: 'gym',
  request: rampRequest,
  answer: rampAnswer,
  respond: ramp,
};

import { torque } from '#core/gym/machines/torque.ts';
import { torqueAnswer, torqueRequest } from '#core/gym/machines/torque-request.ts';
import type { LineCommand } from './command.ts';

export const torqueCommand: LineCommand = {
  name: 'torque',
  summary: 'What a plate-loaded machine asks over its range, and where it is hardest.',
  room: 'gym',
  request: torqueRequest,
  answer: torqueAnswer,
  respond: torque,
};

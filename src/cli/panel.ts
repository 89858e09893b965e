import { answerPanel } from '#core/health/panel/answer-panel.ts';
import { panelAnswer, panelRequest } from '#core/health/panel/panel-request.ts';
import type { LineCommand } from './command.ts';

export const panelCommand: LineCommand = {
  name: 'panel',
  summary: 'A blood panel, read with care.',
  room: 'health',
  request: panelRequest,
  answer: panelAnswer,
  respond: (input) => answerPanel(input),
};

import { performance } from 'node:perf_hooks';
import { dayAnswer } from '#core/day/day-answer.ts';
import { dayRequest } from '#core/day/day-request.ts';
import { planDay } from '#core/day/plan-day.ts';
import { solvePlates } from '#outside/solver/plate-solver.ts';
import type { LineCommand } from './command.ts';

export const dayCommand: LineCommand = {
  name: 'day',
  summary: 'The rest of today, to the gram: meals from what is in stock.',
  room: 'day',
  request: dayRequest,
  answer: dayAnswer,
  respond: (input) => planDay(input, { solver: solvePlates, clockMs: () => performance.now() }),
};

import { parse } from 'valibot';
import { answerPanel } from '#core/health/panel/answer-panel.ts';
import { panelAnswer, type PanelAnswer } from '#core/health/panel/panel-request.ts';
import type { Problem } from '#core/problems/problem.ts';

type Values = readonly object[];
export const athlete = { sex: 'male', age: 35 };
export const drawn = { date: '2027-03-01', time: '07:30', fastedHours: 12, hoursSinceHardTraining: 240 };

/** What the panel command answers to values of one draw, held against its own schema; throws on a refusal. */
export function ask(values: Values, more: object = {}): PanelAnswer {
  const outcome = answerPanel({ athlete, drawn, taking: [], values, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return parse(panelAnswer, outcome.value);
}

/** Why it refuses; undefined where it answers. */
export function problem(values: Values, more: object = {}): Problem | undefined {
  const outcome = answerPanel({ athlete, drawn, taking: [], values, ...more });
  return outcome.ok ? undefined : outcome.problem;
}

/** The first result of a panel. */
export function first(values: Values, more: object = {}): PanelAnswer['results'][number] {
  const result = ask(values, more).results[0];
  if (!result) throw new Error('no result');
  return result;
}

/** A panel that looks like muscle rather than liver, and the draw that goes with it. */
export const muscle = [
  { name: 'AST', value: 90, unit: 'U/L' },
  { name: 'ALT', value: 60, unit: 'U/L' },
  { name: 'CK', value: 2400, unit: 'U/L' },
  { name: 'GGT', value: 20, unit: 'U/L' },
  { name: 'ALP', value: 70, unit: 'U/L' },
  { name: 'bilirubin', value: 0.7, unit: 'mg/dL' },
  { name: 'platelets', value: 250, unit: '10*3/uL' },
];
export const afterLegs = { drawn: { ...drawn, hoursSinceHardTraining: 30 } };

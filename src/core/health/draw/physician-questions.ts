import type { PanelReading } from '../panel/read-panel.ts';
import { sayValue, type PanelResult } from '../panel/reading.ts';

const MOST_QUESTIONS = 12;

/** Questions worth asking, by what the panel shows; the weightiest first. */
export function questionsFor(reading: PanelReading): string[] {
  const { results, cautions } = reading;
  const has = (code: string) => cautions.some((caution) => caution.code === code);
  const find = (key: string) => results.find((result) => result.read.known?.analyte.key === key);
  const questions: string[] = [];
  const urgent = results.filter(({ flag }) => flag === 'seek care now');
  if (urgent.length > 0) questions.push(`${list(urgent)}: what is to be done today?`);
  if (has('health/muscle-pattern') || has('health/muscle-or-liver')) {
    questions.push(
      'AST and ALT are high and I lift: could it be muscle? Would you repeat them with CK, GGT, alkaline phosphatase and bilirubin after 7 to 10 days without hard training?',
    );
  }
  if (has('health/not-muscle-alone')) {
    questions.push(
      'Something is high that muscle does not raise: what could it be, and what should be done next?',
    );
  }
  if (has('health/creatine') && find('cystatinC') === undefined) {
    questions.push(
      'I take creatine and carry much muscle: would cystatin C tell more of the kidneys than creatinine?',
    );
  }
  if (has('health/biotin')) {
    questions.push(
      'I take biotin: does the assay of this laboratory use it, and should hormones be repeated after a pause?',
    );
  }
  if (has('health/energy-deficit')) {
    questions.push(
      'I diet for a show: are these signs of too little energy, what should I change now, and when do we measure again?',
    );
  }
  const shifted = results.filter(
    ({ change, flag }) => change?.real === true && (flag === 'low' || flag === 'high'),
  );
  if (shifted.length > 0)
    questions.push(
      `These have really changed and are out of their interval: ${list(shifted)}. What follows?`,
    );
  const steady = results.filter(
    (result) => (result.flag === 'low' || result.flag === 'high') && !shifted.includes(result),
  );
  for (const result of steady)
    questions.push(`${sayValue(result.read)} is ${result.flag}: does it matter, and should it be followed?`);
  questions.push('May I go on preparing as I do, and which values should we look at again, when?');
  const last = questions.at(-1) ?? '';
  return [...questions.slice(0, -1).slice(0, MOST_QUESTIONS - 1), last];
}

function list(results: readonly PanelResult[]): string {
  return results.map(({ read }) => sayValue(read)).join(', ');
}

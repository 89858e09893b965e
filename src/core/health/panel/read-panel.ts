import { readShape } from '#core/problems/from-issues.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { changeSince } from './change-since.ts';
import { derive } from './derive.ts';
import { flagOf, intervalOf, positionIn, urgencyOf } from './judge-value.ts';
import { musclePattern } from './muscle-pattern.ts';
import { notesOfDiet } from './notes-of-diet.ts';
import { notesOfState } from './notes-of-state.ts';
import { notesOfTaken } from './notes-of-taken.ts';
import { panelCautions } from './panel-cautions.ts';
import { panelRequest, type PanelRequest } from './panel-request.ts';
import { panelView, type PanelView } from './panel-view.ts';
import { panelWhy } from './panel-why.ts';
import { readEarlier, readPanelValues, type ReadPanel } from './read-panel-values.ts';
import type { DerivedValue, Note, PanelCaution, PanelResult, WithheldValue } from './reading.ts';
import type { ReadValue } from './read-value.ts';

/** A panel read: every value with its interval, flag, change and notes; what follows from them; what to beware of. */
export interface PanelReading {
  readonly request: PanelRequest;
  /** In the order given. */
  readonly results: readonly PanelResult[];
  readonly derived: readonly DerivedValue[];
  readonly withheld: readonly WithheldValue[];
  /** Urgent ones first. */
  readonly cautions: readonly PanelCaution[];
  readonly why: readonly string[];
}

const ADULT_FROM_AGE = 18;

/**
 * Reads a blood panel (HLT-01 to HLT-16). `input` is a panel request. Refuses what it would have to guess: a unit that
 * cannot be the analyte's, a value no living adult has, a code whose check digit is wrong, a person under 18.
 */
export function readPanel(input: unknown): Outcome<PanelReading> {
  const shaped = readShape(panelRequest, input, 'health');
  if (!shaped.ok) return shaped;
  const request = shaped.value;
  if (request.athlete.age < ADULT_FROM_AGE) {
    return refused(
      'health/adults-only',
      'athlete.age',
      `The age is ${request.athlete.age}; the intervals here are those of adults.`,
      "A growing body's panel belongs to a physician; correct the age if it is a slip.",
    );
  }
  const panel = readPanelValues(request.values, request.drawn, 'values', request.athlete.sex);
  if (!panel.ok) return panel;
  const earlier = readEarlier(request.earlier ?? [], panel.value, request.athlete.sex);
  if (!earlier.ok) return earlier;
  return answered(judge(request, panel.value, earlier.value.panels, earlier.value.cautions));
}

function judge(
  request: PanelRequest,
  panel: ReadPanel,
  earlier: readonly ReadPanel[],
  earlierCautions: readonly PanelCaution[],
): PanelReading {
  const judged = panel.values.map((read) => judgeOne(read, request, earlier));
  const bare = panelView(request, panel, judged);
  const results = judged.map((result) => ({ ...result, notes: [...result.notes, ...notesOf(bare, result)] }));
  const view = panelView(request, panel, results);
  const muscle = musclePattern(view);
  const derived = derive(view, muscle);
  const cautions = panelCautions(view, muscle, derived, earlierCautions);
  return { request, results, ...derived, cautions, why: panelWhy(view, derived) };
}

function judgeOne(read: ReadValue, request: PanelRequest, earlier: readonly ReadPanel[]): PanelResult {
  const interval = intervalOf(read, request.athlete.sex);
  const position = interval && positionIn(read.value, read.comparator, interval);
  const urgent = urgencyOf(read);
  const flag = flagOf(position, urgent !== undefined || (read.troponin && position === 'high'));
  const { change, notes } = changeSince(read, earlier);
  return {
    read,
    ...(interval ? { interval } : {}),
    ...(position ? { position } : {}),
    ...(urgent ? { urgent } : {}),
    ...(flag ? { flag } : {}),
    ...(change ? { change } : {}),
    notes: [...notJudged(read, interval !== undefined, flag !== undefined), ...notes],
  };
}

function notJudged(read: ReadValue, hasInterval: boolean, hasFlag: boolean): Note[] {
  const notes: Note[] = [];
  if (!read.known) {
    notes.push({
      code: 'health/unknown-analyte',
      words: hasInterval
        ? "Not in the table here: held against the laboratory's own interval only; no critical values, no trend."
        : "Not judged: this analyte is not in the table here and the laboratory's interval was not given.",
    });
  } else if (!hasInterval) {
    notes.push({
      code: 'health/no-interval',
      words: "Not judged: no interval that holds for every adult is known here; write the laboratory's own.",
    });
  } else if (!hasFlag) {
    notes.push({
      code: 'health/bound-undecided',
      words: `Not judged: ${read.comparator}${read.value} leaves open where it stands in the interval.`,
    });
  }
  if (read.comparator !== undefined) {
    notes.push({
      code: 'health/bound',
      words: `The laboratory gave a bound (${read.comparator}${read.value}): it is kept, and nothing is computed from it.`,
    });
  }
  return notes;
}

function notesOf(view: PanelView, result: PanelResult): Note[] {
  const interval = result.interval?.note;
  return [
    ...(interval === undefined
      ? []
      : [{ code: 'health/interval-holds', words: `The interval holds: ${interval}.` }]),
    ...notesOfState(view, result),
    ...notesOfTaken(view, result),
    ...notesOfDiet(view, result),
  ];
}

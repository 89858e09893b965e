import type { SourceKey } from '#core/tables/sources.ts';
import { parseClock } from '#core/units/clock.ts';
import { isFasted, SHORT_FAST_HOURS } from './fasted.ts';
import { TRAINING_SHOWS_HOURS } from './muscle-pattern.ts';
import type { PanelView } from './panel-view.ts';
import type { Note, PanelResult } from './reading.ts';

/** What the state in which blood was drawn does to a value: one rule a line. */
interface StateRule {
  readonly code: string;
  readonly analytes: readonly string[];
  readonly when: (view: PanelView, result: PanelResult, key: string) => boolean;
  readonly words: (view: PanelView, result: PanelResult) => string;
  readonly source: SourceKey;
}

const TESTOSTERONE_BEFORE_MINUTES = 10 * 60;
const INFLAMMATION_HOURS = 72;

const hours = (view: PanelView) => view.request.drawn.hoursSinceHardTraining;
const trainedWithin = (limit: number) => (view: PanelView) =>
  (hours(view) ?? Number.POSITIVE_INFINITY) <= limit;
const high = (_view: PanelView, result: PanelResult) => result.position === 'high';
const low = (_view: PanelView, result: PanelResult) => result.position === 'low';

/** Minutes of the draw; undefined where no time was given. */
export function drawMinutes(view: PanelView): number | undefined {
  const time = view.request.drawn.time;
  return time === undefined ? undefined : parseClock(time);
}

const stateRules: readonly StateRule[] = [
  {
    code: 'health/training-raises',
    analytes: ['ast', 'alt', 'ldh', 'ck'],
    when: (view, result) => trainedWithin(TRAINING_SHOWS_HOURS)(view) && result.position === 'high',
    words: (view) => `Hard training ${hours(view)} h before raises it for a week and more.`,
    source: 'pettersson-2008',
  },
  {
    code: 'health/training-not-known',
    analytes: ['ast', 'alt', 'ldh', 'ck'],
    when: (view, result) => hours(view) === undefined && result.position === 'high',
    words: () => 'Lifting raises it for a week and more; how long ago hard training was is not known.',
    source: 'pettersson-2008',
  },
  {
    code: 'health/not-of-muscle',
    analytes: ['ggt'],
    when: high,
    words: () => 'Muscle does not raise it.',
    source: 'dickerman-1999',
  },
  {
    code: 'health/training-inflames',
    analytes: ['ferritin', 'crp', 'hscrp', 'wbc'],
    when: (view, result) => trainedWithin(INFLAMMATION_HOURS)(view) && result.position !== undefined,
    words: (view) => `Hard training ${hours(view)} h before, or an illness, raises it.`,
    source: 'draw-practice',
  },
  {
    code: 'health/training-lowers-iron',
    analytes: ['iron', 'tsat'],
    when: (view, result) => trainedWithin(INFLAMMATION_HOURS)(view) && result.position === 'low',
    words: (view) => `Hard training ${hours(view)} h before, or an illness, lowers it for days.`,
    source: 'draw-practice',
  },
  {
    code: 'health/not-fasting',
    analytes: ['glucose', 'insulin', 'triglycerides'],
    when: (view) => isFasted(view) === false,
    words: (view) =>
      `Fasted ${view.request.drawn.fastedHours} h, less than ${SHORT_FAST_HOURS}: a meal raises it.`,
    source: 'simundic-2014',
  },
  {
    code: 'health/fasting-not-known',
    analytes: ['glucose', 'insulin', 'triglycerides'],
    when: (view) => isFasted(view) === undefined,
    words: () => 'Fasting was not stated; the interval is for a fast of 8 to 12 hours.',
    source: 'simundic-2014',
  },
  {
    code: 'health/testosterone-late',
    analytes: ['testosterone', 'freeTestosterone'],
    when: (view) => (drawMinutes(view) ?? 0) > TESTOSTERONE_BEFORE_MINUTES,
    words: (view) =>
      `Drawn at ${view.request.drawn.time}: it is highest before 10:00 and 20 to 25 % lower at 16:00 in men of 30 to 40 years.`,
    source: 'brambilla-2009',
  },
  {
    code: 'health/testosterone-time-not-known',
    analytes: ['testosterone', 'freeTestosterone', 'cortisol'],
    when: (view) => drawMinutes(view) === undefined,
    words: () =>
      'The time of the draw is not known; it follows the clock, and the interval is for the morning.',
    source: 'brambilla-2009',
  },
  {
    code: 'health/testosterone-fed',
    analytes: ['testosterone', 'freeTestosterone'],
    when: (view) => isFasted(view) === false,
    words: () => 'A meal lowers it by about 120 ng/dL within an hour.',
    source: 'gagliano-juca-2019',
  },
  {
    code: 'health/testosterone-twice',
    analytes: ['testosterone'],
    when: low,
    words: () => 'One low value is repeated on another morning, fasting, before it means anything.',
    source: 'brambilla-2009',
  },
  {
    code: 'health/cortisol-late',
    analytes: ['cortisol'],
    when: (view) => (drawMinutes(view) ?? 0) > TESTOSTERONE_BEFORE_MINUTES,
    words: (view) =>
      `Drawn at ${view.request.drawn.time}: it falls through the day, and the interval is for about 08:00.`,
    source: 'draw-practice',
  },
  {
    code: 'health/haemolysed',
    analytes: ['potassium', 'ast', 'ldh', 'iron', 'magnesium', 'phosphate'],
    when: (view) => view.request.drawn.haemolysed === true,
    words: () =>
      'The laboratory said red cells had burst in the tube: it reads falsely high and must be drawn again.',
    source: 'draw-practice',
  },
  {
    code: 'health/haemolysis-possible',
    analytes: ['potassium'],
    when: (view, result) =>
      view.request.drawn.haemolysed === undefined &&
      result.position === 'high' &&
      (view.isHigh('ldh') || view.isHigh('ast')),
    words: () =>
      'Red cells that burst in the tube raise potassium, LDH and AST together; until it is drawn again it counts as real.',
    source: 'draw-practice',
  },
  {
    code: 'health/muscle-raises-creatinine',
    analytes: ['creatinine'],
    when: high,
    words: () =>
      'Muscle mass, creatine and cooked meat raise it without harm to the kidney; cystatin C tells them apart.',
    source: 'vilar-neto-2020',
  },
  {
    code: 'health/fasting-raises-bilirubin',
    analytes: ['bilirubin'],
    when: (view, result) => result.position === 'high' && !view.isHigh('alp') && !view.isHigh('ggt'),
    words: () => 'Fasting and a common harmless inheritance raise it alone.',
    source: 'draw-practice',
  },
  {
    code: 'health/thick-blood',
    analytes: ['hgb', 'hct', 'albumin', 'totalProtein'],
    when: (view, result) =>
      result.position === 'high' &&
      ['hgb', 'hct', 'albumin', 'totalProtein'].filter((key) => view.isHigh(key)).length > 1,
    words: () => 'Several that rise together when the body is dry or after standing: 5 to 10 %.',
    source: 'draw-practice',
  },
];

/** Notes of the draw's circumstances on one result. */
export function notesOfState(view: PanelView, result: PanelResult): Note[] {
  const key = result.read.known?.analyte.key;
  if (key === undefined) return [];
  return stateRules
    .filter((rule) => rule.analytes.includes(key) && rule.when(view, result, key))
    .map((rule) => ({ code: rule.code, words: rule.words(view, result), source: rule.source }));
}

import type { PanelView } from './panel-view.ts';
import { sayValue, type PanelCaution, type PanelResult } from './reading.ts';

/** A week after lifting AST, ALT, LDH and CK may still be up (pettersson-2008). */
export const TRAINING_SHOWS_HOURS = 7 * 24;
/** How far above its upper limit CK stands in the rule. */
const CK_TIMES_LIMIT = 5;
/** What muscle does not raise. */
const liverOnly = ['ggt', 'alp', 'bilirubin'] as const;

/**
 * Whether high AST or ALT may come from muscle. "muscle": the whole pattern is there. "cannot tell": something was not
 * measured or does not fit. "not muscle alone": something is high that muscle does not raise. It never clears the liver.
 */
export interface MusclePattern {
  readonly verdict: 'none' | 'muscle' | 'cannot tell' | 'not muscle alone';
  readonly caution?: PanelCaution;
  /** An index made of AST and ALT has no meaning here. */
  readonly blocksLiverIndex: boolean;
}

export function musclePattern(view: PanelView): MusclePattern {
  const raised = ['ast', 'alt']
    .flatMap((key) => (view.isHigh(key) ? [view.result(key)] : []))
    .filter(present);
  if (raised.length === 0) return { verdict: 'none', blocksLiverIndex: false };
  const said = raised.map((result) => sayValue(result.read)).join(' and ');
  const hours = view.request.drawn.hoursSinceHardTraining;
  const trained = hours !== undefined && hours <= TRAINING_SHOWS_HOURS;
  const ckTimes = timesUpperLimit(view.result('ck'));
  const bigCk = ckTimes !== undefined && ckTimes > CK_TIMES_LIMIT;
  const highLiver = liverOnly.filter((key) => view.isHigh(key));
  if (highLiver.length > 0) return notMuscleAlone(view, said, highLiver, trained && bigCk);
  const missing = liverOnly.filter((key) => view.result(key) === undefined);
  if (bigCk && trained && missing.length === 0) {
    return {
      verdict: 'muscle',
      blocksLiverIndex: true,
      caution: caution(
        'health/muscle-pattern',
        `Muscle pattern: ${said} high, CK ${ckTimes.toFixed(0)} times its upper limit, GGT, alkaline phosphatase and bilirubin not high, hard training ${hours} h before. Repeat after 7 to 10 days without hard training. This does not clear the liver.`,
      ),
    };
  }
  return {
    verdict: 'cannot tell',
    blocksLiverIndex: trained || bigCk,
    caution: caution(
      'health/muscle-or-liver',
      `${said} high: muscle or liver cannot be told apart here. ${whatIsMissing(view, ckTimes, missing, hours)} Repeat after 7 to 10 days without hard training, with CK, GGT, alkaline phosphatase and bilirubin, and show it to a physician.`,
    ),
  };
}

function notMuscleAlone(
  view: PanelView,
  said: string,
  high: readonly string[],
  blocksLiverIndex: boolean,
): MusclePattern {
  const names = high
    .map((key) => view.result(key))
    .filter(present)
    .map((result) => sayValue(result.read));
  return {
    verdict: 'not muscle alone',
    blocksLiverIndex,
    caution: {
      code: 'health/not-muscle-alone',
      urgent: false,
      source: 'dickerman-1999',
      words: `${said} high together with ${names.join(' and ')}: muscle does not raise ${high.length > 1 ? 'these' : 'this'}, so training alone does not explain it. Show it to a physician soon.`,
    },
  };
}

function whatIsMissing(
  view: PanelView,
  ckTimes: number | undefined,
  missing: readonly string[],
  hours: number | undefined,
): string {
  const said: string[] = [];
  if (view.result('ck') === undefined) said.push('CK was not measured.');
  else if (ckTimes !== undefined && ckTimes <= CK_TIMES_LIMIT) {
    said.push(`CK is ${ckTimes.toFixed(1)} times its upper limit, not more than ${CK_TIMES_LIMIT}.`);
  }
  if (missing.length > 0) {
    const names = { ggt: 'GGT', alp: 'alkaline phosphatase', bilirubin: 'bilirubin' };
    said.push(`Not measured: ${missing.map((key) => names[key as keyof typeof names]).join(', ')}.`);
  }
  if (hours === undefined) said.push('How long before hard training was is not known.');
  else if (hours > TRAINING_SHOWS_HOURS) said.push(`Hard training was ${hours} h before, more than a week.`);
  return said.join(' ');
}

function timesUpperLimit(result: PanelResult | undefined): number | undefined {
  const high = result?.interval?.high;
  return result && high !== undefined && high > 0 ? result.read.value / high : undefined;
}

function caution(code: string, words: string): PanelCaution {
  return { code, words, urgent: false, source: 'pettersson-2008' };
}

function present<Value>(value: Value | undefined): value is Value {
  return value !== undefined;
}

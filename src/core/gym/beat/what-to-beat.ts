import type { BodySide, SetKind } from '#core/journal/kinds/gym-scheme.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import type { Studied } from '#core/science/studied-range.ts';
import type { Exercise } from '../book/exercise-book.ts';
import { comparableLoad } from '../loads/comparable-load.ts';
import { figureAtMost, nextFigure } from '../loads/load-step.ts';
import { estimateOneRep, type OneRepEstimate } from '../strength/one-rep-equations.ts';
import { runSeries } from '../strength/run-series.ts';
import { followsWithoutRest } from '../session/follows-without-rest.ts';
import { seriesOf } from '../strength/series-of-step.ts';
import { loadAhead, repsAhead, type RepsAhead } from '../strength/strength-ahead.ts';
import type { StrengthBelief } from '../strength/strength-filter.ts';
import type { LoggedSet, StrengthLog } from '../strength/strength-log.ts';
import { type AskedSet, type AskInput, askSet, type Push } from './ask-set.ts';
import { beatWords } from './beat-words.ts';
import { bestSet, lastComparable } from './best-set.ts';

/** A set to come, with what is known of it. */
export interface SetToCome {
  readonly exercise: Exercise;
  readonly set: SetKind;
  readonly number: number;
  readonly side: BodySide | undefined;
  readonly machine?: string | undefined;
  /** The session under way, whose own sets are no mark to beat. */
  readonly session: string;
  readonly dayNumber: number;
  /** Work already done in the session, see `precedingWork`. */
  readonly before: number;
  readonly massKg: Kilograms | undefined;
  readonly reps: { readonly min: number; readonly max: number } | undefined;
  readonly rir: number | undefined;
  /** The load that the template names, and the share of the top set it is where it is one. */
  readonly given?: SetLoad | undefined;
  readonly share?: number | undefined;
  /** What the weaker side did in this very set. */
  readonly weaker?: AskInput['weaker'];
  readonly push: Push;
  /** The caution of the exercise, with whatever noted pain has lowered. */
  readonly caution: { readonly ceilingKg?: Kilograms | undefined; readonly repsFloor?: number | undefined };
  readonly place?: string | undefined;
}

export interface WhatToBeat {
  readonly last: LoggedSet | undefined;
  readonly best: LoggedSet | undefined;
  /** Repetitions to failure expected with the load asked for (GYM-24). */
  readonly expected: RepsAhead | undefined;
  readonly asked: AskedSet | undefined;
  /** The same for any other load of the exercise; undefined where nothing compares with it. */
  readonly expectedWith: (load: SetLoad) => RepsAhead | undefined;
  /** Load for the middle of the scheme's repetitions, with the reserve wanted. */
  readonly loadForReps:
    | { readonly reps: number; readonly loadKg: Kilograms; readonly sdShare: number }
    | undefined;
  /** One-repetition maximum from the best set by the published equations, or that it lies outside them (GYM-21). */
  readonly oneRep: Studied<OneRepEstimate> | undefined;
  /** A set far above everything before it: shown, but no mark to beat. */
  readonly slip: LoggedSet | undefined;
  readonly why: readonly string[];
}

/** Reserve aimed at where the scheme does not say. Common practice, no source. */
const USUAL_RESERVE = 1;

/** What a set is to beat (GYM-25): last time, the best, what is expected today, and what is asked. */
export function whatToBeat(log: StrengthLog, ahead: SetToCome): WhatToBeat {
  const { exercise, side, machine } = ahead;
  const series = seriesOf(log, { exercise: exercise.exercise, side, machine });
  const run = series && runSeries(series.sets);
  const slips = (run?.suspects ?? []).filter(({ surprise }) => surprise > 0).map((suspect) => suspect.set);
  const sets = (series?.sets ?? []).filter((set) => !slips.includes(set));
  const earlier = sets.filter(({ session }) => session !== ahead.session);
  const follows = followsWithoutRest(ahead.set);
  const comparable = follows
    ? (series?.follow ?? []).filter(({ fact }) => fact.data.set === ahead.set)
    : sets;
  const last = lastComparable(comparable, ahead.session, ahead.set, ahead.number);
  const best = bestSet(earlier);
  const belief = run?.belief;
  const rir = ahead.rir ?? USUAL_RESERVE;
  const read = (load: SetLoad) => comparableLoad(load, exercise, log.book, ahead.massKg)?.loadKg;
  const expectedWith = (load: SetLoad): RepsAhead | undefined => {
    const loadKg = read(load);
    return belief && loadKg !== undefined && !follows ? repsAhead(belief, loadKg, ahead) : undefined;
  };
  const asked = askSet({
    last: last && { load: last.fact.data.load, reps: last.reps },
    given: ahead.given,
    weaker: ahead.weaker,
    reps: ahead.reps,
    rir,
    // Nothing is expected of a set without rest, so nothing more is asked of it.
    push: follows ? 'match' : ahead.push,
    caution: ahead.caution,
    nextFigure: (load, figureKg, way) => nextFigure(load, figureKg, way, log.book, ahead.place),
    figureAtMost: (load, figureKg) => figureAtMost(load, figureKg, log.book, ahead.place),
    chanceOf: (load, reps) => expectedWith(load)?.chanceOf(reps),
  });
  const answer = {
    last,
    best,
    expected: asked && expectedWith(asked.load),
    asked,
    expectedWith,
    loadForReps: belief && !follows ? loadFor(belief, ahead, rir) : undefined,
    slip: slips.at(-1),
    oneRep: best && estimateOneRep(best.loadKg, best.reps + (best.fact.data.rir ?? 0)),
  };
  return { ...answer, why: beatWords(answer, ahead) };
}

function loadFor(belief: StrengthBelief, ahead: SetToCome, rir: number): WhatToBeat['loadForReps'] {
  if (!ahead.reps) return undefined;
  const reps = Math.round((ahead.reps.min + ahead.reps.max) / 2);
  const { loadKg, sd } = loadAhead(belief, reps + rir, ahead);
  return { reps, loadKg, sdShare: sd };
}

import { parseDate } from '#core/units/civil-date.ts';
import { precedingWork } from '#core/gym/strength/preceding-work.ts';
import { curveOf, repetitionsAt } from '#core/gym/strength/repetition-curve.ts';
import { runSeries } from '#core/gym/strength/run-series.ts';
import { repsAhead } from '#core/gym/strength/strength-ahead.ts';
import { changeSince, passTo, type StrengthSet } from '#core/gym/strength/strength-filter.ts';
import { type LifterWorld, simulateLifter, type SimulatedLifter } from './lifter-simulator.ts';

/** How far repetitions to failure were from what was expected just before each first set of a session. */
export interface LifterScore {
  readonly world: string;
  readonly sets: number;
  /** Root of the mean square, repetitions. */
  readonly ours: number;
  /** Last time's repetitions at that load, by the plain equation where the load differs. */
  readonly lastTime: number;
  /** The average of the published equations over the last five sessions' best sets. */
  readonly equations: number;
  /** Share of sets inside the 90 % interval. */
  readonly covered: number;
  /** Strength kept over the preparation: root of the mean square in points, and share inside 90 %. */
  readonly keptPoints: number;
  readonly keptCovered: number;
}

const FIRST_SESSIONS = 8;
const START = parseDate('2027-01-04') ?? 0;

interface Asked {
  readonly truth: number;
  readonly ours: number;
  readonly lastTime: number;
  readonly equations: number;
  readonly inside: boolean;
}

/** Scores so many simulated lifters of a world; same world and seeds, same scores. */
export function scoreLifters(world: LifterWorld, lifters: number, firstSeed = 1): LifterScore {
  const asked: Asked[] = [];
  const kept: { readonly off: number; readonly inside: boolean }[] = [];
  for (let seed = firstSeed; seed < firstSeed + lifters; seed++) {
    const lifter = simulateLifter(world, seed);
    const sets = strengthSets(lifter);
    asked.push(...askEachSession(lifter, sets));
    kept.push(keptOf(lifter, sets));
  }
  const rms = (values: readonly number[]) =>
    Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
  const share = (flags: readonly boolean[]) => flags.filter(Boolean).length / flags.length;
  return {
    world: world.name,
    sets: asked.length,
    ours: rms(asked.map((each) => each.ours - each.truth)),
    lastTime: rms(asked.map((each) => each.lastTime - each.truth)),
    equations: rms(asked.map((each) => each.equations - each.truth)),
    covered: share(asked.map(({ inside }) => inside)),
    keptPoints: rms(kept.map(({ off }) => 100 * off)),
    keptCovered: share(kept.map(({ inside }) => inside)),
  };
}

function strengthSets({ sets }: SimulatedLifter): StrengthSet[] {
  return sets.map((set, i) => ({
    dayNumber: START + set.day,
    session: String(set.session),
    loadKg: set.loadKg,
    reps: set.reps,
    rir: set.rir,
    before: precedingWork(
      sets.slice(0, i).filter(({ session }) => session === set.session),
      set.restSeconds,
    ),
    massKg: set.massKg,
  }));
}

function askEachSession({ sets }: SimulatedLifter, read: readonly StrengthSet[]): Asked[] {
  return sets.flatMap((set, i) => {
    const ahead = read[i];
    if (set.place !== 0 || set.session < FIRST_SESSIONS || set.typedWrong || !ahead) return [];
    const before = read.slice(0, i);
    const belief = runSeries(before).belief;
    if (!belief) return [];
    const expected = repsAhead(belief, set.loadKg, ahead);
    return [
      {
        truth: set.couldReps,
        ours: expected.median,
        lastTime: byLastTime(before, set.loadKg),
        equations: byEquations(before, set.loadKg),
        inside: expected.q05 <= set.couldReps && set.couldReps <= expected.q95,
      },
    ];
  });
}

/** The first set of the session before, with its reserve, carried to the load by the plain curve. */
function byLastTime(before: readonly StrengthSet[], loadKg: number): number {
  const session = before.at(-1)?.session;
  const first = before.find((set) => set.session === session);
  return first ? carried(first, loadKg) : 0;
}

/** The plain curve's maximum, averaged over the first sets of the last five sessions. */
function byEquations(before: readonly StrengthSet[], loadKg: number): number {
  const sessions = [...new Set(before.map(({ session }) => session))].slice(-5);
  const firsts = sessions.flatMap((session) => before.find((set) => set.session === session) ?? []);
  return firsts.reduce((sum, set) => sum + carried(set, loadKg), 0) / firsts.length;
}

function carried({ loadKg, reps, rir = 1 }: StrengthSet, to: number): number {
  return repetitionsAt(curveOf(Math.max(1, reps + rir)) + Math.log(loadKg / to));
}

function keptOf({ sets, preparationDay }: SimulatedLifter, read: readonly StrengthSet[]) {
  const { belief } = runSeries(read, [START + preparationDay]);
  const last = sets.at(-1);
  const atStart = sets.findLast(({ day }) => day <= preparationDay) ?? sets[0];
  if (!belief || !last || !atStart) throw new Error('a lifter without sets');
  const change = changeSince(passTo(belief, START + last.day, belief.session), 0);
  if (!change) throw new Error('a start that was never reached');
  const massShare = 0.6 * Math.log(last.massKg / atStart.massKg);
  const off = change.mean + massShare - Math.log(last.oneRepKg / atStart.oneRepKg);
  return { off, inside: Math.abs(off) <= 1.645 * change.sd };
}

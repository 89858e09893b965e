import { asymmetryPercent } from '#core/gym/sides/asymmetry.ts';
import { sideDifferences } from '#core/gym/sides/side-difference.ts';
import { strengthLog } from '#core/gym/strength/strength-log.ts';
import { addDays } from '#core/units/civil-date.ts';
import { barSet, gymJournal } from '../journal/gym-journal.ts';
import { type LifterWorld, simulateLifter, type SimulatedSet } from './lifter-simulator.ts';

/** How often a side was called weaker, over lifters whose left side is so much weaker in truth. */
export interface SidesScore {
  readonly lifters: number;
  readonly calledLeft: number;
  readonly calledRight: number;
  /** Average of the difference answered, percent. */
  readonly percent: number;
  /** Share in which the newest set of each side, by Epley's equation, lies beyond the trade's ten percent. */
  readonly plainLeft: number;
  readonly plainRight: number;
}

const FIRST = '2027-01-04';
/** Tradition (source key: bishop-2018). */
const PLAIN_MARK_PERCENT = 10;

/**
 * Sessions of one simulated lifter go to the left and the right side in turn, so that both are as strong; then what the
 * left side moved is taken down by a share, repetitions as they were.
 */
export function scoreSides(world: LifterWorld, lifters: number, leftLess: number): SidesScore {
  const found = Array.from({ length: lifters }, (_, seed) => differenceOf(world, seed + 1, leftLess));
  return {
    lifters,
    calledLeft: found.filter(({ weaker }) => weaker === 'left').length / lifters,
    calledRight: found.filter(({ weaker }) => weaker === 'right').length / lifters,
    percent: found.reduce((sum, { percent }) => sum + percent, 0) / lifters,
    plainLeft: found.filter(({ plain }) => plain > PLAIN_MARK_PERCENT).length / lifters,
    plainRight: found.filter(({ plain }) => plain < -PLAIN_MARK_PERCENT).length / lifters,
  };
}

function differenceOf(world: LifterWorld, seed: number, leftLess: number) {
  const { sets } = simulateLifter(world, seed);
  const journal = gymJournal(FIRST);
  for (const set of sets) {
    journal.onDay(set.day);
    journal.write('17:00', 'set-done', sidedSet(set, leftLess));
  }
  const until = addDays(FIRST, sets.at(-1)?.day ?? 0);
  const [difference] = sideDifferences(strengthLog(journal.ledger), until);
  if (!difference) throw new Error('sides that were trained do not compare');
  return { weaker: difference.weaker, percent: difference.percent, plain: plainPercent(sets, leftLess) };
}

/** The first set of the newest session of each side, by Epley's equation. */
function plainPercent(sets: readonly SimulatedSet[], leftLess: number): number {
  const newest = (odd: 0 | 1) => sets.findLast(({ session, place }) => session % 2 === odd && place === 0);
  const [left, right] = [newest(0), newest(1)];
  if (!left || !right) throw new Error('a side that was never trained');
  return asymmetryPercent((1 - leftLess) * epleyKg(left), epleyKg(right), 'one side at a time');
}

function epleyKg({ loadKg, reps, rir = 0 }: SimulatedSet): number {
  return loadKg * (1 + (reps + rir) / 30);
}

function sidedSet(set: SimulatedSet, leftLess: number) {
  const side = set.session % 2 === 0 ? 'left' : 'right';
  const kg = side === 'left' ? set.loadKg * (1 - leftLess) : set.loadKg;
  return barSet('back-squat', kg, set.reps, {
    session: `session-${set.session}`,
    number: set.place + 1,
    side,
    ...(set.rir !== undefined && { rir: set.rir }),
    ...(set.restSeconds !== undefined && { restSeconds: set.restSeconds }),
  });
}

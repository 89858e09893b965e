import { caffeineLimits } from '#core/tables/caffeine-limits.ts';
import type { Milligrams } from '#core/units/quantities.ts';
import { rulesBetween, tooClose, type Swallowed, type TooClose } from './separation.ts';
import type { TieTime } from './tie-times.ts';

/** A dose that must find one of its times. */
export interface OpenDose {
  readonly regimen: string;
  readonly name: string;
  readonly classes: ReadonlySet<string>;
  readonly caffeineMg: Milligrams;
  readonly times: readonly TieTime[];
}

/** What already stands in the day and cannot be moved. */
export interface FixedPoint extends Swallowed {
  readonly caffeineMg: Milligrams;
}

export type Obstacle =
  | { readonly kind: 'gap'; readonly against: string; readonly close: TooClose }
  | { readonly kind: 'caffeine'; readonly sumMg: Milligrams };

export type Placement =
  | { readonly dose: OpenDose; readonly time: TieTime }
  | { readonly dose: OpenDose; readonly obstacle: Obstacle };

/** An unplaced dose costs more than any number of moves. */
const UNPLACED = 100_000;
/** Steps of the search; what a day holds needs a few hundred. */
const MOST_STEPS = 20_000;

/**
 * Gives every dose one of its times so that no two that must not meet stand inside their gap and no dose of caffeine is
 * too large: as many doses as can be, then as few and as small moves as can be. Doses that bind each other are searched
 * together (branch and bound), the others take what was asked for. Same input, same answer.
 */
export function placeDoses(doses: readonly OpenDose[], fixed: readonly FixedPoint[]): readonly Placement[] {
  const placed = new Map<OpenDose, Placement>();
  for (const group of boundTogether(doses)) {
    for (const placement of placeGroup(group, fixed)) placed.set(placement.dose, placement);
  }
  return doses.flatMap((dose) => placed.get(dose) ?? []);
}

/** Groups of doses that bind each other, directly or over others. */
function boundTogether(doses: readonly OpenDose[]): OpenDose[][] {
  const left = new Set(doses);
  const groups: OpenDose[][] = [];
  for (const seed of doses) {
    if (!left.delete(seed)) continue;
    const group = [seed];
    for (const member of group) {
      for (const other of left) {
        if (!bind(member, other)) continue;
        left.delete(other);
        group.push(other);
      }
    }
    groups.push(group.sort((a, b) => a.times.length - b.times.length));
  }
  return groups;
}

function bind(a: OpenDose, b: OpenDose): boolean {
  return (a.caffeineMg > 0 && b.caffeineMg > 0) || rulesBetween(a.classes, b.classes).length > 0;
}

function placeGroup(group: readonly OpenDose[], fixed: readonly FixedPoint[]): Placement[] {
  let best: { cost: number; times: (TieTime | undefined)[] } = {
    cost: Number.POSITIVE_INFINITY,
    times: group.map(() => undefined),
  };
  // What the doses not yet placed cost at least: each its cheapest time.
  const leastFrom = group.map((_dose, index) =>
    group.slice(index).reduce((sum, { times }) => sum + (times[0]?.cost ?? UNPLACED), 0),
  );
  let steps = 0;
  const chosen: (TieTime | undefined)[] = [];
  const standing: FixedPoint[] = [...fixed];
  const search = (index: number, cost: number): void => {
    steps += 1;
    if (cost + (leastFrom[index] ?? 0) >= best.cost || steps > MOST_STEPS) return;
    const dose = group[index];
    if (!dose) {
      best = { cost, times: [...chosen] };
      return;
    }
    for (const time of dose.times) {
      if (obstacleAt(dose, time, standing)) continue;
      standing.push(standsAt(dose, time));
      chosen[index] = time;
      search(index + 1, cost + time.cost);
      standing.pop();
    }
    chosen[index] = undefined;
    search(index + 1, cost + UNPLACED);
  };
  search(0, 0);
  const final = [...fixed, ...group.flatMap((dose, index) => pointsOf(dose, best.times[index]))];
  return group.map((dose, index): Placement => {
    const time = best.times[index];
    return time ? { dose, time } : { dose, obstacle: firstObstacle(dose, final) };
  });
}

function pointsOf(dose: OpenDose, time: TieTime | undefined): FixedPoint[] {
  return time ? [standsAt(dose, time)] : [];
}

function standsAt(dose: OpenDose, time: TieTime): FixedPoint {
  return { name: dose.name, minutes: time.minutes, classes: dose.classes, caffeineMg: dose.caffeineMg };
}

/** What keeps a dose from a time. */
export function obstacleAt(
  dose: OpenDose,
  time: TieTime,
  standing: readonly FixedPoint[],
): Obstacle | undefined {
  const here = standsAt(dose, time);
  for (const other of standing) {
    const close = tooClose(here, other);
    if (close) return { kind: 'gap', against: other.name, close };
  }
  if (dose.caffeineMg === 0) return undefined;
  const sumMg = caffeineAround(here, standing);
  return sumMg > caffeineLimits.perDoseMg ? { kind: 'caffeine', sumMg } : undefined;
}

/** The most caffeine that any stretch so short that it counts as one dose holds together with this one. */
export function caffeineAround(here: CaffeinePoint, others: readonly CaffeinePoint[]): Milligrams {
  const near = others.filter(
    ({ caffeineMg, minutes }) =>
      caffeineMg > 0 && Math.abs(minutes - here.minutes) < caffeineLimits.oneDoseWithinMinutes,
  );
  const starts = [here, ...near].map(({ minutes }) => minutes).filter((minutes) => minutes <= here.minutes);
  return starts.reduce((most, start) => {
    const within = near.filter(
      ({ minutes }) => minutes >= start && minutes - start < caffeineLimits.oneDoseWithinMinutes,
    );
    return Math.max(
      most,
      within.reduce((sum, { caffeineMg }) => sum + caffeineMg, here.caffeineMg),
    );
  }, 0);
}

type CaffeinePoint = Pick<FixedPoint, 'minutes' | 'caffeineMg'>;

/** Why the time that was asked for cannot be. */
function firstObstacle(dose: OpenDose, standing: readonly FixedPoint[]): Obstacle {
  for (const time of dose.times) {
    const obstacle = obstacleAt(dose, time, standing);
    if (obstacle) return obstacle;
  }
  throw new RangeError(`${dose.regimen} was left out without an obstacle`);
}

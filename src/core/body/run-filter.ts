import type { DayNumber } from '#core/units/quantities.ts';
import { BELIEFS } from './beliefs.ts';
import { copyGaussian, type Gaussian, type Row } from './gaussian.ts';
import type { DayJacobian } from './day-transition.ts';
import type { Update } from './kalman.ts';
import type { LivedDay } from './lived-days.ts';
import type { Member } from './member.ts';
import { normalized, type Part } from './mixture.ts';
import { type LoadedDay, predictDay, type Workspace, workspace } from './predict-day.ts';
import { emptyDay, type MemberDay, readBody, readSpent } from './read-off.ts';
import { STATE, STATE_SIZE } from './state-layout.ts';
import { takeInBodyFat, takeInWeight } from './take-in.ts';

/** One step of a member's filter, kept for the smoother. */
export type Step =
  | { readonly kind: 'predict'; readonly jacobian: DayJacobian }
  | { readonly kind: 'update'; readonly update: Update }
  | { readonly kind: 'new-scale' }
  /** Where the belief about the body, or about what was spent, is read off. */
  | {
      readonly kind: 'read';
      readonly what: 'body' | 'spent';
      readonly day: number;
      readonly belief: Gaussian;
    };

/** What is believed of one day: one part a member and quantity. */
export interface DayParts {
  readonly date: string;
  readonly massKg: readonly Part[];
  readonly fatKg: readonly Part[];
  readonly leanKg: readonly Part[];
  readonly maintenanceKcal: readonly Part[];
  /** Chance that the day's weigh-in is an ordinary reading; undefined where there was none. */
  readonly ordinary: number | undefined;
}

/** A filter over all hypotheses after it has run. */
export interface FilterRun {
  readonly members: readonly Member[];
  readonly weights: readonly number[];
  readonly days: readonly DayParts[];
  /** Steps of each member, in the order of `members`; empty unless they were asked for. */
  readonly steps: readonly (readonly Step[])[];
}

export interface FilterInput {
  readonly members: readonly Member[];
  readonly days: readonly LivedDay[];
  /** Readings after this day are the future and stay unread. */
  readonly asOf: DayNumber;
  /** Places of the state vector that this log leaves untouched. */
  readonly unused: ReadonlySet<number>;
  readonly keepSteps: boolean;
  /** Called once all readings up to `asOf` are in: evidence that is not a reading of a day. */
  readonly afterLast?: (member: Member, mass: Row) => void;
}

/** Members that have fallen behind by this much in logarithm are let go, once the filter has warmed up. */
const LET_GO = 6;
const WARM_UP_DAYS = 10;
const FIRST_READING_SETTLED = 14;

interface Runner {
  readonly member: Member;
  readonly steps: Step[];
  parts: MemberDay;
}

/** Runs every member over the days. Only what was known on a day enters that day's belief. */
export function runFilter(input: FilterInput): FilterRun {
  const { days, asOf, keepSteps } = input;
  const room = workspace(input.unused);
  let runners: Runner[] = input.members.map((member) => ({ member, steps: [], parts: emptyDay() }));
  const answered: DayParts[] = [];
  let seen = false;
  for (const [index, day] of days.entries()) {
    const past = day.dayNumber <= asOf;
    const newScale = day.travelling && !days[index - 1]?.travelling;
    for (const runner of runners) liveDay(runner, day, { index, past, first: !seen, newScale, input, room });
    if (past && day.weightKg !== undefined) seen = true;
    const weights = normalized(runners.map(({ member }) => member.logWeight));
    answered.push(partsOf(day.date, runners, weights));
    if (past && index >= WARM_UP_DAYS) runners = leading(runners);
    if (past && index === FIRST_READING_SETTLED) runners = withoutTwins(runners);
  }
  const members = runners.map(({ member }) => member);
  return {
    members,
    weights: normalized(members.map(({ logWeight }) => logWeight)),
    days: answered,
    steps: keepSteps ? runners.map(({ steps }) => steps) : [],
  };
}

function leading(runners: readonly Runner[]): Runner[] {
  const most = Math.max(...runners.map(({ member }) => member.logWeight));
  return runners.filter(({ member }) => member.logWeight > most - LET_GO);
}

/** By now the first reading has been judged: of two members that differ in nothing else, the likelier stays. */
function withoutTwins(runners: readonly Runner[]): Runner[] {
  return runners.filter(({ member }) => {
    const { hypothesis, logWeight } = member;
    return !runners.some(
      ({ member: other }) =>
        other.hypothesis.firstReadingStray !== hypothesis.firstReadingStray &&
        other.hypothesis.weighed === hypothesis.weighed &&
        other.hypothesis.driftSdKcal === hypothesis.driftSdKcal &&
        other.hypothesis.scaleSdKg === hypothesis.scaleSdKg &&
        other.logWeight > logWeight,
    );
  });
}

interface DayContext {
  readonly index: number;
  readonly past: boolean;
  readonly first: boolean;
  readonly newScale: boolean;
  readonly input: FilterInput;
  readonly room: Workspace;
}

/** The scale is read before the day's food or after it, as the member supposes. */
function liveDay(runner: Runner, day: LivedDay, context: DayContext): void {
  const { member, steps } = runner;
  const { index, input, room } = context;
  const move = (): void => {
    predictDay(member, loadFor(member, day), room);
    if (input.keepSteps) steps.push({ kind: 'predict', jacobian: room.jacobian.slice() });
  };
  const before = member.hypothesis.weighed === 'before-food';
  if (!before) move();
  runner.parts = emptyDay();
  if (context.past) takeIn(runner, day, context);
  if (day.dayNumber === input.asOf) input.afterLast?.(member, day.mass);
  readBody(member.belief, day.mass, runner.parts);
  if (input.keepSteps)
    steps.push({ kind: 'read', what: 'body', day: index, belief: copyGaussian(member.belief) });
  if (before) move();
  readSpent(member.belief, index, runner.parts);
  if (input.keepSteps)
    steps.push({ kind: 'read', what: 'spent', day: index, belief: copyGaussian(member.belief) });
}

/** Where nothing is known of a day's food, the body is taken to eat what it spends. */
function loadFor(member: Member, day: LivedDay): Readonly<LoadedDay> {
  if (!Number.isNaN(day.load.energyKcal)) return day.load;
  const energyKcal = member.belief.mean[STATE.baseline] ?? 0;
  return { ...day.load, energyKcal, carbohydrateKcal: 0.45 * energyKcal };
}

function takeIn(runner: Runner, day: LivedDay, { input, newScale, first }: DayContext): void {
  const { member, steps } = runner;
  const keep = (taken: { readonly update: Update }): void => {
    if (input.keepSteps) steps.push({ kind: 'update', update: taken.update });
  };
  if (newScale) {
    forgetScale(member);
    if (input.keepSteps) steps.push({ kind: 'new-scale' });
  }
  if (day.weightKg !== undefined) {
    const { weightKg, mass, travelling, dayNumber } = day;
    const weekday = ((dayNumber % 7) + 7) % 7;
    const taken = takeInWeight(member, { weightKg, mass, weekday, travelling, first });
    runner.parts.ordinary = taken.ordinary;
    keep(taken);
  }
  if (day.bodyFat) {
    const { percent, place, repeatPercent } = day.bodyFat;
    keep(takeInBodyFat(member, percent, day.mass, place, repeatPercent));
  }
}

/** A new journey, a new scale: what was learnt of the last one says nothing about it. */
function forgetScale({ belief }: Member): void {
  const place = STATE.scaleOffset;
  for (let i = 0; i < STATE_SIZE; i++) {
    belief.covariance[place * STATE_SIZE + i] = 0;
    belief.covariance[i * STATE_SIZE + place] = 0;
  }
  belief.mean[place] = 0;
  belief.covariance[place * STATE_SIZE + place] = BELIEFS.otherScaleSdKg ** 2;
}

function partsOf(date: string, runners: readonly Runner[], weights: readonly number[]): DayParts {
  const parts = (mean: keyof MemberDay, variance: keyof MemberDay): Part[] =>
    runners.map((runner, k) => ({
      weight: weights[k] ?? 0,
      mean: runner.parts[mean] ?? 0,
      variance: runner.parts[variance] ?? 0,
    }));
  const weighed = runners.some((runner) => runner.parts.ordinary !== undefined);
  return {
    date,
    massKg: parts('massKg', 'massVariance'),
    fatKg: parts('fatKg', 'fatVariance'),
    leanKg: parts('leanKg', 'leanVariance'),
    maintenanceKcal: parts('spentKcal', 'spentVariance'),
    ordinary: weighed
      ? runners.reduce((sum, runner, k) => sum + (weights[k] ?? 0) * (runner.parts.ordinary ?? 0), 0)
      : undefined,
  };
}

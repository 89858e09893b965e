import { parseDate } from '#core/units/civil-date.ts';
import { answered, type Outcome } from '#core/problems/problem.ts';
import type { BodyReference } from './day-balance.ts';
import type { EstimateRequest } from './estimate-request.ts';
import { copyGaussian, type Gaussian } from './gaussian.ts';
import { hypothesesFor } from './hypothesis.ts';
import { type LivedDay, livedDays } from './lived-days.ts';
import { type Member, type StartMass, startMember } from './member.ts';
import { type MethodInUse, methodsInUse } from './methods-in-use.ts';
import { waterShares } from './moving-water.ts';
import { unusedPlaces, type Uses, usesOf } from './uses.ts';
import { type DayParts, type FilterRun, runFilter } from './run-filter.ts';
import { type DoubtfulWeight, suspectUnits } from './suspect-units.ts';
import { takeInStrength } from './take-in-strength.ts';

/** One hypothesis about the athlete and what it believes on the last day known; the weights add to 1. */
export interface PosteriorMember {
  readonly weight: number;
  readonly reference: BodyReference;
  readonly belief: Gaussian;
  readonly driftSdKcal: number;
  readonly slowWaterSdKg: number;
}

/** Where the body stands on the last day known, ready to be drawn from. */
export interface Posterior {
  readonly asOf: string;
  readonly members: readonly PosteriorMember[];
}

/** Everything the filter came to, with what the sentences and the charts need. */
export interface BodyEstimate {
  readonly lived: readonly LivedDay[];
  /** Beliefs of each day up to `asOf`, with only what was known on it. */
  readonly past: readonly DayParts[];
  /** Beliefs of the days of the plan. */
  readonly future: readonly DayParts[];
  /** The filter over the past: its members stand on `asOf`. */
  readonly run: FilterRun;
  readonly posterior: Posterior;
  readonly methods: readonly MethodInUse[];
  /** Readings of the past that cannot be what they say; those that others contradict were left out. */
  readonly doubtful: readonly DoubtfulWeight[];
}

/** Mass of an adult of some height before any weigh-in: body-mass index 25, sd 4. Common practice, no source. */
const PRIOR_INDEX = { mean: 25, sd: 4 } as const;
/** The first weigh-in is only where the filter starts: it is read again, with its error, as a reading. */
const START_SD_KG = 4;

/** Runs the filter for a request whose shape and dates have been checked. */
export function estimateBody(asked: EstimateRequest, keepSteps = false): Outcome<BodyEstimate> {
  const doubtful = doubtfulOf(asked);
  const request = withoutContradicted(asked, doubtful);
  const methods = methodsInUse(request.days);
  if (!methods.ok) return methods;
  const asOf = parseDate(request.asOf ?? request.days.at(-1)?.date ?? '') ?? 0;
  const water = waterShares(request.days, request.athlete.creatineFrom);
  const lived = livedDays(request.days, methods.value, water, asOf);
  const past = lived.filter(({ dayNumber }) => dayNumber <= asOf);
  const uses = usesOf(request, methods.value);
  const context: Context = { request, uses, asOf, keepSteps };
  const firstWeighed = past.findIndex(({ weightKg }) => weightKg !== undefined);
  const before = firstWeighed === 0 ? [] : filtered(context, past, byHeight(request)).days;
  const start = firstWeighed < 0 ? byHeight(request) : firstReading(past[firstWeighed]);
  const run = filtered(context, past, start);
  const known =
    firstWeighed < 0 ? before : [...before.slice(0, firstWeighed), ...run.days.slice(firstWeighed)];
  return answered({
    lived,
    past: known,
    run,
    posterior: posteriorOf(past.at(-1)?.date ?? '', run),
    future: foretold(run, lived.slice(past.length), context),
    methods: methods.value,
    doubtful,
  });
}

function doubtfulOf({ days, asOf, athlete }: EstimateRequest): DoubtfulWeight[] {
  const past = asOf === undefined ? days : days.filter(({ date }) => date <= asOf);
  return suspectUnits(past, athlete.heightCm);
}

/** Rows keep their place; only a weight that its neighbours contradict is not handed on. */
function withoutContradicted(request: EstimateRequest, doubtful: readonly DoubtfulWeight[]): EstimateRequest {
  const left = new Set(doubtful.filter(({ contradicted }) => contradicted).map(({ index }) => index));
  if (left.size === 0) return request;
  const days = request.days.map((row, index) => {
    if (!left.has(index)) return row;
    const { weightKg: _, ...rest } = row;
    return rest;
  });
  return { ...request, days };
}

interface Context {
  readonly request: EstimateRequest;
  readonly uses: Uses;
  readonly asOf: number;
  readonly keepSteps: boolean;
}

function filtered(context: Context, days: readonly LivedDay[], start: StartMass): FilterRun {
  const { request, uses, asOf, keepSteps } = context;
  const members = hypothesesFor(request.athlete, uses.cycle).map((hypothesis) =>
    startMember(request.athlete, hypothesis, start, uses),
  );
  const { leanEvidence } = request;
  return runFilter({
    members,
    days,
    asOf,
    unused: unusedPlaces(uses),
    keepSteps,
    ...(leanEvidence ? { afterLast: (member) => takeInStrength(member, leanEvidence) } : {}),
  });
}

function byHeight({ athlete }: EstimateRequest): StartMass {
  const square = (athlete.heightCm / 100) ** 2;
  return { meanKg: PRIOR_INDEX.mean * square, sdKg: PRIOR_INDEX.sd * square };
}

function firstReading(day: LivedDay | undefined): StartMass {
  return { meanKg: day?.weightKg ?? 0, sdKg: START_SD_KG };
}

function posteriorOf(asOf: string, run: FilterRun): Posterior {
  return {
    asOf,
    members: run.members.map((member, k) => ({
      weight: run.weights[k] ?? 0,
      reference: member.reference,
      belief: member.belief,
      driftSdKcal: member.hypothesis.driftSdKcal,
      slowWaterSdKg: member.hypothesis.slowWaterSdKg,
    })),
  };
}

/** Lets copies of the members live through the plan without another reading. */
function foretold(run: FilterRun, days: readonly LivedDay[], { uses, asOf }: Context): readonly DayParts[] {
  if (days.length === 0) return [];
  const members = run.members.map((member): Member => ({ ...member, belief: copyGaussian(member.belief) }));
  return runFilter({ members, days, asOf, unused: unusedPlaces(uses), keepSteps: false }).days;
}

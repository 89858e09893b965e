import { cautionWithPain, painOfExercise, type PainOfExercise } from '../gym/pain/pain-of-exercise.ts';
import type { Push } from '../gym/beat/ask-set.ts';
import { givenLoad } from '../gym/beat/given-load.ts';
import { type SetToCome, whatToBeat, type WhatToBeat } from '../gym/beat/what-to-beat.ts';
import { hurtLoad } from '../gym/pain/hurt-load.ts';
import { warmUpsOf, type WarmUps } from '../gym/loads/warm-up-of.ts';
import { sessionWalk, type SessionWalk, type WalkedStep } from '../gym/session/session-walk.ts';
import { type SideDifference, sideDifferences } from '../gym/sides/side-difference.ts';
import { strengthLog, type StrengthLog, workBefore } from '../gym/strength/strength-log.ts';
import type { SetLoad } from '../journal/kinds/gym-load.ts';
import type { Ledger } from '../journal/ledger.ts';
import { answered, type Outcome } from '../problems/problem.ts';
import { parseDate } from '../units/civil-date.ts';

/** What the gym knows of the whole log: read once, asked often. */
export interface GymLog {
  readonly log: StrengthLog;
  readonly sides: readonly SideDifference[];
}

/** Reads every set of the journal up to a day. */
export function gymLog(ledger: Ledger, today: string): GymLog {
  const log = strengthLog(ledger, today);
  return { log, sides: sideDifferences(log, today) };
}

/** The session under way, its next set and what that set is to beat. */
export interface SessionNow {
  readonly walk: SessionWalk;
  readonly next: StepNow | undefined;
}

export interface StepNow {
  readonly step: WalkedStep;
  readonly beat: WhatToBeat;
  readonly pain: PainOfExercise | undefined;
  /** Warm-ups before the heaviest set of this exercise, where the next set is one of them. */
  readonly warmUps: WarmUps | undefined;
}

interface SessionAsk {
  readonly ledger: Ledger;
  readonly gym: GymLog;
  readonly session: string;
  readonly today: string;
  readonly push: Push;
}

/** The session as it stands with its next set (GYM-25, GYM-36). */
export function sessionNow(ask: SessionAsk): Outcome<SessionNow> {
  const weakerSide = (exercise: string) =>
    ask.gym.sides.find((difference) => difference.exercise === exercise)?.weaker;
  const walk = sessionWalk({ ledger: ask.ledger, session: ask.session, weakerSide });
  if (!walk.ok) return walk;
  const { next } = walk.value;
  return answered({ walk: walk.value, next: next && stepNow(ask, walk.value, next) });
}

/** A step with what it is to beat; any open step of a session may be asked for. */
export function stepNow(ask: SessionAsk, walk: SessionWalk, step: WalkedStep): StepNow {
  const pain = painOfExercise(ask.ledger, step.exercise.exercise, ask.today);
  const main = mainStepOf(walk, step);
  const beat = beatOf(ask, walk, main, pain);
  const warming = step.set === 'warm-up' && main !== step;
  return {
    step,
    beat,
    pain,
    warmUps: warming && beat.asked ? warmUpsFor(ask, walk, step, beat) : undefined,
  };
}

/** A warm-up is laid towards the first set after it that is none. */
function mainStepOf(walk: SessionWalk, step: WalkedStep): WalkedStep {
  if (step.set !== 'warm-up') return step;
  const mine = walk.steps.filter(
    ({ slot, side, set }) => slot === step.slot && side === step.side && set !== 'warm-up',
  );
  return mine.find(({ state }) => state === 'to come') ?? mine[0] ?? step;
}

function beatOf(
  ask: SessionAsk,
  walk: SessionWalk,
  step: WalkedStep,
  pain: PainOfExercise | undefined,
): WhatToBeat {
  const { log } = ask.gym;
  const { exercise, side } = step;
  const done = walk.sets.filter(({ data }) => data.set !== 'warm-up');
  const asSet = { ...step, exercise: exercise.exercise, restSeconds: step.target.restSeconds };
  return whatToBeat(log, {
    exercise,
    set: step.set,
    number: step.number,
    side,
    machine: step.machine ?? exercise.machine,
    session: walk.session.session,
    dayNumber: parseDate(ask.today) ?? 0,
    before: workBefore(asSet, done, log.book),
    massKg: log.massOn(ask.today),
    reps: step.target.reps,
    rir: step.target.rir,
    push: ask.push,
    given: givenLoad({ log, walk, step, askedOf: (top) => askedToday(ask, walk, top) }),
    share: step.target.loadKg === undefined ? step.target.share : undefined,
    weaker: weakerDone(ask, walk, step),
    caution: cautionWithPain(exercise.caution, pain, hurtLoad(log, exercise, pain)),
    place: walk.session.place,
  });
}

function askedToday(ask: SessionAsk, walk: SessionWalk, step: WalkedStep): SetLoad | undefined {
  const pain = painOfExercise(ask.ledger, step.exercise.exercise, ask.today);
  return beatOf(ask, walk, step, pain).asked?.load;
}

/** What the weaker side did in the set that a step of the stronger side answers (GYM-52). */
function weakerDone({ gym }: SessionAsk, { steps }: SessionWalk, step: WalkedStep): SetToCome['weaker'] {
  const { exercise, slot, set, number } = step;
  const weaker = gym.sides.find((difference) => difference.exercise === exercise.exercise)?.weaker;
  if (weaker === undefined || step.side === undefined || step.side === weaker) return undefined;
  const twin = steps.find(
    (each) => each.slot === slot && each.set === set && each.number === number && each.side === weaker,
  );
  const done = twin?.done?.data;
  return done?.exercise === exercise.exercise ? { load: done.load, reps: done.reps } : undefined;
}

function warmUpsFor(
  ask: SessionAsk,
  walk: SessionWalk,
  step: WalkedStep,
  beat: WhatToBeat,
): WarmUps | undefined {
  if (!beat.asked) return undefined;
  const { book } = ask.gym.log;
  const implement = step.implement ?? step.exercise.implement;
  return warmUpsOf({
    top: beat.asked,
    warmUps: walk.steps.filter(
      ({ slot, side, set }) => slot === step.slot && side === step.side && set === 'warm-up',
    ).length,
    implement: implement === undefined ? undefined : book.implement(implement),
    book,
    place: walk.session.place,
  });
}

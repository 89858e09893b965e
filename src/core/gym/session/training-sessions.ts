import type { Fact, Ledger } from '#core/journal/ledger.ts';

/** A training session as it was begun, on however many phones. */
export interface TrainingSession {
  /** Name of the session that was begun first. */
  readonly session: string;
  /** Every name it goes by: more than one where two phones began it. */
  readonly names: readonly string[];
  readonly day: string;
  readonly template: string | undefined;
  readonly title: string | undefined;
  readonly place: string | undefined;
  /** Undefined where sets name a session that nobody began. */
  readonly begunMs: number | undefined;
  readonly endedMs: number | undefined;
}

/** Two phones that begin the same template within this time mean the same session. */
const SAME_SESSION_MS = 3 * 3_600_000;

interface Begun {
  readonly fact: Fact<'session-begun'>;
  readonly names: string[];
}

/**
 * Sessions in the order they were begun (GYM-31). The same name begun twice is one session. Two names of the same day
 * and template, from two devices, begun within three hours and before the first was ended, are one session too: the
 * first name stands, sets of both are walked together. A session ended twice ended the last time.
 */
export function trainingSessions(ledger: Ledger): readonly TrainingSession[] {
  const ended = new Map<string, number>();
  for (const { data, epochMs } of ledger.of('session-ended')) {
    ended.set(data.session, Math.max(epochMs, ended.get(data.session) ?? epochMs));
  }
  const begun: Begun[] = [];
  for (const fact of ledger.of('session-begun')) {
    const twin = begun.findLast((first) => isSame(first.fact, fact, ended.get(first.fact.data.session)));
    if (twin) twin.names.push(fact.data.session);
    else begun.push({ fact, names: [fact.data.session] });
  }
  return [...begun.map((each) => fromBegun(each, ended)), ...neverBegun(ledger, begun)].sort(inOrder);
}

function isSame(
  first: Fact<'session-begun'>,
  next: Fact<'session-begun'>,
  endedMs: number | undefined,
): boolean {
  if (first.data.session === next.data.session) return true;
  return (
    first.day === next.day &&
    first.data.template === next.data.template &&
    first.entry.device !== next.entry.device &&
    next.epochMs - first.epochMs <= SAME_SESSION_MS &&
    (endedMs === undefined || next.epochMs < endedMs)
  );
}

function fromBegun({ fact, names }: Begun, ended: ReadonlyMap<string, number>): TrainingSession {
  const { session, template, title, place } = fact.data;
  const unique = [...new Set(names)];
  const ends = unique.flatMap((name) => ended.get(name) ?? []);
  return {
    session,
    names: unique,
    day: fact.day,
    template,
    title,
    place,
    begunMs: fact.epochMs,
    endedMs: ends.length > 0 ? Math.max(...ends) : undefined,
  };
}

function neverBegun(ledger: Ledger, begun: readonly Begun[]): TrainingSession[] {
  const known = new Set(begun.flatMap(({ names }) => names));
  const found = new Map<string, TrainingSession>();
  for (const { data, day } of ledger.of('set-done')) {
    if (known.has(data.session) || found.has(data.session)) continue;
    found.set(data.session, {
      session: data.session,
      names: [data.session],
      day,
      template: undefined,
      title: undefined,
      place: undefined,
      begunMs: undefined,
      endedMs: undefined,
    });
  }
  return [...found.values()];
}

function inOrder(a: TrainingSession, b: TrainingSession): number {
  if (a.day !== b.day) return a.day < b.day ? -1 : 1;
  return (a.begunMs ?? 0) - (b.begunMs ?? 0);
}

/** After this long without a set, a session that was not ended is taken as left, and is asked about. */
const LEFT_AFTER_MS = 6 * 3_600_000;

/** The session to go on with: begun last, not ended, with something done in it in the last hours. */
export function openSession(ledger: Ledger, nowMs: number): TrainingSession | undefined {
  const last = trainingSessions(ledger).findLast(({ begunMs }) => begunMs !== undefined && begunMs <= nowMs);
  if (!last || last.endedMs !== undefined) return undefined;
  const sets = ledger.of('set-done').filter(({ data }) => last.names.includes(data.session));
  const latestMs = Math.max(last.begunMs ?? 0, ...sets.map(({ epochMs }) => epochMs));
  return nowMs - latestMs <= LEFT_AFTER_MS ? last : undefined;
}

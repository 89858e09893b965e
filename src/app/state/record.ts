import { composeEntry } from '#core/journal/compose-entry.ts';
import { REMOVED, type Entry } from '#core/journal/entry.ts';
import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import { answered, type Outcome, type Problem } from '#core/problems/problem.ts';
import type { ClockMinutes } from '#core/units/quantities.ts';
import { currentMs, momentOf, offsetMinutesAt, tick, zoneName } from './moments.ts';
import { device, entryChance, writer } from './device.ts';
import { ledger } from './ledger.ts';
import { commit, notWritable } from './saving.ts';
import { today } from './clock.ts';
import { rememberForUndo } from './undo-stack.ts';

/** How a write ended; see ROOM.md. */
export type Saved =
  | { readonly status: 'saved'; readonly entries: readonly Entry[] }
  | {
      readonly status: 'notSaved' | 'maybeSaved';
      readonly entries: readonly Entry[];
      readonly problem: Problem;
    }
  | { readonly status: 'refused'; readonly problem: Problem };

export interface When {
  /** Prep day; absent: today. */
  readonly day?: string;
  /** Clock time of that prep day in minutes since its midnight; absent: now, or noon for another day. */
  readonly clock?: ClockMinutes;
}

export interface Says {
  /** What the undo line says: "Meal at 12:30 logged". */
  readonly says?: string;
}

/** One thing to write: a new fact, a correction of an entry, or a removal. */
export interface Writing {
  readonly kind: string;
  readonly data: unknown;
  readonly when?: When;
  readonly replaces?: string;
  /** A moment to keep to the second, over `when`. */
  readonly at?: { readonly day: string; readonly atMs: number };
}

export type NewFact = {
  [Kind in KnownKind]: { readonly kind: Kind; readonly data: DataOf<Kind> } & When;
}[KnownKind];

/** Writes one fact. */
export function record<Kind extends KnownKind>(
  kind: Kind,
  data: DataOf<Kind>,
  options: When & Says = {},
): Promise<Saved> {
  return write([{ kind, data, when: options }], options.says);
}

/**
 * Writes several facts that belong together: all are kept or none, and one undo takes back all. `removing` names entries that
 * give way to them.
 */
export function recordAll(
  facts: readonly NewFact[],
  options: Says & { readonly removing?: readonly string[] } = {},
): Promise<Saved> {
  const gone = (options.removing ?? []).flatMap((id) => {
    const old = ledger.peek().entry(id);
    return old ? [{ kind: REMOVED, data: {}, at: momentOfEntry(old), replaces: id }] : [];
  });
  const written = facts.map((fact) => ({ kind: fact.kind, data: fact.data, when: fact }));
  return write([...gone, ...written], options.says);
}

/** Writes a correction: the same kind, day and moment unless `options` move them, with new data. */
export function correct(id: string, data: unknown, options: When & Says = {}): Promise<Saved> {
  const old = ledger.peek().entry(id);
  if (!old) return Promise.resolve(notThere(id));
  return write([correction(old, data, options)], options.says);
}

/** Writes a removal. The entry stays in the history and can be brought back. */
export function remove(id: string, options: Says & { readonly reason?: string } = {}): Promise<Saved> {
  const old = ledger.peek().entry(id);
  if (!old) return Promise.resolve(notThere(id));
  const data = options.reason === undefined ? {} : { reason: options.reason };
  return write([{ kind: REMOVED, data, at: momentOfEntry(old), replaces: id }], options.says);
}

/** Brings a removed fact back: its last version is written once more, in the removal's place. */
export function restore(id: string, options: Says = {}): Promise<Saved> {
  const versions = ledger.peek().history(id);
  const last = versions.findLast((version) => version.kind !== REMOVED);
  const removal = versions.findLast((version) => version.kind === REMOVED);
  if (!last || !removal) return Promise.resolve(notThere(id));
  return write(
    [{ kind: last.kind, data: last.data, at: momentOfEntry(last), replaces: removal.id }],
    options.says,
  );
}

/** Composes, keeps and tells. Used by the functions above and by undo; nothing else writes. */
export async function write(writings: readonly Writing[], says?: string, undoes = false): Promise<Saved> {
  const closed = notWritable();
  if (closed) return { status: 'refused', problem: closed };
  const outcomeOfShape = compose(writings);
  if (!outcomeOfShape.ok) return { status: 'refused', problem: outcomeOfShape.problem };
  const composed = outcomeOfShape.value;
  const before = composed.map((entry) => (entry.replaces ? ledger.peek().entry(entry.replaces) : undefined));
  const saving = commit(composed);
  tick();
  if (!undoes)
    rememberForUndo({ entries: composed, before, says: says ?? 'Entry written', atMs: currentMs() });
  const outcome = await saving;
  if (outcome.status === 'saved') return { status: 'saved', entries: composed };
  return { status: outcome.status, entries: composed, problem: outcome.problem };
}

function compose(writings: readonly Writing[]): Outcome<Entry[]> {
  const entries: Entry[] = [];
  let latestStamp = ledger.peek().latestStamp;
  for (const writing of writings) {
    const nowMs = currentMs();
    const { day, atMs } = writing.at ?? momentFor(writing.when ?? {}, nowMs);
    const entry = composeEntry({
      kind: writing.kind,
      data: writing.data,
      day,
      atMs,
      nowMs,
      offsetMinutes: offsetMinutesAt(atMs),
      zone: zoneName(),
      device,
      writer,
      random: entryChance(),
      latestStamp,
      ...(writing.replaces === undefined ? {} : { replaces: writing.replaces }),
    });
    if (!entry.ok) return entry;
    latestStamp = entry.value.stamp;
    entries.push(entry.value);
  }
  return answered(entries);
}

function momentFor(when: When, nowMs: number): { day: string; atMs: number } {
  const day = when.day ?? today.peek();
  if (when.clock !== undefined) return { day, atMs: momentOf(day, when.clock) };
  return { day, atMs: day === today.peek() ? nowMs : momentOf(day, 12 * 60) };
}

function correction(old: Entry, data: unknown, when: When): Writing {
  const moved = when.day !== undefined || when.clock !== undefined;
  const place = moved ? { when: { day: old.day, ...when } } : { at: momentOfEntry(old) };
  return { kind: old.kind, data, replaces: old.id, ...place };
}

function momentOfEntry(entry: Entry): { day: string; atMs: number } {
  return { day: entry.day, atMs: Date.parse(entry.at) };
}

function notThere(id: string): Saved {
  return {
    status: 'refused',
    problem: {
      code: 'journal/no-such-entry',
      path: id,
      message: `There is no entry "${id}" in the open journal.`,
      remedy: 'Reload the app and look for it in the Journal.',
    },
  };
}

import type { Fact } from '#core/journal/ledger.ts';
import { sentenceOfSet } from './set-words.ts';

export type SetDone = Fact<'set-done'>;

/** Something about the log that the athlete should know; nothing is changed by it. */
export interface LogNote {
  readonly code: string;
  readonly words: string;
  /** Ids of the entries it is about. */
  readonly entries: readonly string[];
}

export interface CountedSets {
  /** Each set once, in the order it was done. */
  readonly sets: readonly SetDone[];
  readonly notes: readonly LogNote[];
}

/** The same set typed on the same phone again within this time is a second tap. */
const SECOND_TAP_MS = 15_000;
/** The same set from another phone within this time is the same set: clocks and thumbs differ. */
const OTHER_PHONE_MS = 240_000;

/**
 * The sets of one session, each once (GYM-32). Two entries are one set where both name the same place (slot, or
 * exercise where no slot is named; kind, number, side): the later stamp counts. Where one of them names no number they
 * are one set if load, repetitions, kind and side agree and they lie within 15 seconds on one phone or 4 minutes on
 * two. What is passed over is noted, never removed.
 */
export function countedSets(facts: readonly SetDone[]): CountedSets {
  const counted: SetDone[] = [];
  const notes: LogNote[] = [];
  for (const fact of facts) {
    const twin = counted.findLastIndex((other) => isSameSet(other, fact));
    const other = counted[twin];
    if (!other) {
      counted.push(fact);
      continue;
    }
    const [kept, passed] = laterOf(other, fact);
    // The place in time stays that of the first: a correction typed at home is not a set done at home.
    counted[twin] = kept === other ? other : { ...kept, epochMs: other.epochMs, minutes: other.minutes };
    notes.push(twiceNote(kept, passed));
  }
  return { sets: counted, notes: [...notes, ...orderNotes(counted)] };
}

function isSameSet(a: SetDone, b: SetDone): boolean {
  const [one, two] = [a.data, b.data];
  if (placeOf(a) !== placeOf(b) || one.set !== two.set || one.side !== two.side) return false;
  if (one.number !== undefined && two.number !== undefined) return one.number === two.number;
  const within = a.entry.device === b.entry.device ? SECOND_TAP_MS : OTHER_PHONE_MS;
  return sameWork(a, b) && Math.abs(a.epochMs - b.epochMs) <= within;
}

/** A slot keeps its name when the exercise in it is substituted, so the exercise belongs to the place too. */
function placeOf({ data }: SetDone): string {
  return `${data.slot ?? ''}|${data.exercise}`;
}

function sameWork(a: SetDone, b: SetDone): boolean {
  return a.data.reps === b.data.reps && JSON.stringify(a.data.load) === JSON.stringify(b.data.load);
}

function laterOf(a: SetDone, b: SetDone): readonly [SetDone, SetDone] {
  return a.entry.stamp >= b.entry.stamp ? [a, b] : [b, a];
}

function twiceNote(kept: SetDone, passed: SetDone): LogNote {
  const entries = [kept.entry.id, passed.entry.id];
  const phones = kept.entry.device === passed.entry.device ? '' : ', from two phones';
  if (sameWork(kept, passed)) {
    return {
      code: 'gym/logged-twice',
      words: `${sentenceOfSet(kept.data)} is logged twice${phones}; it counts once.`,
      entries,
    };
  }
  return {
    code: 'gym/logged-differently',
    words: `Two entries stand for one set${phones}: ${sentenceOfSet(kept.data)}, and ${sentenceOfSet(passed.data)}. The later one counts; correct it in the Journal if it should not.`,
    entries,
  };
}

/** Sets of one place whose numbers do not rise with time. */
function orderNotes(sets: readonly SetDone[]): LogNote[] {
  const last = new Map<string, SetDone>();
  const notes: LogNote[] = [];
  for (const set of sets) {
    const { number } = set.data;
    if (number === undefined) continue;
    const key = `${placeOf(set)}|${set.data.set}|${set.data.side ?? ''}`;
    const before = last.get(key);
    if (before?.data.number !== undefined && before.data.number > number) {
      notes.push({
        code: 'gym/out-of-order',
        words: `Set ${before.data.number} is logged before set ${number}; both stand as logged.`,
        entries: [before.entry.id, set.entry.id],
      });
    }
    last.set(key, set);
  }
  return notes;
}

import type { BodySide } from '#core/journal/kinds/gym-scheme.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { bodyMassOn, type BodyMassOn } from '../book/body-mass-on.ts';
import { exerciseBook, type ExerciseBook } from '../book/exercise-book.ts';
import { comparableLoad } from '../loads/comparable-load.ts';
import { countedSets, type SetDone } from '../session/counted-sets.ts';
import { followsWithoutRest } from '../session/follows-without-rest.ts';
import { trainingSessions } from '../session/training-sessions.ts';
import { precedingWork } from './preceding-work.ts';
import type { StrengthSet } from './strength-filter.ts';

/** A hard set with its comparable load, ready for the running estimate. */
export interface LoggedSet extends StrengthSet {
  readonly fact: SetDone;
  readonly day: string;
}

/** Sets that compare with one another: one exercise, one way of loading it, one side where sides are trained apart. */
export interface StrengthSeries {
  readonly exercise: string;
  readonly variant: string;
  readonly side: BodySide | undefined;
  readonly sets: readonly LoggedSet[];
  /** Its drops and rest-pause sets, held against one another alone. */
  readonly follow: readonly LoggedSet[];
}

/** A hard set that no load compares: a band, a body weight not known. It still counts as work and as volume. */
export interface StrengthLog {
  readonly book: ExerciseBook;
  readonly massOn: BodyMassOn;
  readonly series: readonly StrengthSeries[];
  /** Every hard set of the log, each once, in order. */
  readonly hardSets: readonly SetDone[];
}

/** Every hard set of the journal up to a day, each once, sorted into the series it compares within (GYM-23). */
export function strengthLog(ledger: Ledger, until?: string): StrengthLog {
  const book = exerciseBook(ledger);
  const massOn = bodyMassOn(ledger);
  const series = new Map<
    string,
    { head: Omit<StrengthSeries, 'sets' | 'follow'>; sets: LoggedSet[]; follow: LoggedSet[] }
  >();
  const hardSets: SetDone[] = [];
  for (const { session, sets } of setsBySession(ledger, until)) {
    const before: SetDone[] = [];
    for (const fact of countedSets(sets).sets) {
      if (fact.data.set === 'warm-up') continue;
      const work = workBefore(fact.data, before, book);
      before.push(fact);
      hardSets.push(fact);
      const massKg = massOn(fact.day);
      const load = comparableLoad(fact.data.load, book.exercise(fact.data.exercise), book, massKg);
      if (!load) continue;
      const { exercise, side, reps } = fact.data;
      const key = `${exercise}|${load.variant}|${side ?? ''}`;
      const known = series.get(key) ?? {
        head: { exercise, variant: load.variant, side },
        sets: [],
        follow: [],
      };
      series.set(key, known);
      (followsWithoutRest(fact.data.set) ? known.follow : known.sets).push({
        fact,
        day: fact.day,
        dayNumber: parseDate(fact.day) ?? 0,
        session,
        loadKg: load.loadKg,
        reps,
        // A lift tried and missed had nothing left.
        rir: reps === 0 ? 0 : fact.data.rir,
        before: work,
        massKg,
      });
    }
  }
  return {
    book,
    massOn,
    series: [...series.values()].map(({ head, sets, follow }) => ({ ...head, sets, follow })),
    hardSets,
  };
}

function setsBySession(
  ledger: Ledger,
  until: string | undefined,
): readonly { readonly session: string; readonly sets: readonly SetDone[] }[] {
  const byName = new Map<string, SetDone[]>();
  for (const fact of ledger.of('set-done')) {
    if (until !== undefined && fact.day > until) continue;
    const list = byName.get(fact.data.session) ?? [];
    byName.set(fact.data.session, list);
    list.push(fact);
  }
  return trainingSessions(ledger).map(({ session, names }) => {
    const sets = names.flatMap((name) => byName.get(name) ?? []);
    return { session, sets: names.length > 1 ? sets.sort((a, b) => a.epochMs - b.epochMs) : sets };
  });
}

/** A set of an exercise, done or to come. */
export interface SetPlace {
  readonly exercise: string;
  readonly side?: BodySide | undefined;
  readonly restSeconds?: number | undefined;
}

/** What holds a set back: the sets of its exercise on its side, and those of others for the same prime movers. */
export function workBefore(set: SetPlace, before: readonly SetDone[], book: ExerciseBook): number {
  const { exercise, side, restSeconds } = set;
  const prime = book.exercise(exercise).prime;
  const own = before.filter(({ data }) => data.exercise === exercise && data.side === side);
  const related = before.filter(
    ({ data }) =>
      data.exercise !== exercise &&
      (data.side === undefined || side === undefined || data.side === side) &&
      book.exercise(data.exercise).prime.some((muscle) => prime.includes(muscle)),
  );
  return precedingWork(
    own.map(({ data }) => data),
    restSeconds,
    related.map(({ data }) => data),
  );
}

import { describe, expect, it } from 'vitest';
import { gymLog, sessionNow } from '#core/cycle/gym-now.ts';
import { exerciseBook } from '#core/gym/book/exercise-book.ts';
import type { SetScheme } from '#core/journal/kinds/gym-scheme.ts';
import { barSet, gymJournal, type GymJournal } from '../../../../test/journal/gym-journal.ts';
import { barOf, emptyLoad, oneMore, setDone, suggestedSet } from './set-draft.ts';

const TODAY = '2027-03-01';

function begun(sets: SetScheme[]): GymJournal {
  const journal = gymJournal(TODAY);
  const slots = [{ slot: 's', exercise: 'back-squat', sets }];
  journal.write('08:00', 'session-planned', {
    template: 'legs',
    name: 'Legs',
    blocks: [{ block: 'a', slots }],
  });
  journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
  return journal;
}

function next({ ledger }: GymJournal) {
  const gym = gymLog(ledger, TODAY);
  const now = sessionNow({ ledger, gym, session: 'now', today: TODAY, push: 'more' });
  if (!now.ok || !now.value.next) throw new Error('nothing is next');
  return { now: now.value.next, walk: now.value.walk, book: gym.log.book };
}

const suggestion = (journal: GymJournal) => {
  const { now, walk, book } = next(journal);
  return suggestedSet(now, walk, book, []);
};

const done = (
  journal: GymJournal,
  at: string,
  set: 'top' | 'working',
  kg: number,
  reps: number,
  number: number,
) =>
  journal.write(at, 'set-done', barSet('back-squat', kg, reps, { session: 'now', slot: 's', set, number }));

describe('what a set starts from', () => {
  it('[GYM-96] an exercise never done starts from the plan, its next sets from the one before', () => {
    const planned = begun([{ set: 'working', count: 3, reps: { min: 8, max: 12 }, loadKg: 60 }]);
    expect(suggestion(planned)).toMatchObject({ load: { of: 'kg', kg: 60 }, reps: 8 });
    const open = begun([{ set: 'working', count: 3, reps: { min: 8, max: 12 } }]);
    expect(suggestion(open)).toEqual({ load: { of: 'kg', kg: 0 }, reps: 8 });
    done(open, '17:10', 'working', 70, 9, 1);
    expect(suggestion(open)).toEqual({ load: { of: 'kg', kg: 70 }, reps: 9 });
  });

  it('[GYM-96] a back-off set is its share of the set before, a first drop a fifth lighter', () => {
    const plan = (scheme: SetScheme) => begun([{ set: 'top', count: 1 }, scheme]);
    const backOff = plan({ set: 'back-off', count: 1, share: 0.9, reps: { min: 6, max: 8 } });
    done(backOff, '17:10', 'top', 100, 6, 1);
    expect(suggestion(backOff).load).toEqual({ of: 'kg', kg: 90 });
    const drop = plan({ set: 'drop', count: 1 });
    done(drop, '17:10', 'top', 100, 6, 1);
    expect(suggestion(drop)).toEqual({ load: { of: 'kg', kg: 80 }, reps: 6 });
  });

  it('[GYM-96] nothing on the bar is not logged: the remedy names what to enter', () => {
    const journal = begun([{ set: 'working', count: 1 }]);
    const { now, walk, book } = next(journal);
    const suggested = suggestedSet(now, walk, book, []);
    expect(setDone('now', now.step, suggested, {}, undefined)).toMatchObject({
      problem: { remedy: 'Enter what is on the bar, bar and all.' },
    });
    const whole = { ...suggested, load: { of: 'kg', kg: 60 } as const };
    expect(setDone('now', now.step, whole, { rir: 2 }, 90)).toMatchObject({
      value: { slot: 's', number: 1, rir: 2, restSeconds: 90 },
    });
  });

  it('[GYM-96] a barbell starts from the only bar there is, or from the one described', () => {
    const journal = begun([{ set: 'working', count: 1 }]);
    const { now, walk, book } = next(journal);
    const bar = { implement: 'bar', name: 'Bar', empty: { mass: 45, unit: 'lb' }, sides: 2 } as const;
    // 45 lb by definition of the pound (0.45359237 kg, 1959).
    expect(suggestedSet(now, walk, book, [bar]).load).toEqual({ of: 'kg', kg: 20.41165665 });
    expect(barOf(now.step, [bar, { ...bar, implement: 'other' }])).toBeUndefined();
    expect(barOf({ ...now.step, implement: 'bar' }, [bar, { ...bar, implement: 'other' }])).toBe(bar);
  });

  it('[GYM-96] a set beyond the plan is numbered after all of its kind', () => {
    const journal = begun([{ set: 'working', count: 1 }]);
    done(journal, '17:10', 'working', 60, 8, 1);
    done(journal, '17:15', 'working', 60, 8, 2);
    const { ledger } = journal;
    const now = sessionNow({
      ledger,
      gym: gymLog(ledger, TODAY),
      session: 'now',
      today: TODAY,
      push: 'more',
    });
    if (!now.ok) throw new Error(now.problem.message);
    expect(now.value.next).toBeUndefined();
    expect(oneMore(now.value.walk, 's')).toMatchObject({ set: 'working', number: 3, state: 'to come' });
  });
});

describe('how an exercise is loaded before its first set', () => {
  it('[GYM-95] by the pegs, rails or stack of its machine, else by what carries it', () => {
    const journal = gymJournal(TODAY);
    const machine = (
      key: string,
      geometry: Parameters<typeof journal.write<'machine-described'>>[2]['geometry'],
    ) => journal.write('08:00', 'machine-described', { machine: key, name: key, geometry });
    machine('pegs', { of: 'unknown', pegs: ['low', 'high'] });
    machine('sled', { of: 'sled', sledKg: 40, railsDeg: 45, sides: 2 });
    machine('stack', { of: 'stack', firstKg: 5, stepKg: 5, lastKg: 90 });
    const book = exerciseBook(journal.ledger);
    const of = (exercise: string, on?: string) => emptyLoad(book.exercise(exercise), on, book);
    expect(of('leg-press', 'pegs')).toEqual({
      of: 'pegs',
      machine: 'pegs',
      pegs: [
        { peg: 'low', kg: 0 },
        { peg: 'high', kg: 0 },
      ],
    });
    expect(of('hack-squat', 'sled')).toMatchObject({ of: 'pegs', pegs: [{ peg: 'plates', kg: 0 }] });
    expect(of('leg-extension', 'stack')).toEqual({ of: 'stack', machine: 'stack', pinKg: 0 });
    expect(of('lateral-raise')).toEqual({ of: 'each', kgEach: 0 });
    expect(of('pull-up')).toEqual({ of: 'body' });
  });
});

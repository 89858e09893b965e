import { describe, expect, it } from 'vitest';
import type { SessionBlock } from '#core/journal/kinds/gym-scheme.ts';
import { barSet, gymJournal, type GymJournal } from '../../../../test/journal/gym-journal.ts';
import { sessionWalk, type SessionWalk } from './session-walk.ts';
import { openSession, trainingSessions } from './training-sessions.ts';

const PUSH: readonly SessionBlock[] = [
  {
    block: 'a',
    slots: [
      {
        slot: 'bench',
        exercise: 'bench-press',
        sets: [
          { set: 'warm-up', count: 2 },
          { set: 'top', count: 1, reps: { min: 5, max: 7 }, rir: 1 },
          { set: 'back-off', count: 2, share: 0.9 },
        ],
      },
    ],
  },
  {
    block: 'b',
    slots: [
      {
        slot: 'raise',
        exercise: 'lateral-raise',
        sets: [
          { set: 'working', count: 2 },
          { set: 'drop', count: 1 },
        ],
      },
      {
        slot: 'curl',
        exercise: 'barbell-curl',
        sets: [
          { set: 'warm-up', count: 1 },
          { set: 'working', count: 3 },
        ],
      },
    ],
  },
  {
    block: 'c',
    slots: [{ slot: 'row', exercise: 'one-arm-dumbbell-row', sets: [{ set: 'working', count: 2 }] }],
  },
];

function begun(blocks: readonly SessionBlock[] = PUSH): GymJournal {
  const journal = gymJournal();
  journal.write('08:00', 'session-planned', { template: 'push', name: 'Push', blocks: [...blocks] });
  journal.write('17:00', 'session-begun', { session: 'monday', template: 'push' });
  return journal;
}

function walkOf({ ledger }: GymJournal, session = 'monday'): SessionWalk {
  const outcome = sessionWalk({ ledger, session });
  if (!outcome.ok) throw new Error(outcome.problem.message);
  return outcome.value;
}

const label = ({ slot, set, number, side }: SessionWalk['steps'][number]) =>
  [slot, set, number, ...(side === undefined ? [] : [side])].join(' ');

describe('walking order', () => {
  it('[GYM-33] one exercise after its sets, a superset in rounds with drops hanging on their set, sides one after the other', () => {
    expect(walkOf(begun()).steps.map(label)).toEqual([
      'bench warm-up 1',
      'bench warm-up 2',
      'bench top 1',
      'bench back-off 1',
      'bench back-off 2',
      'curl warm-up 1',
      'raise working 1',
      'curl working 1',
      'raise working 2',
      'raise drop 1',
      'curl working 2',
      'curl working 3',
      'row working 1 left',
      'row working 1 right',
      'row working 2 left',
      'row working 2 right',
    ]);
  });

  it('[GYM-33] the weaker side goes first', () => {
    const { ledger } = begun();
    const outcome = sessionWalk({ ledger, session: 'monday', weakerSide: () => 'right' });
    const sides = outcome.ok ? outcome.value.steps.flatMap(({ side }) => side ?? []) : [];
    expect(sides).toEqual(['right', 'left', 'right', 'left']);
  });

  it('[GYM-34] another order walks the named blocks first, the others in their old order', () => {
    const journal = begun();
    journal.write('17:01', 'session-reordered', { session: 'monday', blocks: ['c'] });
    const blocks = walkOf(journal).steps.map(({ block }) => block);
    expect([...new Set(blocks)]).toEqual(['c', 'a', 'b']);
  });

  it('[GYM-34] an exercise added stands where it was put; added twice, it is there once', () => {
    const journal = begun();
    const slot = { slot: 'dips', exercise: 'dip', sets: [{ set: 'working' as const, count: 1 }] };
    journal.write('17:02', 'exercise-added', { session: 'monday', slot, after: 'a' });
    journal.write('17:03', 'exercise-added', { session: 'monday', slot, after: 'a' });
    const blocks = walkOf(journal).steps.map(({ block }) => block);
    expect([...new Set(blocks)]).toEqual(['a', 'dips', 'b', 'c']);
  });

  it('[GYM-34] a template changed later does not change a session under way', () => {
    const journal = begun();
    journal.write('18:00', 'session-planned', { template: 'push', name: 'Push', blocks: PUSH.slice(2) });
    expect(walkOf(journal).steps).toHaveLength(16);
  });
});

describe('what is done and what is next', () => {
  it('[GYM-35] sets find their steps, and the next step is the first open one', () => {
    const journal = begun();
    expect(walkOf(journal).next).toMatchObject({ slot: 'bench', set: 'warm-up', number: 1 });
    journal.write(
      '17:05',
      'set-done',
      barSet('bench-press', 40, 8, { slot: 'bench', set: 'warm-up', number: 1 }),
    );
    journal.write('17:07', 'set-done', barSet('bench-press', 60, 5, { set: 'warm-up' }));
    const { steps, next, extra } = walkOf(journal);
    expect(steps.filter(({ state }) => state === 'done').map(label)).toEqual([
      'bench warm-up 1',
      'bench warm-up 2',
    ]);
    expect(next).toMatchObject({ set: 'top', number: 1, target: { reps: { min: 5, max: 7 }, rir: 1 } });
    expect(extra).toEqual([]);
  });

  it('[GYM-35] whoever began elsewhere goes on there, then comes back to what was left', () => {
    const journal = begun();
    journal.write(
      '17:05',
      'set-done',
      barSet('barbell-curl', 30, 8, { slot: 'curl', set: 'warm-up', number: 1 }),
    );
    expect(walkOf(journal).next).toMatchObject({ slot: 'raise', number: 1 });
    for (const number of [1, 2, 3]) {
      journal.write(`17:1${number}`, 'set-done', barSet('barbell-curl', 40, 8, { slot: 'curl', number }));
    }
    for (const number of [1, 2]) {
      journal.write(`17:2${number}`, 'set-done', barSet('lateral-raise', 12, 12, { slot: 'raise', number }));
    }
    journal.write('17:23', 'set-skipped', { session: 'monday', slot: 'raise', set: 'drop', number: 1 });
    expect(walkOf(journal).next).toMatchObject({ slot: 'bench', set: 'warm-up' });
  });

  it('[GYM-35] a set more than planned and an exercise nobody planned are extra, not lost', () => {
    const journal = begun();
    journal.write(
      '17:30',
      'set-done',
      barSet('bench-press', 100, 6, { slot: 'bench', set: 'top', number: 1 }),
    );
    journal.write(
      '17:34',
      'set-done',
      barSet('bench-press', 100, 5, { slot: 'bench', set: 'top', number: 2 }),
    );
    journal.write('17:40', 'set-done', barSet('shrug', 80, 12));
    expect(walkOf(journal).extra.map(({ data }) => [data.exercise, data.reps])).toEqual([
      ['bench-press', 5],
      ['shrug', 12],
    ]);
  });

  it('[GYM-34] a substituted exercise takes over the sets to come; those done stay what they were', () => {
    const journal = begun();
    journal.write(
      '17:05',
      'set-done',
      barSet('bench-press', 60, 8, { slot: 'bench', set: 'warm-up', number: 1 }),
    );
    journal.write('17:06', 'exercise-substituted', {
      session: 'monday',
      slot: 'bench',
      exercise: 'machine-chest-press',
      machine: 'press-by-the-window',
      reason: 'bench taken',
    });
    const bench = walkOf(journal).steps.filter(({ slot }) => slot === 'bench');
    expect(bench.map(({ exercise }) => exercise.exercise)).toEqual([
      'bench-press',
      ...Array(4).fill('machine-chest-press'),
    ]);
    expect(bench[1]?.machine).toBe('press-by-the-window');
  });

  it('[GYM-34] a dropped exercise is skipped from there on', () => {
    const journal = begun();
    journal.write('17:05', 'exercise-dropped', { session: 'monday', slot: 'bench', reason: 'shoulder' });
    expect(walkOf(journal).next).toMatchObject({ slot: 'curl', set: 'warm-up' });
  });

  it('[GYM-36] the whole walk comes back from the entries alone, in whatever order they arrive', () => {
    const journal = begun();
    journal.write(
      '17:05',
      'set-done',
      barSet('bench-press', 60, 8, { slot: 'bench', set: 'warm-up', number: 1 }),
    );
    journal.write('17:06', 'exercise-dropped', { session: 'monday', slot: 'curl' });
    journal.write('17:07', 'session-reordered', { session: 'monday', blocks: ['b'] });
    const again = gymJournal();
    again.ledger.add([...journal.ledger.entries()].reverse());
    expect(walkOf(again)).toEqual(walkOf(journal));
    expect(openSession(journal.ledger, Date.UTC(2027, 2, 1, 19))?.session).toBe('monday');
    expect(openSession(journal.ledger, Date.UTC(2027, 2, 2, 9))).toBeUndefined();
    journal.write('18:00', 'session-ended', { session: 'monday' });
    expect(openSession(journal.ledger, Date.UTC(2027, 2, 1, 19))).toBeUndefined();
  });

  it('[GYM-36] a session that no entry names is refused', () => {
    expect(sessionWalk({ ledger: begun().ledger, session: 'tuesday' })).toMatchObject({
      ok: false,
      problem: { code: 'gym/no-such-session' },
    });
  });
});

describe('the same set twice', () => {
  const first = barSet('bench-press', 100, 6, { slot: 'bench', set: 'top', number: 1 });

  it('[GYM-32] from two phones with the same number counts once; a difference is shown and the later counts', () => {
    const journal = begun();
    journal.write('17:30', 'set-done', first);
    journal.write('17:31', 'set-done', { ...first, reps: 7 }, { device: 'phone-b' });
    const { sets, notes } = walkOf(journal);
    expect(sets.map(({ data }) => data.reps)).toEqual([7]);
    expect(notes).toMatchObject([
      { code: 'gym/logged-differently', entries: ['entry-00004', 'entry-00003'] },
    ]);
    expect(notes[0]?.words).toBe(
      'Two entries stand for one set, from two phones: 100 kg x 7, and 100 kg x 6. The later one counts; correct it in the Journal if it should not.',
    );
  });

  it('[GYM-32] without a number is one set within seconds on one phone, minutes on two, else two sets', () => {
    const loose = barSet('bench-press', 100, 6, { set: 'top' });
    const once = begun();
    once.write('17:30:00', 'set-done', loose);
    once.write('17:30:05', 'set-done', loose);
    once.write('17:32:00', 'set-done', loose, { device: 'phone-b' });
    expect(walkOf(once).sets).toHaveLength(1);
    const twice = begun();
    twice.write('17:30:00', 'set-done', loose);
    twice.write('17:33:00', 'set-done', loose);
    expect(walkOf(twice).sets).toHaveLength(2);
    expect(walkOf(twice).notes).toEqual([]);
  });

  it('[GYM-32] a correction by the journal is no second set', () => {
    const journal = begun();
    const id = journal.write('17:30', 'set-done', first);
    journal.write('17:31', 'set-done', { ...first, reps: 5 }, { replaces: id });
    expect(walkOf(journal)).toMatchObject({ sets: [{ data: { reps: 5 } }], notes: [] });
  });

  it('[GYM-32] sets logged out of order stand as logged, and that is said', () => {
    const journal = begun();
    journal.write('17:30', 'set-done', barSet('barbell-curl', 40, 8, { slot: 'curl', number: 2 }));
    journal.write('17:33', 'set-done', barSet('barbell-curl', 40, 9, { slot: 'curl', number: 1 }));
    expect(walkOf(journal).notes).toMatchObject([
      { code: 'gym/out-of-order', words: 'Set 2 is logged before set 1; both stand as logged.' },
    ]);
  });
});

describe('two phones, one session', () => {
  const onTwo = (at: string, more: object = {}) => {
    const journal = begun();
    journal.write(
      at,
      'session-begun',
      { session: 'monday-b', template: 'push', ...more },
      { device: 'phone-b' },
    );
    return journal;
  };

  it('[GYM-31] begun on both before they met is walked as one, under the first name', () => {
    const journal = onTwo('17:20');
    journal.write(
      '17:30',
      'set-done',
      barSet('bench-press', 40, 8, { slot: 'bench', set: 'warm-up', number: 1 }),
    );
    journal.write(
      '17:33',
      'set-done',
      barSet('bench-press', 60, 5, { session: 'monday-b', slot: 'bench', set: 'warm-up', number: 2 }),
      { device: 'phone-b' },
    );
    const walk = walkOf(journal, 'monday-b');
    expect(walk.session).toMatchObject({ session: 'monday', names: ['monday', 'monday-b'] });
    expect(walk.next).toMatchObject({ set: 'top' });
  });

  it('[GYM-31] another template, the evening of the same day, or after the first was ended is another session', () => {
    expect(trainingSessions(onTwo('17:20', { template: 'legs' }).ledger)).toHaveLength(2);
    expect(trainingSessions(onTwo('21:30').ledger)).toHaveLength(2);
    const ended = begun();
    ended.write('17:40', 'session-ended', { session: 'monday' });
    ended.write('17:50', 'session-begun', { session: 'again', template: 'push' }, { device: 'phone-b' });
    expect(trainingSessions(ended.ledger)).toHaveLength(2);
  });

  it('[GYM-31] sets of a session that nobody began are a session too', () => {
    const journal = gymJournal();
    journal.write('17:30', 'set-done', barSet('shrug', 80, 12, { session: 'loose' }));
    expect(walkOf(journal, 'loose')).toMatchObject({
      title: 'Session',
      steps: [],
      extra: [{ data: { reps: 12 } }],
    });
  });
});

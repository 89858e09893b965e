import { describe, expect, it } from 'vitest';
import { barSet, gymJournal, type GymJournal } from '../../../test/journal/gym-journal.ts';
import { gymLog, sessionNow } from './gym-now.ts';
import { gymToday } from './gym-today.ts';
import { bodyLog } from './body-log.ts';
import { pushNow, strengthNow, strengthSince } from './strength-now.ts';
import { addDays } from '../units/civil-date.ts';

const FIRST = '2027-03-01';

function writeTemplate(journal: GymJournal): void {
  journal.write('08:00', 'session-planned', {
    template: 'legs',
    name: 'Legs',
    blocks: [
      {
        block: 'a',
        slots: [
          {
            slot: 'squat',
            exercise: 'back-squat',
            sets: [
              { set: 'warm-up', count: 2 },
              { set: 'top', count: 1, reps: { min: 6, max: 8 }, rir: 1 },
              { set: 'working', count: 2, reps: { min: 8, max: 10 } },
            ],
          },
        ],
      },
    ],
  });
}

/** Eight weeks of squats; strength falls by `fall` repetitions over them while body mass falls by `lostKg`. */
function eightWeeks(fall = 0, lostKg = 0): GymJournal {
  const journal = gymJournal(FIRST);
  writeTemplate(journal);
  journal.write('08:01', 'show-set', {
    show: 'cup',
    name: 'Harbour Cup',
    date: addDays(FIRST, 80),
    target: {},
  });
  journal.write('08:02', 'preparation-begun', { show: 'cup', from: addDays(FIRST, 7) });
  for (let week = 0; week < 8; week++) {
    journal.onDay(7 * week);
    journal.write('07:00', 'body-weighed', { massKg: 84 - (lostKg * week) / 7 });
    const session = `week-${week}`;
    journal.write('17:00', 'session-begun', { session, template: 'legs' });
    const reps = 8 - Math.round((fall * week) / 7);
    journal.write(
      '17:20',
      'set-done',
      barSet('back-squat', 140, reps, { session, slot: 'squat', set: 'top', number: 1, rir: 1 }),
    );
    for (const number of [1, 2])
      journal.write(
        `17:3${number}`,
        'set-done',
        barSet('back-squat', 120, reps + 2, { session, slot: 'squat', number, rir: 1 }),
      );
    journal.write('18:00', 'session-ended', { session });
  }
  return journal;
}

describe('the session under way', () => {
  it('[GYM-36] shows the next set, what it is to beat, and the warm-up towards it', () => {
    const journal = eightWeeks();
    const today = journal.onDay(56);
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    const gym = gymLog(journal.ledger, today);
    const ask = { ledger: journal.ledger, gym, session: 'now', today, push: 'more' } as const;
    const warm = sessionNow(ask);
    if (!warm.ok) throw new Error(warm.problem.message);
    const { next } = warm.value;
    expect(next?.step).toMatchObject({ set: 'warm-up', number: 1 });
    expect(next?.warmUps?.sets).toHaveLength(2);
    expect(next?.beat.last?.fact.data).toMatchObject({ set: 'top', reps: 8 });
    expect(next?.beat.asked).toMatchObject({ load: { of: 'kg', kg: 142.5 }, rule: 'next load', reps: 6 });
    expect(next?.beat.expected?.q05).toBeLessThanOrEqual(next?.beat.expected?.median ?? 0);
    expect(next?.beat.oneRep).toMatchObject({ studied: true });
    expect(next?.beat.why.join(' ')).toContain('Last time, on 2027-04-19: 140 kg x 8, 1 in reserve.');
  });

  it('[GYM-23] a set typed far too heavy is shown, and is no mark to beat', () => {
    const journal = eightWeeks();
    journal.onDay(55);
    journal.write('17:00', 'session-begun', { session: 'slipped', template: 'legs' });
    const slip = { session: 'slipped', slot: 'squat', set: 'top', number: 1, rir: 1 } as const;
    journal.write('17:20', 'set-done', barSet('back-squat', 410, 8, slip));
    const today = journal.onDay(56);
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    const gym = gymLog(journal.ledger, today);
    const now = sessionNow({ ledger: journal.ledger, gym, session: 'now', today, push: 'more' });
    if (!now.ok) throw new Error(now.problem.message);
    const { beat } = now.value.next ?? {};
    expect(beat?.asked?.load).toMatchObject({ of: 'kg' });
    expect(beat?.best?.loadKg).toBe(140);
    expect(beat?.last?.loadKg).toBe(140);
    expect(beat?.why.join(' ')).toContain('410 kg x 8, 1 in reserve on 2027-04-25 lies far above');
  });

  it('[GYM-60] a pain note of the exercise is there the next time it comes up', () => {
    const journal = eightWeeks();
    journal.write('18:05', 'pain-noted', { joint: 'knee', side: 'right', score: 5, exercise: 'back-squat' });
    const today = journal.onDay(56);
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    const gym = gymLog(journal.ledger, today);
    const now = sessionNow({ ledger: journal.ledger, gym, session: 'now', today, push: 'more' });
    expect(now.ok && now.value.next?.pain?.words).toContain('right knee 5 of 10');
  });

  it('[GYM-36] nothing is known of an exercise never done: it says so and asks for nothing', () => {
    const journal = gymJournal();
    writeTemplate(journal);
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    const gym = gymLog(journal.ledger, FIRST);
    const now = sessionNow({ ledger: journal.ledger, gym, session: 'now', today: FIRST, push: 'more' });
    if (!now.ok) throw new Error(now.problem.message);
    expect(now.value.next?.beat.asked).toBeUndefined();
    expect(now.value.next?.beat.why[0]).toContain('Nothing comparable is logged yet');
  });
});

describe('strength against the start of the preparation', () => {
  it('[GYM-40] kept where the sets are kept, lost where they fall, with what a kilogram cost', () => {
    const until = addDays(FIRST, 50);
    const held = strengthNow(eightWeeks().ledger, until);
    expect(held?.kept).toBeGreaterThan(0.97);
    expect(held?.lostPercentPerKg).toBeUndefined();
    const fallen = strengthNow(eightWeeks(5, 6).ledger, until);
    expect(fallen?.kept).toBeLessThan(0.95);
    expect(fallen?.lostPercentPerKg).toBeGreaterThan(0.5);
    expect(fallen?.why[0]).toContain('of where it stood on 2027-03-08');
    expect(fallen?.why.at(-1)).toMatch(
      /^Body mass has fallen by 5\.1 kg: [\d.]+ % of strength for each 1 kg\.$/u,
    );
    const gained = strengthNow(eightWeeks(-2, 6).ledger, until);
    expect(gained?.why.at(-1)).toBe('Body mass has fallen by 5.1 kg, and strength has not fallen with it.');
  });

  it('[GYM-40] both sides of one lift count as one lift', () => {
    const until = addDays(FIRST, 50);
    const withPress = (sides: readonly ('left' | 'right')[]) => {
      const journal = eightWeeks();
      journal.onDay(0);
      journal.write('08:05', 'exercise-described', {
        exercise: 'one-leg-press',
        name: 'One-leg press',
        main: true,
      });
      for (let week = 0; week < 8; week++) {
        journal.onDay(7 * week);
        for (const side of sides)
          for (const number of [1, 2])
            journal.write(
              '19:00',
              'set-done',
              barSet('one-leg-press', 80, 12 - week, { session: `press-${week}`, number, side, rir: 1 }),
            );
      }
      return strengthNow(journal.ledger, until)?.kept ?? 0;
    };
    expect(withPress(['left'])).toBeLessThan(0.975);
    expect(Math.abs(withPress(['left', 'right']) - withPress(['left']))).toBeLessThan(0.006);
  });

  it('[GYM-42] the estimate of the body gets strength against the first day of its own log', () => {
    const until = addDays(FIRST, 50);
    const journal = eightWeeks(5, 6);
    journal.write('06:00', 'athlete-described', {
      name: 'Somebody',
      birthYear: 1990,
      sex: 'male',
      heightCm: 180,
      units: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
      cautionsRead: [],
    });
    const log = bodyLog(journal.ledger, until, () => undefined);
    if (!log.ok) throw new Error(log.problem.message);
    const { days, leanEvidence } = log.value;
    expect(days[0]?.date).toBe(FIRST);
    const since = strengthSince(journal.ledger, FIRST, until);
    expect(leanEvidence?.strengthKept).toBeCloseTo(since?.kept ?? 0, 3);
    expect(leanEvidence?.strengthKept).not.toBeCloseTo(strengthNow(journal.ledger, until)?.kept ?? 0, 3);
    const resting = bodyLog(journal.ledger, addDays(FIRST, 81), () => undefined);
    expect(resting.ok && resting.value.leanEvidence).toBeUndefined();
  });

  it('[GYM-27] near the show, in a deficit and with strength lost beyond its noise, sets are matched', () => {
    const until = addDays(FIRST, 50);
    const push = (journal: GymJournal) => {
      const { log } = gymLog(journal.ledger, until);
      return pushNow(journal.ledger, log, strengthNow(journal.ledger, until, log), until).push;
    };
    expect(push(eightWeeks(6, 6))).toBe('match');
    expect(push(eightWeeks(0, 6))).toBe('more');
    expect(push(eightWeeks(6, 0))).toBe('more');
  });
});

describe('the gym before a session', () => {
  it('[GYM-72] a session still to come, or under way, does not make the week look short', () => {
    const journal = eightWeeks();
    const today = journal.onDay(56);
    const week = (clock: string) => {
      const { log } = gymLog(journal.ledger, today);
      const now = gymToday(journal.ledger, log, today, Date.parse(`${today}T${clock}:00Z`));
      const row = now.volume.find(({ muscle }) => muscle === 'vastus muscles');
      return { sets: row?.sets, weeks: now.volumeWeeks[0]?.weeks };
    };
    expect(week('12:00')).toEqual({ sets: 3, weeks: [3, 3, 3, 3, 3, 3, 3] });
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    journal.write('17:20', 'set-done', barSet('back-squat', 140, 8, { session: 'now', set: 'top' }));
    expect(week('17:30').sets).toBe(3);
    journal.write('18:00', 'session-ended', { session: 'now' });
    expect(week('19:00').sets).toBe(1);
  });

  it('[GYM-36] goes on with an open session, suggests what the day names, else what has waited longest', () => {
    const journal = eightWeeks();
    journal.write('19:00', 'session-planned', {
      template: 'push',
      name: 'Push',
      blocks: [
        { block: 'a', slots: [{ slot: 'b', exercise: 'bench-press', sets: [{ set: 'working', count: 3 }] }] },
      ],
    });
    const today = journal.onDay(56);
    const at = (clock: string) => Date.parse(`${today}T${clock}:00Z`);
    const now = (clock: string) =>
      gymToday(journal.ledger, gymLog(journal.ledger, today).log, today, at(clock));
    expect(now('12:00')).toMatchObject({ open: undefined, suggested: 'push' });
    journal.write('08:00', 'day-shaped', {
      scope: { of: 'day' },
      wake: '06:30',
      sleep: '22:30',
      training: { start: '17:00', minutes: 70, title: 'Legs' },
      cardio: [{ start: '14:00', minutes: 45, activity: 'Treadmill walk', beforeFood: false }],
    });
    expect(now('12:00').suggested).toBe('legs');
    expect(now('12:00').conflicts[0]).toContain('before a legs session');
    journal.write('17:00', 'session-begun', { session: 'now', template: 'legs' });
    expect(now('18:00').open?.session).toBe('now');
  });
});

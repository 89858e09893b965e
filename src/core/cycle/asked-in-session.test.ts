import { describe, expect, it } from 'vitest';
import { barSet, gymJournal, type GymJournal } from '../../../test/journal/gym-journal.ts';
import type { SetLoad } from '../journal/kinds/gym-load.ts';
import type { SetScheme } from '../journal/kinds/gym-scheme.ts';
import { gymLog, sessionNow, stepNow, type StepNow } from './gym-now.ts';

const WEEKS = 5;
const TODAY = 7 * WEEKS;

function writeTemplate(journal: GymJournal, exercise: string, sets: SetScheme[]): void {
  journal.write('08:00', 'session-planned', {
    template: 'plan',
    name: 'Plan',
    blocks: [{ block: 'a', slots: [{ slot: 's', exercise, sets }] }],
  });
}

/** Five weeks of one exercise, the same each week; `each` writes the sets of a session. */
function weeksOf(exercise: string, sets: SetScheme[], each: (journal: GymJournal, session: string) => void) {
  const journal = gymJournal();
  writeTemplate(journal, exercise, sets);
  for (let week = 0; week < WEEKS; week++) {
    journal.onDay(7 * week);
    journal.write('07:00', 'body-weighed', { massKg: 80 });
    const session = `week-${week}`;
    journal.write('17:00', 'session-begun', { session, template: 'plan' });
    each(journal, session);
    journal.write('18:00', 'session-ended', { session });
  }
  return journal;
}

/** Every step of today's session with what it is asked to be. */
function stepsToday(journal: GymJournal): readonly StepNow[] {
  const today = journal.onDay(TODAY);
  const ask = { ledger: journal.ledger, gym: gymLog(journal.ledger, today), today } as const;
  const full = { ...ask, session: 'now', push: 'more' } as const;
  const now = sessionNow(full);
  if (!now.ok) throw new Error(now.problem.message);
  return now.value.walk.steps.map((step) => stepNow(full, now.value.walk, step));
}

function begin(journal: GymJournal): void {
  journal.onDay(TODAY);
  journal.write('17:00', 'session-begun', { session: 'now', template: 'plan' });
}

const SQUATS: SetScheme[] = [
  { set: 'top', count: 1, reps: { min: 5, max: 8 }, rir: 1 },
  { set: 'back-off', count: 1, share: 0.8, reps: { min: 8, max: 10 }, rir: 1 },
  { set: 'drop', count: 1 },
  { set: 'working', count: 1, loadKg: 60, reps: { min: 12, max: 15 }, rir: 3 },
];

function squatWeeks() {
  return weeksOf('back-squat', SQUATS, (journal, session) => {
    const at = { session, slot: 's', number: 1 };
    journal.write('17:10', 'set-done', barSet('back-squat', 100, 6, { ...at, set: 'top', rir: 1 }));
    journal.write('17:15', 'set-done', barSet('back-squat', 80, 9, { ...at, set: 'back-off', rir: 1 }));
    journal.write('17:16', 'set-done', barSet('back-squat', 55, 8, { ...at, set: 'drop', rir: 0 }));
    journal.write('17:25', 'set-done', barSet('back-squat', 60, 13, { ...at, rir: 3 }));
  });
}

describe('sets as the template has them', () => {
  it('[GYM-29] a back-off set is its share of the top set asked, then of the one done', () => {
    const journal = squatWeeks();
    begin(journal);
    expect(stepsToday(journal)[1]?.beat.asked?.load).toEqual({ of: 'kg', kg: 80 });
    journal.write(
      '17:10',
      'set-done',
      barSet('back-squat', 110, 5, { session: 'now', slot: 's', set: 'top', number: 1, rir: 0 }),
    );
    const backOff = stepsToday(journal)[1]?.beat;
    expect(backOff?.asked).toMatchObject({ load: { of: 'kg', kg: 87.5 }, rule: 'as the template says' });
    expect(backOff?.why.join(' ')).toContain('The template asks for 80 % of the top set: 87.5 kg for 8');
  });

  it('[GYM-29] a load that the template names stands, also where nothing was done before', () => {
    const journal = squatWeeks();
    begin(journal);
    expect(stepsToday(journal)[3]?.beat.asked?.load).toEqual({ of: 'kg', kg: 60 });
    const fresh = gymJournal();
    writeTemplate(fresh, 'dumbbell-curl', [
      { set: 'working', count: 1, loadKg: 12, reps: { min: 8, max: 12 } },
    ]);
    begin(fresh);
    const beat = stepsToday(fresh)[0]?.beat;
    expect(beat?.asked).toMatchObject({ load: { of: 'each', kgEach: 12 }, reps: 8 });
    expect(beat?.why[0]).toBe('Nothing comparable is logged yet.');
  });

  it('[GYM-29] a drop is held against the drop of last time, and nothing is expected of it', () => {
    const journal = squatWeeks();
    begin(journal);
    const drop = stepsToday(journal)[2]?.beat;
    expect(drop?.asked).toMatchObject({ load: { of: 'kg', kg: 55 }, reps: 8, rule: 'as last time' });
    expect(drop?.expected).toBeUndefined();
    const never = weeksOf('back-squat', [{ set: 'drop', count: 1 }], (log, session) =>
      log.write('17:10', 'set-done', barSet('back-squat', 100, 6, { session })),
    );
    begin(never);
    expect(stepsToday(never)[0]?.beat).toMatchObject({ asked: undefined, last: undefined });
    expect(stepsToday(never)[0]?.beat.why[0]).toContain('take off a fifth to a quarter');
  });
});

describe('a load that pain holds', () => {
  function painful(exercise: string, load: SetLoad) {
    const journal = weeksOf(exercise, [{ set: 'working', count: 3 }], (log, session) => {
      for (const number of [1, 2, 3])
        log.write('17:10', 'set-done', {
          ...barSet(exercise, 0, 8, { session, slot: 's', number, rir: 1 }),
          load,
        });
    });
    for (const day of [TODAY - 14, TODAY - 7]) {
      journal.onDay(day);
      journal.write('17:40', 'pain-noted', { joint: 'knee', score: 4, exercise });
    }
    begin(journal);
    return journal;
  }

  it('[GYM-62] is a tenth below the heaviest set of the day that hurt, whatever lighter sets came after', () => {
    const journal = squatWeeks();
    for (const day of [TODAY - 14, TODAY - 7]) {
      journal.onDay(day);
      journal.write('17:40', 'pain-noted', { joint: 'knee', score: 4, exercise: 'back-squat' });
    }
    begin(journal);
    expect(stepsToday(journal)[0]?.beat.asked).toMatchObject({
      load: { of: 'kg', kg: 90 },
      rule: 'held by the caution',
    });
    expect(stepsToday(journal)[1]?.beat.asked?.load).toEqual({ of: 'kg', kg: 72.5 });
  });

  it('[GYM-62] does not fall further because it was kept', () => {
    const journal = painful('back-squat', { of: 'kg', kg: 100 });
    for (const number of [1, 2])
      journal.write('17:10', 'set-done', barSet('back-squat', 90, 8, { session: 'now', slot: 's', number }));
    const last = stepsToday(journal)[2]?.beat.asked;
    expect(last?.load).toEqual({ of: 'kg', kg: 90 });
  });

  it('[GYM-62] is made of what the place has, at or below the ceiling', () => {
    const journal = painful('back-squat', { of: 'kg', kg: 95 });
    expect(stepsToday(journal)[0]?.beat.asked?.load).toEqual({ of: 'kg', kg: 85 });
  });

  it('[GYM-62] on body weight means more help, not less', () => {
    const journal = painful('pull-up', { of: 'body', assistKg: 15 });
    const load = stepsToday(journal)[0]?.beat.asked?.load;
    expect(load?.of === 'body' ? load.assistKg : 0).toBeGreaterThanOrEqual(15 + 0.1 * (80 - 15));
  });
});

describe('the stronger side', () => {
  it('[GYM-52] is asked for no more than the weaker side did in the same set', () => {
    const journal = weeksOf('one-leg-extension', [{ set: 'working', count: 3 }], (log, session) => {
      for (const number of [1, 2, 3])
        for (const side of ['left', 'right'] as const)
          log.write('17:10', 'set-done', {
            ...barSet('one-leg-extension', 0, side === 'left' ? 8 : 12, {
              session,
              slot: 's',
              number,
              side,
              rir: 1,
            }),
            load: { of: 'stack', pinKg: 20 },
          });
    });
    begin(journal);
    expect(stepsToday(journal)[0]?.step.side).toBe('left');
    expect(stepsToday(journal)[1]?.beat.asked?.reps).toBeGreaterThan(9);
    journal.write('17:10', 'set-done', {
      ...barSet('one-leg-extension', 0, 9, { session: 'now', slot: 's', number: 1, side: 'left', rir: 0 }),
      load: { of: 'stack', pinKg: 20 },
    });
    const stronger = stepsToday(journal)[1]?.beat;
    expect(stronger?.asked).toMatchObject({ reps: 9, rule: 'as the weaker side' });
    expect(stronger?.why.join(' ')).toContain('the stronger side does no more');
  });
});

import { describe, expect, it } from 'vitest';
import { gymLog, sessionNow, stepNow } from '#core/cycle/gym-now.ts';
import { gymToday } from '#core/cycle/gym-today.ts';
import { strengthNow } from '#core/cycle/strength-now.ts';
import { trainingSessions } from '#core/gym/session/training-sessions.ts';
import { runSeries } from '#core/gym/strength/run-series.ts';
import { createLedger } from '#core/journal/ledger.ts';
import { isoWeekday } from '#core/units/civil-date.ts';
import { demoJournal } from './journal.ts';
import { createScribe, storyMs } from './scribe.ts';
import { story, utc } from './story.ts';
import { trainingDays } from './training-plan.ts';

const entries = demoJournal(1);
const ledger = createLedger(entries);
const gym = gymLog(ledger, story.today);

describe('the training of the invented athlete', () => {
  it('[DEM-08] five sessions a week from their templates, each begun, logged and ended', () => {
    const sessions = trainingSessions(ledger);
    expect(sessions).toHaveLength(story.weeks * trainingDays.length);
    for (const { session, day, template } of sessions) {
      expect(trainingDays.find((one) => one.template === template)?.weekday).toBe(isoWeekday(day));
      const now = sessionNow({ ledger, gym, session, today: day, push: 'more' });
      if (!now.ok) throw new Error(now.problem.message);
      const { walk } = now.value;
      expect(walk.notes).toEqual([]);
      expect(walk.extra).toEqual([]);
      expect(walk.steps.filter(({ set, state }) => set !== 'warm-up' && state !== 'done')).toEqual([]);
    }
  });

  it('[DEM-08] her left leg is weaker beyond the noise, and her strength has moved with her body', () => {
    expect(gym.sides.map(({ exercise, weaker }) => [exercise, weaker])).toEqual([
      ['one-leg-press', 'left'],
      ['one-leg-extension', 'left'],
    ]);
    const kept = strengthNow(ledger, story.today);
    expect(kept?.lifts.length).toBeGreaterThan(5);
    expect(kept?.kept).toBeGreaterThan(0.93);
    expect(kept?.kept).toBeLessThan(1);
    expect(kept?.lostPercentPerKg).toBeGreaterThan(0);
  });

  it('[DEM-08] every load of hers can be put on with what the hall has', () => {
    const weights = gym.log.book.weights('Boathouse hall');
    const pairs = weights?.dumbbellPairs?.map(({ mass }) => mass) ?? [];
    for (const { data } of gym.log.hardSets) {
      const { load } = data;
      if (load.of === 'each') expect(pairs).toContain(load.kgEach);
      if (load.of === 'kg') expect(load.kg % 2.5).toBe(0);
      if (load.of === 'stack') expect(load.pinKg % 2.5).toBe(0);
    }
  });

  it('[DEM-08] back-off sets stand at their share of the top set, and drops hang on the last', () => {
    const ofKind = (kind: string) => gym.log.hardSets.filter(({ data }) => data.set === kind);
    expect(ofKind('back-off').length).toBe(2 * story.weeks);
    expect(ofKind('drop').length).toBe(story.weeks);
    const raise = gym.log.series.find(({ exercise }) => exercise === 'machine-lateral-raise');
    expect(raise?.follow).toHaveLength(story.weeks);
    expect(raise?.sets).toHaveLength(3 * story.weeks);
  });

  it('[DEM-08] no set of hers is a slip: all lie within what the estimate believes possible', () => {
    for (const { sets } of gym.log.series) expect(runSeries(sets).suspects).toEqual([]);
  });

  it('[DEM-08] the legs day of the story has what is to beat for each set, and a knee that holds the hack squat', () => {
    const today = gymToday(ledger, gym.log, story.today, storyMs(story.today, story.opensAt, utc));
    expect(today.suggested).toBe('legs-front');
    expect(today.cardio.week.minutes).toBeGreaterThan(200);
    expect(today.volumeWeeks[0]?.weeks).toHaveLength(story.weeks);
    const scribe = createScribe(7, utc);
    scribe.write(story.today, '14:30', 'session-begun', {
      session: 'today',
      template: 'legs-front',
      place: 'Boathouse hall',
    });
    const begun = createLedger([...entries, ...scribe.entries]);
    const ask = { ledger: begun, gym, session: 'today', today: story.today, push: 'more' } as const;
    const now = sessionNow(ask);
    if (!now.ok) throw new Error(now.problem.message);
    const steps = now.value.walk.steps.map((step) => stepNow(ask, now.value.walk, step));
    for (const { beat } of steps) {
      expect(beat.asked).toBeDefined();
      expect(beat.expected).toBeDefined();
      expect(beat.last).toBeDefined();
    }
    const squat = steps.find(({ step }) => step.slot === 'hack-squat');
    expect(squat?.pain?.words).toContain('Noted more than once: the load is held 10 % lower.');
    expect(squat?.beat.asked?.rule).toBe('held by the caution');
    expect(now.value.next?.step.side).toBe('left');
  });
});

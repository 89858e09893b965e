import { describe, expect, it } from 'vitest';
import { safeTemperature } from '../tables/safe-temperatures.ts';
import { storageRule } from '../tables/storage-clock.ts';
import { batchStorage } from './batch-storage.ts';
import { moveClock, readClock, shelfLimit, startClock } from './shelf-life.ts';

const HOUR = 3_600_000;
const MINUTE = 60_000;
/** Sunday 18:00. */
const cooked = 0;
const meat = () => startClock(shelfLimit('cooked-meat', 'strict'), 'fridge', cooked);

describe('how long food keeps', () => {
  /** Source cold-storage-chart: cooked meat and leftovers three to four days. */
  it('[BAT-32] meat cooked Sunday 18:00 is good until Thursday 18:00', () => {
    const thursday = 96 * HOUR;
    expect(readClock(meat(), 40 * HOUR)).toMatchObject({ state: 'fresh', useByMs: thursday });
    expect(readClock(meat(), 73 * HOUR)).toMatchObject({ state: 'use soon', useByMs: thursday });
    expect(readClock(meat(), thursday - 1)).toMatchObject({ state: 'use soon' });
    expect(readClock(meat(), thursday)).toMatchObject({ state: 'out', reason: 'days' });
  });

  /** Sources fsa-rice (one day) and cold-storage-chart (as other leftovers). */
  it('[BAT-31] cooked rice keeps a day by the strict rule, four by the general one', () => {
    const rice = (rule: 'strict' | 'general') =>
      startClock(shelfLimit('cooked-rice', rule), 'fridge', cooked);
    expect(readClock(rice('strict'), 24 * HOUR).state).toBe('out');
    expect(readClock(rice('strict'), 23 * HOUR).state).toBe('use soon');
    expect(readClock(rice('general'), 24 * HOUR).state).toBe('fresh');
    expect(shelfLimit('cooked-rice', 'strict').source).toBe('fsa-rice');
  });

  it('[BAT-30] a mixed dish takes the shortest of its parts: beef with rice goes by the rice', () => {
    const parts = [
      { name: 'minced beef', storage: 'raw-mince' as const },
      { name: 'white rice', storage: 'dry-rice' as const },
      { name: 'olive oil', storage: 'oil' as const },
    ];
    expect(batchStorage(parts, 'strict')).toMatchObject({
      storage: 'cooked-rice',
      limit: { hours: 24 },
      decidedBy: ['white rice'],
    });
    expect(batchStorage(parts, 'general')).toMatchObject({ limit: { hours: 96 }, decidedBy: [] });
    expect(batchStorage([], 'strict')).toMatchObject({ storage: 'cooked-dish', limit: { hours: 96 } });
  });

  it('[BAT-33] freezing stops the clock, thawing in the fridge resumes it with the days that were left', () => {
    const frozen = moveClock(meat(), 'freezer', 24 * HOUR);
    expect(readClock(frozen, 2000 * HOUR)).toMatchObject({ state: 'frozen', reason: 'frozen' });
    expect(readClock(frozen, 2000 * HOUR)).not.toHaveProperty('useByMs');
    const thawed = moveClock(frozen, 'fridge', 2000 * HOUR);
    expect(readClock(thawed, 2000 * HOUR)).toMatchObject({ useByMs: 2072 * HOUR, state: 'fresh' });
    expect(readClock(thawed, 2072 * HOUR).state).toBe('out');
  });

  /** Source cold-storage-chart: two hours, one above 90 F. */
  it('[BAT-34] a portion carried from 08:00 to 10:30 is out; minutes add up over outings; hot ones count double', () => {
    const carried = moveClock(meat(), 'room', 14 * HOUR);
    expect(readClock(carried, 14 * HOUR + 119 * MINUTE).state).toBe('use soon');
    expect(readClock(carried, 16.5 * HOUR)).toMatchObject({
      state: 'out',
      reason: 'minutes out',
      minutesOut: 150,
    });
    const first = moveClock(meat(), 'fridge', 10 * HOUR, { minutesOut: 70 });
    expect(readClock(first, 10 * HOUR).state).toBe('fresh');
    expect(readClock(moveClock(first, 'fridge', 20 * HOUR, { minutesOut: 50 }), 20 * HOUR).state).toBe('out');
    const hot = moveClock(meat(), 'fridge', 10 * HOUR, { minutesOut: 60, hot: true });
    expect(readClock(hot, 10 * HOUR)).toMatchObject({ state: 'out', minutesOut: 60 });
  });

  it('[BAT-34] left standing, the minutes run out before the days: the use-by says so', () => {
    const carried = moveClock(meat(), 'room', 14 * HOUR);
    expect(readClock(carried, 14 * HOUR + 30 * MINUTE).useByMs).toBe(16 * HOUR);
  });

  it('[BAT-32] what only loses quality is past its best, never out; salt and oil have no clock; a tin keeps in the cupboard', () => {
    const produce = startClock(shelfLimit('fresh-produce', 'strict'), 'fridge', 0);
    expect(readClock(produce, 11 * 24 * HOUR).state).toBe('past its best');
    expect(readClock(startClock(shelfLimit('oil', 'strict'), 'cupboard', 0), 1e12).state).toBe('no clock');
    const tin = startClock(shelfLimit('canned', 'strict'), 'cupboard', 0);
    expect(readClock(tin, 900 * 24 * HOUR).state).toBe('no clock');
    expect(readClock(moveClock(tin, 'fridge', 900 * 24 * HOUR), 905 * 24 * HOUR).state).toBe('out');
  });

  /** Sources cold-storage-chart and safe-temperature-chart, read there. */
  it('[BAT-32] the charts stand as published', () => {
    const days = (storage: Parameters<typeof storageRule>[0]) => storageRule(storage).fridgeDays;
    expect(days('raw-mince')).toEqual({ first: 1, last: 2 });
    expect(days('raw-poultry')).toEqual({ first: 1, last: 2 });
    expect(days('raw-meat')).toEqual({ first: 3, last: 5 });
    expect(days('cooked-meat')).toEqual({ first: 3, last: 4 });
    expect(days('egg-in-shell')).toEqual({ first: 21, last: 35 });
    expect(days('egg-out-of-shell')).toEqual({ first: 2, last: 4 });
    expect(days('cooked-fish')).toEqual({ first: 3, last: 4 });
    expect(safeTemperature('raw-mince')?.minimumC).toBe(71.1);
    expect(safeTemperature('raw-poultry-mince')?.minimumC).toBe(73.9);
    expect(safeTemperature('raw-meat')).toMatchObject({ minimumC: 62.8, restMinutes: 3 });
    expect(safeTemperature('raw-shellfish')).not.toHaveProperty('minimumC');
    expect(safeTemperature('dry')).toBeUndefined();
  });
});

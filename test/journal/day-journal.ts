import { composeEntry } from '#core/journal/compose-entry.ts';
import type { DataOf, KnownKind } from '#core/journal/kinds/registry.ts';
import { createLedger, type GrowingLedger } from '#core/journal/ledger.ts';
import { parseDate } from '#core/units/civil-date.ts';
import { parseClock } from '#core/units/clock.ts';

/** The prep day that day journals are about: a Thursday. */
export const DAY = '2027-03-04';

export type DayStep = {
  readonly [Kind in KnownKind]: readonly [clock: string, kind: Kind, data: DataOf<Kind>];
}[KnownKind];

/** A journal of one prep day, each entry at its clock time ("24:30" is half past midnight), UTC. */
export function dayJournal(...steps: readonly DayStep[]): GrowingLedger {
  const ledger = createLedger();
  for (const [index, [clock, kind, data]] of steps.entries()) {
    const atMs = dayMs(clock);
    const entry = composeEntry({
      kind,
      data,
      day: DAY,
      atMs,
      nowMs: atMs,
      offsetMinutes: 0,
      zone: 'UTC',
      device: 'tester',
      writer: 'tester',
      random: Uint8Array.from({ length: 10 }, (_, byte) => (index * 31 + byte * 7) % 256),
      latestStamp: ledger.latestStamp,
    });
    if (!entry.ok) throw new Error(`${kind}: ${entry.problem.path}: ${entry.problem.message}`);
    ledger.add([entry.value]);
  }
  return ledger;
}

/** Epoch milliseconds of a clock time of the day. */
export function dayMs(clock: string): number {
  return ((parseDate(DAY) ?? 0) * 1440 + (parseClock(clock) ?? 0)) * 60_000;
}

/** Sleep past midnight, legs in the afternoon, a walk before food, targets, oats and chicken at hand. */
export const plainDay: readonly DayStep[] = [
  [
    '05:00',
    'day-shaped',
    {
      scope: { of: 'day' },
      wake: '06:00',
      sleep: '24:15',
      training: { start: '15:00', minutes: 75, title: 'Legs' },
      cardio: [{ start: '06:20', minutes: 30, activity: 'Walk', beforeFood: true }],
    },
  ],
  [
    '05:01',
    'target-set',
    {
      from: DAY,
      dayKind: 'every',
      basis: 'entered',
      proteinG: 180,
      carbohydrateG: 200,
      fatG: 60,
      fibreMinG: 25,
    },
  ],
  ['05:02', 'stock-counted', { food: 'usda-sr28:08120', grams: 500, place: 'cupboard' }],
  ['05:03', 'stock-counted', { food: 'usda-sr28:05064', grams: 600, place: 'fridge' }],
  ['05:04', 'stock-counted', { food: 'usda-sr28:05062', grams: 800, place: 'fridge' }],
  ['05:05', 'stock-counted', { food: 'usda-sr28:09054', grams: 400, place: 'freezer' }],
];

const oats = { source: 'food', food: 'usda-sr28:08120', grams: 60 } as const;
const chicken = { source: 'food', food: 'usda-sr28:05064', grams: 150 } as const;

/** A plan of two meals. */
export const plainPlan: DayStep = [
  '06:05',
  'plan-adopted',
  {
    cause: 'morning',
    meals: [
      {
        slot: 'meal-1',
        at: '07:00',
        role: 'away',
        target: { proteinG: 60, carbohydrateG: 60, fatG: 25 },
        items: [oats],
        pinned: false,
      },
      {
        slot: 'meal-2',
        at: '13:00',
        role: 'before-training',
        target: { proteinG: 60, carbohydrateG: 80, fatG: 10 },
        items: [chicken, oats],
        pinned: true,
      },
    ],
    cost: 100,
    gap: 0.01,
  },
];

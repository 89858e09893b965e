import * as v from 'valibot';
import { healthKinds } from '#core/journal/kinds/health.ts';
import { clock, date, integerIn, numberIn, text } from '#core/problems/shapes.ts';

const id = text(80, 'a name of this thing');

/** What is due on a day, and the day it must fit into. */
export const scheduleRequest = v.strictObject({
  date,
  /** Absent: the day has not begun. */
  now: v.optional(clock),
  events: v.strictObject({
    wake: clock,
    sleep: clock,
    training: v.optional(v.strictObject({ start: clock, minutes: integerIn(1, 600, 'minutes') })),
  }),
  /** Meals of the day, planned and eaten. Unknown carbohydrate or fat is unknown, not none. */
  meals: v.array(
    v.strictObject({
      slot: id,
      at: clock,
      carbohydrateG: v.optional(numberIn(0, 2000, 'grams')),
      fatG: v.optional(numberIn(0, 1000, 'grams')),
    }),
  ),
  products: v.array(healthKinds['supplement-defined']),
  /** Doses due today, in the order of their importance to the athlete. */
  doses: v.array(
    v.strictObject({
      regimen: id,
      supplement: id,
      units: numberIn(0.1, 100, 'units'),
      tie: healthKinds['regimen-set'].entries.tie,
    }),
  ),
  /** What was swallowed today already. */
  taken: v.optional(
    v.array(
      v.strictObject({
        regimen: v.optional(id),
        supplement: id,
        units: numberIn(0.1, 100, 'units'),
        at: clock,
      }),
    ),
  ),
  skipped: v.optional(v.array(id)),
  /** Prescribed medicines at their prescriber's times. */
  medicines: v.optional(v.array(v.strictObject({ name: text(120), at: clock }))),
  /** Drinks of the day with their caffeine; an absent amount is unknown. */
  drinks: v.optional(
    v.array(
      v.strictObject({
        drink: text(80),
        at: clock,
        caffeineMg: v.optional(numberIn(0, 2000, 'milligrams')),
      }),
    ),
  ),
});
export type ScheduleRequest = v.InferOutput<typeof scheduleRequest>;

const clockTime = v.string();
/** The day's doses, each beside what it is tied to. */
export const scheduleAnswer = v.strictObject({
  items: v.array(
    v.strictObject({
      regimen: v.string(),
      supplement: v.string(),
      name: v.string(),
      units: v.number(),
      unit: v.string(),
      at: clockTime,
      slot: v.optional(v.string()),
      /** What it is tied to, in words; why it was moved, where it was. */
      words: v.string(),
    }),
  ),
  /** Taken or skipped already. */
  done: v.array(v.string()),
  /** Their moment has passed. */
  missed: v.array(v.strictObject({ regimen: v.string(), words: v.string() })),
  /** Tied to something that today does not have. */
  notToday: v.array(v.strictObject({ regimen: v.string(), words: v.string() })),
  refused: v.array(v.strictObject({ regimen: v.string(), words: v.string(), source: v.string() })),
  /** No time of today keeps every gap. */
  impossible: v.array(
    v.strictObject({
      regimen: v.string(),
      against: v.string(),
      gapMinutes: v.number(),
      words: v.string(),
      source: v.string(),
    }),
  ),
  /** Fixed times that stand too close to each other: they are the prescriber's or already past. */
  conflicts: v.array(v.strictObject({ words: v.string(), source: v.string() })),
  caffeine: v.strictObject({ plannedMg: v.number(), takenMg: v.number(), limitMg: v.number() }),
  cautions: v.array(v.strictObject({ words: v.string(), source: v.string() })),
  why: v.array(v.string()),
});
export type ScheduleAnswer = v.InferOutput<typeof scheduleAnswer>;

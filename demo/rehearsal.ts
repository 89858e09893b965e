import { stretchIds } from '#core/course/stretch-ids.ts';
import { addDays } from '#core/units/civil-date.ts';
import type { Scribe } from './scribe.ts';
import { story } from './story.ts';

/** A load as the tool plans it: eight grams of carbohydrate for each kilogram, protein and fat at their least. */
const LOAD = { p: 116, c: 500, f: 32, fibreMaxG: 15, gPerKg: 8 } as const;

/** The early one, held ten weeks before the show: it tries the gut, the times and the mirror. */
export const heldRehearsal = { plannedOn: 91, fromDay: 96, loadDays: 2, target: LOAD } as const;
/** The dress rehearsal, its morning four weeks before the show. */
const AHEAD = { plannedOn: 99, fromDay: 140, loadDays: 2, target: LOAD } as const;

const HOUR = '08:00';

/** What the journal has of the two rehearsals on a day: planned, held with its morning's note, judged, planned anew. */
export function writeRehearsals(scribe: Scribe, number: number): void {
  const day = addDays(story.begins, number);
  const after = heldRehearsal.fromDay + heldRehearsal.loadDays;
  if (number === heldRehearsal.plannedOn) planRehearsal(scribe, day, '20:05', heldRehearsal);
  if (number === after) writeMorningAfter(scribe, day);
  if (number === AHEAD.plannedOn) {
    judge(scribe, day);
    planRehearsal(scribe, day, '20:15', AHEAD);
  }
}

type Load = typeof heldRehearsal | typeof AHEAD;

function planRehearsal(scribe: Scribe, day: string, clock: string, load: Load): void {
  const { p, c, f, fibreMaxG } = load.target;
  const [from, until] = daysOf(load);
  scribe.write(day, clock, 'stretch-planned', {
    stretch: stretchIds(story.show.id).rehearsal,
    type: 'higher-carbohydrate days',
    from,
    until,
    energyKcal: 4 * p + 4 * c + 9 * f,
    carbohydrateG: c,
  });
  scribe.write(day, clock, 'target-set', {
    from,
    until,
    dayKind: 'every',
    basis: 'course',
    proteinG: p,
    carbohydrateG: c,
    fatG: f,
    fibreMaxG,
  });
  writeDate(scribe, day, clock, addDays(until, 1), false);
}

function writeDate(scribe: Scribe, day: string, clock: string, date: string, done: boolean): void {
  scribe.write(day, clock, 'event-dated', {
    event: `rehearsal ${date}`,
    title: 'Rehearsal: photographs in the stage poses, notes',
    type: 'rehearsal',
    date,
    at: HOUR,
    minutes: 45,
    show: story.show.id,
    ...(done && { done }),
  });
}

function writeMorningAfter(scribe: Scribe, day: string): void {
  scribe.write(day, HOUR, 'note-written', {
    text: 'Morning after the load. Full by eight, a little soft at the waist until ten, then sharp. White rice and rice cakes sat well; the second bowl of oats did not. Mirror only, no photographs yet.',
  });
  writeDate(scribe, day, HOUR, day, true);
}

function judge(scribe: Scribe, day: string): void {
  const [from, until] = daysOf(heldRehearsal);
  scribe.write(day, '20:10', 'rehearsal-judged', {
    show: story.show.id,
    from,
    until,
    loadGPerKg: LOAD.gPerKg,
    loadDays: heldRehearsal.loadDays,
    look: 4,
    gut: 3,
    again: 'as it was',
    lessons: 'Rice and rice cakes, no oats. Last meal by eight in the evening. Best two hours after waking.',
  });
}

function daysOf({ fromDay, loadDays }: Load): readonly [from: string, until: string] {
  return [addDays(story.begins, fromDay), addDays(story.begins, fromDay + loadDays - 1)];
}

import { writeStamp } from '#core/journal/stamp.ts';
import type { Entry } from '#core/journal/entry.ts';
import { randomStream } from '#core/random/random-stream.ts';
import { addDays, parseDate } from '#core/units/civil-date.ts';
import { formatInstant } from '#core/units/format-instant.ts';

/** Facts of one day: what a full day of preparation writes, 55 entries and now and then a correction. */
const PLAN: readonly (readonly [kind: string, count: number])[] = [
  ['body-weighed', 1],
  ['meal-eaten', 5],
  ['water-drunk', 6],
  ['stock-bought', 3],
  ['batch-cooked', 1],
  ['note-written', 4],
  ['stock-counted', 35],
];

/** An invented journal of so many entries, from one day on, the same for the same seed. */
export function tenYears(count: number, seed = 1): Entry[] {
  const random = randomStream(seed, 'bench/journal');
  const entries: Entry[] = [];
  for (let day = '2017-01-01'; entries.length < count; day = addDays(day, 1)) {
    let minutes = 6 * 60;
    for (const [kind, times] of PLAN) {
      for (let i = 0; i < times && entries.length < count; i++) {
        minutes += 1 + random.integer(20);
        entries.push(fact(kind, day, minutes, entries.length, random.integer(100)));
        if (random.integer(50) === 0) entries.push(correction(entries, random.integer(100)));
      }
    }
  }
  return entries.slice(0, count);
}

function fact(kind: string, day: string, minutes: number, number: number, draw: number): Entry {
  const epochMs = ((parseDate(day) ?? 0) * 1440 + minutes) * 60_000 + (number % 60_000);
  return {
    id: `bench-${number}`,
    stamp: writeStamp({ epochMs, counter: number % 4, writer: 'benchbench' }),
    device: 'bench',
    kind,
    day,
    at: formatInstant(epochMs, 0),
    zone: 'UTC',
    data: dataOf(kind, draw),
  };
}

function correction(entries: readonly Entry[], draw: number): Entry {
  const number = entries.length;
  const old = entries[number - 1 - (draw % Math.min(20, number))];
  if (!old) throw new RangeError('nothing to correct yet');
  return { ...old, id: `bench-${number}`, stamp: `${old.stamp.slice(0, -1)}z${number}`, replaces: old.id };
}

function dataOf(kind: string, draw: number): Entry['data'] {
  switch (kind) {
    case 'body-weighed':
      return { massKg: 80 + draw / 10 };
    case 'meal-eaten':
      return {
        slot: `meal-${draw}`,
        items: [0, 1, 2, 3].map((i) => ({ source: 'food', food: `food-${i + draw}`, grams: 50 + draw })),
      };
    case 'water-drunk':
      return { drink: 'water', millilitres: 250 + draw };
    case 'stock-bought':
      return { food: `food-${draw}`, grams: 500 + draw, place: 'fridge' };
    case 'batch-cooked':
      return {
        batch: `batch-${draw}`,
        name: 'Rice and chicken',
        ingredients: [
          { food: 'rice-dry', rawG: 400 },
          { food: 'chicken-raw', rawG: 900 + draw },
        ],
        containerG: 1200,
        cookedGrossG: 3000,
        fromStock: true,
      };
    case 'stock-counted':
      return { food: `food-${draw}`, grams: 100 + draw, place: 'fridge' };
    default:
      return { text: `A note of ${draw} words` };
  }
}

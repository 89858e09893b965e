import fc from 'fast-check';
import type { Entry } from '#core/journal/entry.ts';
import { writeStamp } from '#core/journal/stamp.ts';
import { formatDate } from '#core/units/civil-date.ts';
import { formatInstant } from '#core/units/format-instant.ts';

const START_DAY = 20_800;

const knownFact = fc.oneof(
  fc.record({
    kind: fc.constant('body-weighed'),
    data: fc.record({ massKg: fc.integer({ min: 40, max: 140 }) }),
  }),
  fc.record({
    kind: fc.constant('note-written'),
    data: fc.record({ text: fc.string({ minLength: 1, unit: 'binary' }) }),
  }),
  fc.record({
    kind: fc.constant('water-drunk'),
    data: fc.record({ drink: fc.constant('water'), millilitres: fc.integer({ min: 1, max: 900 }) }),
  }),
);
const strangeFact = fc.record({
  kind: fc.constantFrom('moon-seen', 'body-weighed'),
  data: fc.dictionary(fc.string(), fc.jsonValue({ maxDepth: 3 })),
});

/** Entries of known and unknown kinds, some correcting or removing others, some of an id that another also carries. */
export const arbitraryEntries: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.record({
      number: fc.integer({ min: 0, max: 40 }),
      dayNumber: fc.integer({ min: 0, max: 3 }),
      minutes: fc.integer({ min: 0, max: 1439 }),
      counter: fc.integer({ min: 0, max: 3 }),
      fact: fc.oneof({ arbitrary: knownFact, weight: 6 }, { arbitrary: strangeFact, weight: 1 }),
      replaces: fc.option(fc.integer({ min: 0, max: 40 }), { freq: 3 }),
      removes: fc.boolean(),
    }),
    { maxLength: 24 },
  )
  .map((drafts) => drafts.map(toEntry));

function toEntry(draft: {
  number: number;
  dayNumber: number;
  minutes: number;
  counter: number;
  fact: { kind: string; data: object };
  replaces: number | null;
  removes: boolean;
}): Entry {
  const epochMs = ((START_DAY + draft.dayNumber) * 1440 + draft.minutes) * 60_000;
  const removal = draft.replaces !== null && draft.removes;
  return {
    id: `entry-${draft.number}`,
    stamp: writeStamp({ epochMs, counter: draft.counter, writer: 'tester' }),
    device: 'device',
    kind: removal ? 'entry-removed' : draft.fact.kind,
    day: formatDate(START_DAY + draft.dayNumber),
    at: formatInstant(epochMs, 60),
    zone: 'Europe/Lisbon',
    data: removal ? {} : { ...draft.fact.data },
    ...(draft.replaces === null ? {} : { replaces: `entry-${draft.replaces}` }),
  };
}

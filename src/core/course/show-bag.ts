import type { Ledger } from '#core/journal/ledger.ts';

export interface BagThing {
  readonly thing: string;
  readonly packed: boolean;
  /** Written by the athlete, not by the list. */
  readonly own: boolean;
}

/** The one thing whose contents the day's plan knows. */
export const BAG_MEALS = 'The meals, weighed out and labelled';

/** What goes along to a show. Common practice, no source; the organiser's own list comes first. */
const USUAL: readonly string[] = [
  'Identity card and membership',
  'Show suit, and a second one',
  'Shoes for the stage, if the class wears them',
  'Jewellery and competitor number',
  'Tan, applicator and old towels',
  'Dark loose clothes and slippers',
  'Dark sheets for the bed and the car',
  'Elastic bands for the pump-up',
  'Music for the routine, kept twice',
  BAG_MEALS,
  'Water and salt as every day',
  'Spoon, wipes and a waste bag',
  'Make-up, hair things and a mirror',
  'Charger, and cash for the door',
  'Medicines that are taken anyway',
  'A meal for after the show',
];

/** The show bag (CRS-31): the usual things, then one's own, each in the bag or still to go in. */
export function showBag(ledger: Ledger, show: string): readonly BagThing[] {
  const said = new Map<string, boolean>();
  for (const { data } of ledger.of('thing-packed')) if (data.show === show) said.set(data.thing, data.packed);
  const own = [...said.keys()].filter((thing) => !USUAL.includes(thing));
  return [...USUAL, ...own].map((thing) => ({
    thing,
    packed: said.get(thing) === true,
    own: !USUAL.includes(thing),
  }));
}

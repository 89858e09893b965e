import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';
import { stampKg, type Stamp } from './ramp-draft.ts';

type WeightsCounted = DataOf<'weights-counted'>;

const unit = v.picklist(['kg', 'lb']);
const stamp = { mass: v.number(), unit };

export const weightsDraft = v.strictObject({
  place: v.string(),
  plates: v.array(v.strictObject({ ...stamp, count: v.optional(v.number()) })),
  dumbbellPairs: v.array(v.strictObject(stamp)),
});
export type WeightsDraft = v.InferOutput<typeof weightsDraft>;

/** The newest count as a draft to be changed. */
export function draftOfCount(counted: WeightsCounted | undefined): WeightsDraft {
  return {
    place: counted?.place ?? '',
    plates: [...(counted?.plates ?? [])],
    dumbbellPairs: [...(counted?.dumbbellPairs ?? [])],
  };
}

function heaviestFirst<Piece extends Stamp>(pieces: readonly Piece[]): Piece[] {
  return [...pieces].sort((a, b) => stampKg(b) - stampKg(a));
}

function same(a: Stamp, b: Stamp): boolean {
  return a.mass === b.mass && a.unit === b.unit;
}

/** Another kind of plate; a kind that is there already is not listed twice. */
export function withPlate(typed: WeightsDraft, plate: Stamp): WeightsDraft {
  if (typed.plates.some((other) => same(other, plate))) return typed;
  return { ...typed, plates: heaviestFirst([...typed.plates, { ...plate, count: 2 }]) };
}

export interface DumbbellRun {
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly step: number | undefined;
  readonly unit: Stamp['unit'];
}

const MOST_PAIRS = 120;

/** The pairs of a rack from the lightest to the heaviest in even steps; those that are there already stay (GYM-94). */
export function withDumbbells(typed: WeightsDraft, run: DumbbellRun): Outcome<WeightsDraft> {
  const { from, to, step, unit: of } = run;
  if (from === undefined || from <= 0)
    return refused(
      'gym/no-lightest',
      'from',
      'The lightest pair is missing.',
      'Enter what is stamped on it.',
    );
  const last = to ?? from;
  if (last < from)
    return refused(
      'gym/rack-backwards',
      'to',
      'The heaviest pair is lighter than the lightest.',
      'Exchange the two.',
    );
  if (last > from && (step === undefined || step <= 0))
    return refused(
      'gym/no-step',
      'step',
      'The step between pairs is missing.',
      'Enter how much each is heavier.',
    );
  const count = last > from ? Math.floor(roundTo((last - from) / (step ?? 1), 6)) + 1 : 1;
  const added = Array.from({ length: Math.min(count, MOST_PAIRS + 1) }, (_, i) => ({
    mass: roundTo(from + i * (step ?? 0), 3),
    unit: of,
  })).filter((pair) => !typed.dumbbellPairs.some((other) => same(other, pair)));
  if (typed.dumbbellPairs.length + added.length > MOST_PAIRS)
    return refused(
      'gym/too-many-pairs',
      'step',
      `More than ${MOST_PAIRS} pairs are not kept.`,
      'Take a wider step.',
    );
  return {
    ok: true,
    value: {
      ...typed,
      dumbbellPairs: heaviestFirst([...typed.dumbbellPairs, ...added]).reverse(),
    },
  };
}

/** What is counted, as the journal takes it. A plate whose number is missing is named. */
export function readCount(typed: WeightsDraft): Outcome<WeightsCounted> {
  const uncounted = typed.plates.find(({ count }) => count === undefined);
  if (uncounted) {
    return refused(
      'gym/plates-uncounted',
      `${uncounted.mass} ${uncounted.unit}`,
      `The ${uncounted.mass} ${uncounted.unit} plates have no number.`,
      'Enter how many there are, 0 for none.',
    );
  }
  const { dumbbellPairs } = typed;
  const place = typed.place.trim();
  return {
    ok: true,
    value: {
      ...(place !== '' && { place }),
      plates: typed.plates.flatMap(({ count, ...plate }) =>
        count === undefined || count === 0 ? [] : [{ ...plate, count }],
      ),
      ...(dumbbellPairs.length > 0 && { dumbbellPairs: [...dumbbellPairs] }),
    },
  };
}

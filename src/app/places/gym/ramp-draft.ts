import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { ramp } from '#core/gym/loads/ramp.ts';
import type { RampAnswer } from '#core/gym/loads/ramp-request.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { poundsToKilograms } from '#core/units/mass.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { Implement, Machine } from '../../views/gym-view.ts';

type WeightsCounted = DataOf<'weights-counted'>;
export interface Stamp {
  readonly mass: number;
  readonly unit: 'kg' | 'lb';
}

/** Something that plates go on: a bar with its own weight, or the pegs of a machine. */
export interface Loadable {
  readonly id: string;
  readonly name: string;
  readonly emptyKg: Kilograms;
  readonly sides: 1 | 2;
}

/** Ten decimals are as exact as plates are summed (GYM-01). */
export function stampKg({ mass, unit }: Stamp): Kilograms {
  return unit === 'kg' ? mass : roundTo(poundsToKilograms(mass), 10);
}

/** Bars and machines that take plates. A lever's own weight is no plate, so its load counts from nought. */
export function loadables(bars: readonly Implement[], machines: readonly Machine[]): readonly Loadable[] {
  return [
    ...bars.map(({ implement, name, empty, sides }) => ({
      id: implement,
      name,
      emptyKg: stampKg(empty),
      sides,
    })),
    ...machines.flatMap(({ machine, name, geometry }) => {
      if (geometry.of === 'sled')
        return [{ id: machine, name, emptyKg: geometry.sledKg, sides: geometry.sides }];
      return geometry.of === 'lever' ? [{ id: machine, name, emptyKg: 0, sides: geometry.sides }] : [];
    }),
  ];
}

export const rampDraft = v.strictObject({
  on: v.string(),
  topKg: v.optional(v.number()),
  reps: v.optional(v.number()),
  warmUps: v.optional(v.number()),
});
export type RampDraft = v.InferOutput<typeof rampDraft>;

export const emptyRamp: RampDraft = { on: '', reps: 8, warmUps: 4 };

/** A ramp whose plates are named as they are stamped (GYM-92). */
export interface StampedRamp {
  readonly answer: RampAnswer;
  readonly stampOf: (plateKg: Kilograms) => Stamp;
}

/** The warm-up sets up to a top set on this implement with the plates that were counted. */
export function rampOn(
  on: Loadable | undefined,
  plates: WeightsCounted['plates'],
  typed: Pick<RampDraft, 'topKg' | 'reps' | 'warmUps'>,
): Outcome<StampedRamp> {
  if (on === undefined)
    return refused(
      'gym/nothing-to-load',
      'on',
      'It is not said what is loaded.',
      'Choose a bar or a machine.',
    );
  const { topKg, reps, warmUps } = typed;
  if (topKg === undefined)
    return refused('gym/no-top-set', 'topKg', 'The top set has no load.', 'Enter what it should weigh.');
  if (reps === undefined)
    return refused('gym/no-reps', 'reps', 'The top set has no repetitions.', 'Enter how many.');
  const stamps = new Map<Kilograms, Stamp>(plates.map((plate) => [stampKg(plate), plate]));
  const read = ramp({
    topSet: { loadKg: topKg, reps },
    implement: { emptyKg: on.emptyKg, sides: on.sides },
    plates: plates.map((plate) => ({ kg: stampKg(plate), count: plate.count })),
    ...(warmUps !== undefined && { warmUps }),
  });
  if (!read.ok) return read;
  return {
    ok: true,
    value: { answer: read.value, stampOf: (kg) => stamps.get(kg) ?? { mass: kg, unit: 'kg' } },
  };
}

export interface PlateChange {
  readonly stays: readonly Kilograms[];
  /** Outside first, as they come off. */
  readonly off: readonly Kilograms[];
  /** Inside first, as they go on. */
  readonly on: readonly Kilograms[];
}

/** What the hands do from one load to the next, on one side: plates come off outside first (GYM-04). */
export function plateChange(before: readonly Kilograms[], after: readonly Kilograms[]): PlateChange {
  let same = 0;
  while (same < before.length && same < after.length && before[same] === after[same]) same += 1;
  return { stays: after.slice(0, same), off: before.slice(same).reverse(), on: after.slice(same) };
}

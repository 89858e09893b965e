import * as v from 'valibot';
import type { Exercise, ExerciseBook } from '#core/gym/book/exercise-book.ts';
import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import { refused, type Outcome } from '#core/problems/problem.ts';
import { roundTo } from '#core/units/rounding.ts';

const kg = v.optional(v.number());

/** A load being set: every figure may still be missing. */
export const loadDraft = v.strictObject({
  of: v.picklist(['kg', 'each', 'pegs', 'stack', 'body', 'band']),
  machine: v.optional(v.string()),
  kg,
  kgEach: kg,
  pinKg: kg,
  addOnKg: kg,
  beltKg: kg,
  assistKg: kg,
  pegs: v.array(v.strictObject({ peg: v.string(), kg })),
  band: v.string(),
});
export type LoadDraft = v.InferOutput<typeof loadDraft>;

const NOTHING = { pegs: [], band: '' } as const;

/** The one peg of a sled: its plates. */
const SLED_PEG = 'plates';

export function draftOfLoad(load: SetLoad): LoadDraft {
  const { of, ...figures } = load;
  return { pegs: [], band: '', ...figures, of };
}

/** How an exercise is loaded before its first set: by its machine, else by what carries it. */
export function firstLoad(exercise: Exercise, machineKey: string | undefined, book: ExerciseBook): LoadDraft {
  const machine = machineKey === undefined ? undefined : book.machine(machineKey);
  switch (machine?.geometry.of) {
    case 'lever':
      return onPegs(
        machine.machine,
        machine.geometry.pegs.map(({ name }) => name),
      );
    case 'unknown':
      return onPegs(machine.machine, machine.geometry.pegs);
    case 'sled':
      return onPegs(machine.machine, [SLED_PEG]);
    case 'stack':
      return { ...NOTHING, of: 'stack', machine: machine.machine, pegs: [] };
    case undefined:
      return { ...NOTHING, of: wayOf(exercise), pegs: [] };
  }
}

function onPegs(machine: string, pegs: readonly string[]): LoadDraft {
  return { ...NOTHING, of: 'pegs', machine, pegs: pegs.map((peg) => ({ peg })) };
}

function wayOf({ carrier }: Exercise): Exclude<LoadDraft['of'], 'pegs'> {
  switch (carrier) {
    case 'dumbbell pair':
      return 'each';
    case 'stack machine':
      return 'stack';
    case 'body weight':
      return 'body';
    case 'band':
      return 'band';
    default:
      return 'kg';
  }
}

const NO_LOAD = 'The set has no load.';

/** The load as the journal takes it (GYM-95); what is missing is named. */
export function readLoad(typed: LoadDraft): Outcome<SetLoad> {
  const { of, machine } = typed;
  switch (of) {
    case 'kg':
      return typed.kg === undefined ? missing('Load') : kept({ of, kg: typed.kg });
    case 'each':
      return typed.kgEach === undefined ? missing('Each') : kept({ of, kgEach: typed.kgEach });
    case 'stack':
      return typed.pinKg === undefined
        ? missing('Pin')
        : kept({
            of,
            pinKg: typed.pinKg,
            ...(machine !== undefined && { machine }),
            ...figure('addOnKg', typed.addOnKg),
          });
    case 'body':
      return kept({ of, ...figure('beltKg', typed.beltKg), ...figure('assistKg', typed.assistKg) });
    case 'band':
      return typed.band.trim() === ''
        ? refused(
            'gym/no-band',
            'band',
            'The band has no name.',
            'Enter which one: its colour or its thickness.',
          )
        : kept({ of, band: typed.band.trim(), ...figure('kg', typed.kg) });
    case 'pegs':
      return readPegs(typed);
  }
}

function readPegs({ machine, pegs }: LoadDraft): Outcome<SetLoad> {
  const loaded = pegs.map(({ peg, kg: mass = 0 }) => ({ peg, kg: roundTo(mass, 10) }));
  if (machine === undefined || loaded.length === 0)
    return refused(
      'gym/no-machine',
      'machine',
      'The machine is not described.',
      'Load it as plates in all instead.',
    );
  return kept({ of: 'pegs', machine, pegs: loaded });
}

function kept(load: SetLoad): Outcome<SetLoad> {
  return { ok: true, value: load };
}

function missing(label: string): Outcome<SetLoad> {
  return refused('gym/no-load', 'load', NO_LOAD, `Set "${label}".`);
}

/** Nought on a belt or a peg is nothing there. */
function figure<Key extends string>(key: Key, value: number | undefined): Partial<Record<Key, number>> {
  return value === undefined || value === 0 ? {} : ({ [key]: value } as Partial<Record<Key, number>>);
}

import type { Carrier, MachineGeometry } from '#core/journal/kinds/gym-equipment.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import type { Ledger } from '#core/journal/ledger.ts';
import { tableExercise, tableExercises, type TableExercise } from '#core/tables/exercises.ts';
import { capital } from '#core/units/capital.ts';

export type Caution = NonNullable<DataOf<'exercise-described'>['caution']>;

/** An exercise as it stands now: the athlete's own description over the bundled list. */
export interface Exercise {
  readonly exercise: string;
  readonly name: string;
  readonly prime: readonly string[];
  readonly assisting: readonly string[];
  readonly carrier: Carrier | undefined;
  readonly machine: string | undefined;
  readonly implement: string | undefined;
  readonly main: boolean;
  readonly oneSide: boolean;
  readonly bodyShare: number;
  readonly caution: Caution | undefined;
  /** Where its description stands; "nowhere": only its key is known, from a set. */
  readonly known: 'described' | 'list' | 'nowhere';
}

export interface Machine {
  readonly machine: string;
  readonly name: string;
  readonly geometry: MachineGeometry;
}

/** Everything the gym has names for, read once from the journal. */
export interface ExerciseBook {
  /** Never refuses: an exercise that nobody described keeps its key as its name and has no muscles. */
  exercise(key: string): Exercise;
  machine(key: string): Machine | undefined;
  implement(key: string): DataOf<'implement-described'> | undefined;
  /** Described exercises first, then the rest of the list; retired ones left out. */
  exercises(): readonly Exercise[];
  machines(): readonly Machine[];
  /** The weights last counted at a place; without a place, the newest count of all. */
  weights(place?: string): DataOf<'weights-counted'> | undefined;
}

/** Reads the book of a ledger (GYM-30): the newest description of each thing counts whole. */
export function exerciseBook(ledger: Ledger): ExerciseBook {
  const described = newest(ledger.of('exercise-described').map(({ data }) => [data.exercise, data]));
  const machines = newest(ledger.of('machine-described').map(({ data }) => [data.machine, data]));
  const implementsKnown = newest(ledger.of('implement-described').map(({ data }) => [data.implement, data]));
  const counts = ledger.of('weights-counted');
  const exercise = (key: string) => {
    const own = described.get(key);
    return own ? fromDescription(own) : fromList(key, tableExercise(key));
  };
  return {
    exercise,
    machine: (key) => machines.get(key),
    implement: (key) => implementsKnown.get(key),
    exercises: () => {
      const keys = new Set([...described.keys(), ...tableExercises.map((row) => row.exercise)]);
      return [...keys].filter((key) => described.get(key)?.retired !== true).map(exercise);
    },
    machines: () => [...machines.values()].filter(({ retired }) => retired !== true),
    weights: (place) => counts.findLast(({ data }) => place === undefined || data.place === place)?.data,
  };
}

function newest<Data>(pairs: readonly (readonly [string, Data])[]): ReadonlyMap<string, Data> {
  return new Map(pairs);
}

function fromDescription(own: DataOf<'exercise-described'>): Exercise {
  const base = fromList(own.exercise, tableExercise(own.basedOn ?? own.exercise));
  const part = (which: 'prime' | 'assisting') =>
    own.muscles?.filter((row) => row.part === which).map((row) => row.muscle) ?? base[which];
  return {
    exercise: own.exercise,
    name: own.name,
    prime: part('prime'),
    assisting: part('assisting'),
    carrier: own.carrier ?? base.carrier,
    machine: own.machine,
    implement: own.implement,
    main: own.main ?? base.main,
    oneSide: own.sides === undefined ? base.oneSide : own.sides === 'one at a time',
    bodyShare: own.bodyShare ?? base.bodyShare,
    caution: own.caution,
    known: 'described',
  };
}

function fromList(key: string, row: TableExercise | undefined): Exercise {
  return {
    exercise: key,
    name: row ? capital(row.name) : key,
    prime: row?.prime ?? [],
    assisting: row?.assisting ?? [],
    carrier: row?.carrier,
    machine: undefined,
    implement: undefined,
    main: row?.main ?? false,
    oneSide: row?.oneSide ?? false,
    bodyShare: row?.bodyShare ?? 0,
    caution: undefined,
    known: row ? 'list' : 'nowhere',
  };
}

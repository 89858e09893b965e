import { exerciseRows } from './data/exercises.ts';
import { muscles, type MuscleName } from './muscles.ts';
import { cellList, cellNumber, cellWord, readTextTable } from './text-table.ts';

const carriers = [
  'barbell',
  'dumbbell pair',
  'one dumbbell',
  'plate-loaded machine',
  'stack machine',
  'body weight',
] as const;

/** A row of the starting list; everything in it can be described otherwise by the athlete. */
export interface TableExercise {
  /** The name with hyphens, such as "back-squat". */
  readonly exercise: string;
  readonly name: string;
  /** What carries the load. */
  readonly carrier: (typeof carriers)[number];
  readonly prime: readonly MuscleName[];
  readonly assisting: readonly MuscleName[];
  /** Counts in the strength index unless the athlete says otherwise. */
  readonly main: boolean;
  readonly oneSide: boolean;
  /** Part of body weight that is lifted with the load (from memory); nought where the body is carried by its feet or a seat. */
  readonly bodyShare: number;
}

/**
 * Exercises by their generic names, with the muscles that move them: prime movers and those that assist. Functions of
 * muscles as in anatomy (source key: gray-2015, from memory); which of them an exercise trains most is common practice,
 * no source.
 */
export const tableExercises: readonly TableExercise[] = readTextTable(exerciseRows, 6).map(
  ([name = '', carrier, prime, assisting, notes, bodyShare]) => ({
    exercise: name.toLowerCase().replaceAll(' ', '-'),
    name,
    carrier: cellWord(carrier, carriers),
    prime: musclesOf(prime),
    assisting: musclesOf(assisting),
    main: cellList(notes, ';').includes('main'),
    oneSide: cellList(notes, ';').includes('one side'),
    bodyShare: cellNumber(bodyShare) ?? 0,
  }),
);

function musclesOf(cell: string | undefined): readonly MuscleName[] {
  const names = muscles.map(({ muscle }) => muscle);
  return cellList(cell, ';').map((name) => cellWord(name, names));
}

const byKey = new Map(tableExercises.map((row) => [row.exercise, row]));

/** A row of the list by its key, or undefined. */
export function tableExercise(key: string): TableExercise | undefined {
  return byKey.get(key);
}

import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import type { Exercise, ExerciseBook, Machine } from '../book/exercise-book.ts';
import { figuresOf } from '../machines/peg-loadings.ts';

/** A load in kilograms that compare within its series, and the series it belongs to. */
export interface ComparableLoad {
  /** Sets compare only with sets of the same variant: another machine or unknown pegs are another measure. */
  readonly variant: string;
  readonly loadKg: Kilograms;
}

type PegsLoad = Extract<SetLoad, { of: 'pegs' }>;

/**
 * The comparable load of a set (GYM-15): what lay on a bar; one dumbbell; the average pad force of a described lever,
 * whichever pegs were used; the share of a sled's weight along its rails; the pin with what lay on top; body weight
 * with belt or help. Plates on pegs of unknown geometry compare with the same division over the same pegs only.
 * Undefined for bands, and where body mass would be needed and is not known.
 */
export function comparableLoad(
  load: SetLoad,
  exercise: Exercise,
  book: ExerciseBook,
  massKg: Kilograms | undefined,
): ComparableLoad | undefined {
  switch (load.of) {
    case 'kg':
      return withBody({ variant: 'kg', loadKg: load.kg }, exercise.bodyShare, massKg);
    case 'each':
      return withBody({ variant: 'each', loadKg: load.kgEach }, exercise.bodyShare, massKg);
    case 'stack':
      return { variant: `stack ${load.machine ?? '-'}`, loadKg: load.pinKg + (load.addOnKg ?? 0) };
    case 'body': {
      // An exercise noted with body weight lifts it, also where nobody said which part.
      const share = exercise.bodyShare > 0 ? exercise.bodyShare : 1;
      const extraKg = (load.beltKg ?? 0) - (load.assistKg ?? 0);
      return withBody({ variant: 'body', loadKg: extraKg }, share, massKg);
    }
    case 'pegs':
      return onPegs(load, book.machine(load.machine));
    case 'band':
      return undefined;
  }
}

function withBody(
  { variant, loadKg }: ComparableLoad,
  share: number,
  massKg: Kilograms | undefined,
): ComparableLoad | undefined {
  if (share === 0) return positive({ variant, loadKg });
  return massKg === undefined ? undefined : positive({ variant, loadKg: loadKg + share * massKg });
}

function positive(load: ComparableLoad): ComparableLoad | undefined {
  return load.loadKg > 0 ? load : undefined;
}

function onPegs(load: PegsLoad, machine: Machine | undefined): ComparableLoad | undefined {
  const variant = `machine ${load.machine}`;
  const plates = load.pegs.reduce((sum, { kg }) => sum + kg, 0);
  if (machine?.geometry.of === 'lever') {
    const figures = figuresOf(machine.geometry, load.pegs);
    return figures && positive({ variant, loadKg: figures.padKg });
  }
  if (machine?.geometry.of === 'sled') {
    const { sledKg, railsDeg } = machine.geometry;
    return positive({ variant, loadKg: (sledKg + plates) * Math.sin((railsDeg * Math.PI) / 180) });
  }
  return positive({ variant: `${variant} (${divisionOf(load, plates)})`, loadKg: plates });
}

/** Which pegs carry which share, to the percent: "far 67, near 33". */
function divisionOf({ pegs }: PegsLoad, plates: Kilograms): string {
  const shares = new Map<string, number>();
  for (const { peg, kg } of pegs) shares.set(peg, (shares.get(peg) ?? 0) + kg / plates);
  return [...shares]
    .filter(([, share]) => share > 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([peg, share]) => `${peg} ${Math.round(100 * share)}`)
    .join(', ');
}

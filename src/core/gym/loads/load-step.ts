import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { toGrams } from '#core/units/mass.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { ExerciseBook } from '../book/exercise-book.ts';

/** Smallest change of a bar where no weights were counted: two plates of 1.25 kg. Common practice, no source. */
const BAR_STEP_KG = 2.5;
/** Smallest change of a dumbbell where none were counted. Common practice, no source. */
const DUMBBELL_STEP_KG = 2;
const STACK_STEP_KG = 5;

/**
 * The next figure up (`side` 1) or down (-1) that the place's weights allow for this load, in the load's own figure:
 * two of the lightest plate for a bar, the next pair for dumbbells, the next hole or half hole for a stack.
 */
export function nextFigure(
  load: SetLoad,
  figureKg: Kilograms,
  side: 1 | -1,
  book: ExerciseBook,
  place?: string,
): Kilograms {
  if (load.of === 'each') {
    const next = nextPair(figureKg, side, book, place);
    if (next !== undefined) return next;
  }
  return Math.max(load.of === 'body' ? -800 : 0, figureKg + side * stepOf(load, book, place));
}

/** The figure nearest to one that the place's weights allow: a pair that was counted, else a whole number of steps. */
export function nearestFigure(
  load: SetLoad,
  figureKg: Kilograms,
  book: ExerciseBook,
  place?: string,
): Kilograms {
  const pairs = load.of === 'each' ? pairsOf(book, place) : [];
  if (pairs.length > 0)
    return pairs.reduce((near, kg) => (Math.abs(kg - figureKg) < Math.abs(near - figureKg) ? kg : near));
  const step = stepOf(load, book, place);
  return roundTo(Math.round(figureKg / step) * step, 3);
}

/** The heaviest figure at or below one that the place's weights allow. */
export function figureAtMost(
  load: SetLoad,
  figureKg: Kilograms,
  book: ExerciseBook,
  place?: string,
): Kilograms {
  const near = nearestFigure(load, figureKg, book, place);
  return near <= figureKg + 1e-9 ? near : nextFigure(load, near, -1, book, place);
}

function stepOf(load: SetLoad, book: ExerciseBook, place: string | undefined): Kilograms {
  if (load.of === 'each') return DUMBBELL_STEP_KG;
  if (load.of === 'stack') {
    const geometry = load.machine === undefined ? undefined : book.machine(load.machine)?.geometry;
    return geometry?.of === 'stack' ? (geometry.halfPinKg ?? geometry.stepKg) : STACK_STEP_KG;
  }
  const plates = book.weights(place)?.plates.filter(({ count }) => count > 1) ?? [];
  const lightest = Math.min(...plates.map(({ mass, unit }) => toGrams(mass, unit) / 1000));
  return Number.isFinite(lightest) ? 2 * lightest : BAR_STEP_KG;
}

function nextPair(
  figureKg: Kilograms,
  side: 1 | -1,
  book: ExerciseBook,
  place: string | undefined,
): Kilograms | undefined {
  return pairsOf(book, place)
    .filter((kg) => side * (kg - figureKg) > 1e-9)
    .sort((a, b) => side * (a - b))[0];
}

function pairsOf(book: ExerciseBook, place: string | undefined): readonly Kilograms[] {
  return (book.weights(place)?.dumbbellPairs ?? []).map(({ mass, unit }) => toGrams(mass, unit) / 1000);
}

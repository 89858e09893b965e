import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { toGrams } from '#core/units/mass.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import type { ExerciseBook } from '../book/exercise-book.ts';
import { nearestFigure } from './load-step.ts';
import { ramp } from './ramp.ts';
import type { RampAnswer } from './ramp-request.ts';
import { figureOfLoad, withFigure } from './shift-load.ts';
import { idealShares, warmUpReps } from './warm-up-plan.ts';

export interface WarmUpInput {
  readonly top: { readonly load: SetLoad; readonly reps: number };
  readonly warmUps: number;
  readonly implement: DataOf<'implement-described'> | undefined;
  readonly book: ExerciseBook;
  readonly place?: string | undefined;
}

/** Warm-ups towards a top set: with plates where bar and plates are known, else by the steps the place allows. */
export interface WarmUps {
  readonly sets: readonly {
    readonly load: SetLoad;
    readonly reps: number;
    readonly perSide?: readonly Kilograms[];
  }[];
  /** The whole ramp with its plates, for the drawing; only where bar and plates are known. */
  readonly ramp: RampAnswer | undefined;
  readonly why: readonly string[];
}

/** The warm-ups of an exercise before its heaviest set (GYM-07, GYM-26). */
export function warmUpsOf(input: WarmUpInput): WarmUps {
  const { top, warmUps, implement, book, place } = input;
  const plates = book.weights(place)?.plates ?? [];
  const figure = figureOfLoad(top.load);
  if (top.load.of === 'kg' && implement && plates.length > 0 && figure !== undefined && figure > 0) {
    const { empty, sides } = implement;
    const answer = ramp({
      topSet: { loadKg: figure, reps: Math.max(1, top.reps) },
      implement: { emptyKg: toGrams(empty.mass, empty.unit) / 1000, sides },
      plates: plates.map(({ mass, unit, count }) => ({ kg: toGrams(mass, unit) / 1000, count })),
      warmUps: Math.min(10, warmUps),
    });
    if (answer.ok) return fromRamp(answer.value);
  }
  return bySteps(input, figure);
}

function fromRamp(answer: RampAnswer): WarmUps {
  return {
    sets: answer.sets
      .slice(0, -1)
      .map(({ loadKg, reps, perSide }) => ({ load: { of: 'kg', kg: loadKg } as const, reps, perSide })),
    ramp: answer,
    why: answer.why,
  };
}

function bySteps({ top, warmUps, book, place }: WarmUpInput, figure: Kilograms | undefined): WarmUps {
  if (figure === undefined || figure <= 0)
    return {
      sets: [],
      ramp: undefined,
      why: ['Warm up by feel: this load has no figure to take a share of.'],
    };
  const sets = idealShares(warmUps).map((share) => ({
    load: withFigure(top.load, nearestFigure(top.load, share * figure, book, place)),
    reps: warmUpReps(share, top.reps),
  }));
  return {
    sets,
    ramp: undefined,
    why: [
      'Warm-ups rise from a light start to just below the top set, with fewer repetitions as they rise (common practice).',
      'Describe the bar and count the plates to see which plates go on.',
    ],
  };
}

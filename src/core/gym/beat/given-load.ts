import type { SetLoad } from '#core/journal/kinds/gym-load.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import type { Exercise } from '../book/exercise-book.ts';
import { nearestFigure } from '../loads/load-step.ts';
import { figureOfLoad, withFigure } from '../loads/shift-load.ts';
import type { SessionWalk, WalkedStep } from '../session/session-walk.ts';
import { seriesOf } from '../strength/series-of-step.ts';
import type { StrengthLog } from '../strength/strength-log.ts';

export interface GivenAsk {
  readonly log: StrengthLog;
  readonly walk: SessionWalk;
  readonly step: WalkedStep;
  /** What a step that is still to come is asked to be. */
  readonly askedOf: (step: WalkedStep) => SetLoad | undefined;
}

/** The load that the template names for a set: outright, or as a share of the top set done or asked today (GYM-29). */
export function givenLoad({ log, walk, step, askedOf }: GivenAsk): SetLoad | undefined {
  const { loadKg, share } = step.target;
  if (loadKg !== undefined) return namedLoad(log, step, loadKg);
  if (share === undefined || step.set === 'top') return undefined;
  const top = walk.steps.find(
    ({ slot, side, set, exercise }) =>
      set === 'top' &&
      slot === step.slot &&
      side === step.side &&
      exercise.exercise === step.exercise.exercise,
  );
  const load = top && (top.done?.data.load ?? askedOf(top));
  const figure = load && figureOfLoad(load);
  // A share of belt or help alone says nothing where the body is lifted along.
  if (!load || figure === undefined || load.of === 'body') return undefined;
  return withFigure(load, nearestFigure(load, share * figure, log.book, walk.session.place));
}

function namedLoad(log: StrengthLog, step: WalkedStep, loadKg: Kilograms): SetLoad | undefined {
  const { exercise, side } = step;
  const machine = step.machine ?? exercise.machine;
  const latest = seriesOf(log, { exercise: exercise.exercise, side, machine })?.sets.at(-1)?.fact.data.load;
  return latest ? withFigure(latest, loadKg) : firstLoad(exercise, loadKg, machine);
}

/** Never done before: as what carries the exercise is loaded; pegs are chosen by hand first. */
function firstLoad(
  { carrier }: Exercise,
  loadKg: Kilograms,
  machine: string | undefined,
): SetLoad | undefined {
  switch (carrier) {
    case 'dumbbell pair':
      return { of: 'each', kgEach: loadKg };
    case 'stack machine':
      return { of: 'stack', pinKg: loadKg, ...(machine !== undefined && { machine }) };
    case 'body weight':
      return { of: 'body', beltKg: loadKg };
    case 'plate-loaded machine':
    case 'band':
      return undefined;
    default:
      return { of: 'kg', kg: loadKg };
  }
}

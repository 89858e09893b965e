import { answered, refused, type Outcome } from '../problems/problem.ts';
import { keeps, onSafeStep, type Limit, type LimitReason } from './limit.ts';

/** The interval a planned quantity must stay in. Either side may be open. */
export interface LimitRange {
  readonly floor: Limit;
  readonly ceiling: Limit;
}

export interface Settled {
  readonly wanted: number;
  readonly value: number;
  /** The reason that moved it, where one did. */
  readonly movedBy: LimitReason | undefined;
}

/**
 * Brings a wanted value inside its range on a grid of `step`, rounding to the safe side (LIM-03). A floor above its
 * ceiling is a refusal that names both (LIM-04).
 */
export function settle(wanted: number, range: LimitRange, step: number): Outcome<Settled> {
  const low = onSafeStep(range.floor, step);
  const high = onSafeStep(range.ceiling, step);
  if (low > high) return crossing(range);
  if (!keeps(range.floor, wanted)) return answered({ wanted, value: low, movedBy: range.floor.tightest });
  if (!keeps(range.ceiling, wanted))
    return answered({ wanted, value: high, movedBy: range.ceiling.tightest });
  const nearest = Math.min(high, Math.max(low, Number((Math.round(wanted / step) * step).toPrecision(12))));
  return answered({ wanted, value: nearest === 0 ? 0 : nearest, movedBy: undefined });
}

function crossing({ floor, ceiling }: LimitRange): Outcome<Settled> {
  const say = (limit: Limit) => limit.tightest?.words ?? `${limit.quantity}: ${limit.present} ${limit.unit}.`;
  return refused(
    'limits/floor-above-ceiling',
    floor.quantity,
    `No ${floor.quantity.toLowerCase()} keeps both limits: at least ${floor.present} and at most ${ceiling.present} ${floor.unit}. ${say(floor)} ${say(ceiling)}`,
    'Give one of the two more room: a later date, a milder target, less cardio, or an own limit taken back.',
  );
}

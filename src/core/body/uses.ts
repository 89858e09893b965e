import type { EstimateRequest } from './estimate-request.ts';
import type { MethodInUse } from './methods-in-use.ts';
import { METHOD_STATES, STATE } from './state-layout.ts';

/** What a log makes use of beside weight and food; the states of the rest stay out of the arithmetic. */
export interface Uses {
  readonly methods: readonly MethodInUse[];
  readonly cycle: boolean;
  readonly creatine: boolean;
  readonly otherScale: boolean;
}

export function usesOf({ athlete, days }: EstimateRequest, methods: readonly MethodInUse[]): Uses {
  return {
    methods,
    cycle: days.some(({ cycleDay }) => cycleDay !== undefined),
    creatine: athlete.creatineFrom !== undefined,
    otherScale: days.some(({ travelling }) => travelling === true),
  };
}

/** Places of the state vector that a log leaves untouched. */
export function unusedPlaces(uses: Uses): Set<number> {
  const unused = new Set<number>();
  if (!uses.cycle) unused.add(STATE.cycle);
  if (!uses.creatine) unused.add(STATE.creatine);
  if (!uses.otherScale) unused.add(STATE.scaleOffset);
  for (let place = STATE.firstMethod; place < STATE.firstMethod + METHOD_STATES; place++)
    if (!uses.methods.some((method) => method.place === place)) unused.add(place);
  return unused;
}

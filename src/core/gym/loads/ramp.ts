import { readShape } from '#core/problems/from-issues.ts';
import { answered, refused, type Outcome } from '#core/problems/problem.ts';
import { chooseLoads, chooseNestedLoads, type WantedSums } from './choose-loads.ts';
import { exactMass, kilogramsOf, type ExactMass } from './exact-mass.ts';
import { leastConceivableMoves, searchFewerMoves, type Handling } from './fewest-moves.ts';
import { plateSums, type PlateKind, type PlateSums } from './plate-sums.ts';
import { rampRequest, type RampAnswer, type RampRequest } from './ramp-request.ts';
import { rampWhy } from './ramp-why.ts';
import { idealShares, warmUpReps } from './warm-up-plan.ts';

/** Steps of the search for fewer moves; past them loads are chosen that need no search. */
const MAX_STEPS = 60_000;

/**
 * Warm-up sets and their plates up to a top set (GYM-01 to GYM-08). The top set is the loadable weight nearest to the
 * wanted one, the lower on a tie; loads never fall; for the loads answered no handling moves fewer plates.
 * Refuses a request of another shape, and a pile of plates too varied to sum.
 */
export function ramp(input: unknown): Outcome<RampAnswer> {
  const request = readShape(rampRequest, input, 'gym');
  if (!request.ok) return request;
  const { topSet, implement, plates } = request.value;
  const perSide = Math.max(0, exactMass(topSet.loadKg) - exactMass(implement.emptyKg)) / implement.sides;
  const kinds = kindsOnOneSide(plates, implement.sides, perSide);
  const pile = plateSums(kinds, heaviestThatMatters(perSide, kinds));
  if (!pile) {
    return refused(
      'gym/too-many-plates',
      'plates',
      'These plates make more different sums than can be laid out.',
      'List only the plates that are used for this exercise.',
    );
  }
  const wanted = wantedSums(request.value, pile.nearest(perSide));
  return answered(answerOf(request.value, kinds, leastHandling(wanted, kinds, pile)));
}

/** Plates of one mass together, heaviest first; on two sides they count in pairs, and none heavier than can matter. */
function kindsOnOneSide(
  plates: RampRequest['plates'],
  sides: 1 | 2,
  perSide: ExactMass,
): readonly PlateKind[] {
  const counts = new Map<ExactMass, number>();
  for (const { kg, count } of plates) counts.set(exactMass(kg), (counts.get(exactMass(kg)) ?? 0) + count);
  return [...counts]
    .map(([mass, count]) => ({ mass, count: Math.floor(count / sides) }))
    .filter(({ mass, count }) => count > 0 && mass <= 2 * perSide)
    .sort((a, b) => b.mass - a.mass);
}

/** Empty is as near as twice the wanted sum, and one plate fewer than the least sum above lies below it. */
function heaviestThatMatters(perSide: ExactMass, kinds: readonly PlateKind[]): ExactMass {
  return Math.min(2 * perSide, perSide + (kinds[0]?.mass ?? 0));
}

function wantedSums({ topSet, implement, warmUps }: RampRequest, top: ExactMass): WantedSums {
  const empty = exactMass(implement.emptyKg);
  const load = empty + top * implement.sides;
  const ideals = idealShares(warmUps).map((share) => Math.max(0, (share * load - empty) / implement.sides));
  return { warmUps: ideals, top, scale: Math.max(load, exactMass(topSet.loadKg)) / implement.sides };
}

function leastHandling(wanted: WantedSums, kinds: readonly PlateKind[], pile: PlateSums): Handling {
  const chosen = chooseLoads(wanted, kinds, pile);
  const sums = chosen.stacks.map((stack) => sumOf(stack, kinds));
  if (chosen.moves === leastConceivableMoves(sums, pile)) return chosen;
  const { better, proven } = searchFewerMoves(sums, kinds, pile, chosen.moves, MAX_STEPS);
  return proven ? (better ?? chosen) : chooseNestedLoads(wanted, kinds, pile);
}

function sumOf(stack: readonly number[], kinds: readonly PlateKind[]): ExactMass {
  return stack.reduce((sum, kind) => sum + (kinds[kind]?.mass ?? 0), 0);
}

function answerOf(
  request: RampRequest,
  kinds: readonly PlateKind[],
  { stacks, moves }: Handling,
): RampAnswer {
  const { topSet, implement, plates } = request;
  const empty = exactMass(implement.emptyKg);
  // A plate is named as the request named it, to the last digit.
  const named = new Map(plates.map(({ kg }) => [exactMass(kg), kg]));
  const loads = stacks.map((stack) => empty + implement.sides * sumOf(stack, kinds));
  const top = loads.at(-1) ?? empty;
  const sets = loads.map((load, i) => ({
    loadKg: kilogramsOf(load),
    reps: i === loads.length - 1 ? topSet.reps : warmUpReps(top === 0 ? 1 : load / top, topSet.reps),
    perSide: (stacks[i] ?? []).map((kind) => named.get(kinds[kind]?.mass ?? 0) ?? 0),
  }));
  const figures = {
    sets,
    errorKg: kilogramsOf(top - exactMass(topSet.loadKg)),
    plateMoves: moves * implement.sides,
  };
  return { ...figures, why: rampWhy(request, figures) };
}

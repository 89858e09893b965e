import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import type { RampAnswer, RampRequest } from './ramp-request.ts';
import { idealShares } from './warm-up-plan.ts';

/** The sentences of a ramp: how near the top set comes, what is left over, where warm-ups aim, why no fewer moves. */
export function rampWhy(
  request: RampRequest,
  { sets, errorKg, plateMoves }: Omit<RampAnswer, 'why'>,
): string[] {
  const { implement, plates, warmUps } = request;
  const why = [nearness(request, errorKg)];
  const single = implement.sides === 2 ? oddMasses(plates) : [];
  if (single.length > 0)
    why.push(`Two sides need pairs: of ${single.map(kg).join(', ')} one plate is left over.`);
  if (warmUps > 0) {
    const shares = idealShares(warmUps).map((share) => `${roundTo(100 * share, 0)} %`);
    why.push(`Warm-ups aim at ${shares.join(', ')} of the top set, at loads that go on easily.`);
  }
  const staying = implement.sides * (sets.at(-1)?.perSide.length ?? 0);
  why.push(
    plateMoves === staying
      ? `${plateMoves} plates are moved, those of the top set and no other: fewer is not possible.`
      : `${plateMoves} plates are moved, ${staying} of them to stay for the top set; no order moves fewer for these loads.`,
  );
  return why;
}

function nearness({ topSet, implement }: RampRequest, errorKg: Kilograms): string {
  if (errorKg === 0) return `${kg(topSet.loadKg)} can be loaded exactly.`;
  if (implement.emptyKg > topSet.loadKg) {
    return `Empty, the implement weighs ${kg(implement.emptyKg)}, more than the ${kg(topSet.loadKg)} wanted: every set is with it empty.`;
  }
  const side = errorKg < 0 ? 'below' : 'above';
  return `${kg(topSet.loadKg)} cannot be loaded with these plates; ${kg(topSet.loadKg + errorKg)} is the nearest, ${kg(Math.abs(errorKg))} ${side}.`;
}

function oddMasses(plates: RampRequest['plates']): readonly number[] {
  const counts = new Map<number, number>();
  for (const { kg: mass, count } of plates) counts.set(mass, (counts.get(mass) ?? 0) + count);
  return [...counts].filter(([, count]) => count % 2 === 1).map(([mass]) => mass);
}

function kg(mass: Kilograms): string {
  return `${roundTo(mass, 3)} kg`;
}

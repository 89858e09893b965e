import { cautionsFor, type Caution } from '#core/limits/caution.ts';
import type { Kilograms } from '#core/units/quantities.ts';

export interface EnteredTargets {
  readonly proteinG: number;
  readonly carbohydrateG: number;
  readonly fatG: number;
}

/** Energy of protein, carbohydrate and fat by the general factors. */
export function targetEnergyKcal({ proteinG, carbohydrateG, fatG }: EnteredTargets): number {
  return 4 * proteinG + 4 * carbohydrateG + 9 * fatG;
}

/** Every limit that targets entered by hand run against (LIM-32); none while the body is not known yet. */
export function targetCautions(
  targets: EnteredTargets,
  sex: 'female' | 'male',
  body: { readonly massKg: Kilograms; readonly fatKg: Kilograms } | undefined,
): readonly Caution[] {
  if (!body) return [];
  return cautionsFor({
    sex,
    ...body,
    energyKcal: targetEnergyKcal(targets),
    proteinG: targets.proteinG,
    fatG: targets.fatG,
  });
}

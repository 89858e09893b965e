import { caffeineLimits, POTASSIUM_PER_DOSE_MAX_MG } from '#core/tables/caffeine-limits.ts';
import type { SourceKey } from '#core/tables/sources.ts';
import { readLabel, type Product } from './read-label.ts';

/** Why a dose is never planned. */
export interface DoseRefusal {
  readonly words: string;
  readonly source: SourceKey;
}

/**
 * What is refused whatever the day looks like (HLT-34): medicines, hormones, diuretics, stimulants without an acceptable
 * dose, more caffeine than a dose may hold, caffeine of an unknown amount, potassium by the spoon.
 */
export function refuseDose(product: Product, units: number): DoseRefusal | undefined {
  for (const part of readLabel(product)) {
    if (part.found.kind === 'substance' && part.found.substance.stand !== 'planned') {
      return refusedSubstance(part.found.substance, product.name);
    }
    if (part.key === 'caffeine') {
      const caffeine = caffeineRefusal(
        part.perUnit === undefined ? undefined : part.perUnit * units,
        product.name,
      );
      if (caffeine) return caffeine;
    }
    if (part.key === 'potassium' && (part.perUnit ?? 0) * units >= POTASSIUM_PER_DOSE_MAX_MG) {
      return {
        words: `${product.name}: ${Math.round((part.perUnit ?? 0) * units)} mg of potassium in one dose is not planned; a large dose of the salt can stop the heart.`,
        source: 'sturmi-1995',
      };
    }
  }
  return undefined;
}

function refusedSubstance(
  substance: {
    name: string;
    stand: string;
    inSport?: string;
    cautions: readonly { words: string; source: SourceKey }[];
  },
  product: string,
): DoseRefusal {
  const caution = substance.cautions[0];
  const source = caution?.source ?? 'drug-labels';
  if (substance.stand === 'medicine') {
    return {
      words: `${product} holds ${substance.name}, a medicine: its times are the prescriber's. Declare it as a medicine, and the supplements keep clear of it.`,
      source,
    };
  }
  const sport = substance.inSport === undefined ? '' : ` In sport it is ${substance.inSport}.`;
  return {
    words:
      `${product} holds ${substance.name}: no dose of it is planned. ${caution?.words ?? ''}${sport}`.trim(),
    source,
  };
}

function caffeineRefusal(mg: number | undefined, product: string): DoseRefusal | undefined {
  if (mg === undefined) {
    return {
      words: `${product} does not say how much caffeine it holds, so no dose can be kept under ${caffeineLimits.perDoseMg} mg.`,
      source: caffeineLimits.doseSource,
    };
  }
  if (mg <= caffeineLimits.perDoseMg) return undefined;
  return {
    words: `${product}: ${Math.round(mg)} mg of caffeine in one dose is above ${caffeineLimits.perDoseMg} mg.`,
    source: caffeineLimits.doseSource,
  };
}

/** Caffeine of a dose, mg; none where the product holds none. */
export function caffeineMgOf(product: Product, units: number): number {
  return readLabel(product)
    .filter(({ key }) => key === 'caffeine')
    .reduce((sum, part) => sum + (part.perUnit ?? 0) * units, 0);
}

import { CALCIUM_PER_DOSE_MAX_MG } from '#core/tables/separation-rules.ts';
import { citation, type SourceKey } from '#core/tables/sources.ts';
import { takenUpWithFat } from '#core/tables/substances.ts';
import { keysIn, readLabel, type Product } from './read-label.ts';
import type { ScheduleAnswer, ScheduleRequest } from './schedule-request.ts';
import { rulesWithin } from './separation.ts';

/** What a dose's size, its tie or its own contents ask a word about. */
export function dosingCautions(
  request: ScheduleRequest,
  products: ReadonlyMap<string, Product>,
): ScheduleAnswer['cautions'] {
  const cautions: { words: string; source: SourceKey }[] = [];
  for (const dose of request.doses) {
    const product = products.get(dose.supplement);
    if (!product) continue;
    const parts = readLabel(product);
    const calcium = parts.find(({ key }) => key === 'calcium')?.perUnit;
    if (calcium !== undefined && calcium * dose.units > CALCIUM_PER_DOSE_MAX_MG) {
      cautions.push({
        words: `${product.name}: of ${Math.round(calcium * dose.units)} mg of calcium in one dose about ${CALCIUM_PER_DOSE_MAX_MG} mg are taken up well; two smaller doses do more.`,
        source: 'calcium-dose',
      });
    }
    const fat = parts.find(({ key }) => key !== undefined && takenUpWithFat.includes(key));
    if (fat && !dose.tie.to.includes('meal')) {
      cautions.push({
        words: `${product.name}: ${fat.printed} is taken up with fat; tie it to a meal that holds some.`,
        source: 'nih-ods',
      });
    }
    for (const rule of rulesWithin(keysIn(product))) {
      cautions.push({
        words: `${product.name} holds both ${rule.a} and ${rule.b} (${rule.words}): taken apart they would do more.`,
        source: rule.source,
      });
    }
  }
  for (const { drink, caffeineMg } of request.drinks ?? []) {
    if (caffeineMg === undefined && /coffee|espresso|tea|matcha|energy|cola/i.test(drink)) {
      cautions.push({
        words: `How much caffeine the ${drink} holds is not known; it is not in the sum.`,
        source: 'efsa-caffeine-2015',
      });
    }
  }
  const said = new Set<string>();
  return cautions
    .filter(({ words }) => !said.has(words) && said.add(words))
    .map(({ words, source }) => ({ words, source: citation(source) }));
}

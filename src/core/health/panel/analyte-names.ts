import { labAnalytes, type LabAnalyte } from '#core/tables/lab-analytes.ts';
import { labNames } from '#core/tables/lab-names.ts';
import { plainName } from '../plain-name.ts';

/** Analytes one of whose names holds what was typed; those with a name that is just that first, then those that begin so. */
export function analyteNames(typed: string, most: number): readonly LabAnalyte[] {
  const wanted = plainName(typed);
  if (wanted === '') return [];
  const ranked = labAnalytes.flatMap((analyte) => {
    const names = [analyte.key, analyte.name, ...(labNames[analyte.key] ?? [])].map(plainName);
    const ranks = names.map((name) =>
      name === wanted ? 0 : name.startsWith(wanted) ? 1 : name.includes(wanted) ? 2 : 3,
    );
    const rank = Math.min(...ranks);
    return rank < 3 ? [{ analyte, rank }] : [];
  });
  return ranked
    .sort((a, b) => a.rank - b.rank)
    .slice(0, most)
    .map(({ analyte }) => analyte);
}

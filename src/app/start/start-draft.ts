import * as v from 'valibot';
import type { DataOf } from '#core/journal/kinds/registry.ts';
import { adultsOnly } from '#core/limits/adults-only.ts';
import type { Problem } from '#core/problems/problem.ts';
import { poundsToKilograms } from '#core/units/mass.ts';
import type { Kilograms } from '#core/units/quantities.ts';
import { roundTo } from '#core/units/rounding.ts';
import { startCautions } from '#core/words/cautions.ts';

type Athlete = DataOf<'athlete-described'>;

/** What is typed at the first start, kept while it is typed. */
export const startDraft = v.strictObject({
  name: v.string(),
  birthYear: v.optional(v.number()),
  sex: v.optional(v.picklist(['female', 'male'])),
  height: v.optional(v.number()),
  mass: v.optional(v.number()),
  system: v.picklist(['metric', 'imperial']),
  read: v.boolean(),
});
export type StartDraft = v.InferOutput<typeof startDraft>;

export const emptyStart: StartDraft = { name: '', system: 'metric', read: false };

export const unitsOf: Record<StartDraft['system'], Athlete['units']> = {
  metric: { mass: 'kg', kitchen: 'g', length: 'cm', energy: 'kcal' },
  imperial: { mass: 'lb', kitchen: 'oz', length: 'in', energy: 'kcal' },
};

const CENTIMETRES_PER_INCH = 2.54;

export type StartReading =
  | { readonly ok: true; readonly athlete: Athlete; readonly massKg: Kilograms }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads the form; every fault at once, each under the field's own words. `year` is the current year. */
export function readStart(typed: StartDraft, year: number): StartReading {
  const { birthYear, sex, height, mass, system, name } = typed;
  const heightCm =
    height === undefined
      ? undefined
      : roundTo(system === 'metric' ? height : height * CENTIMETRES_PER_INCH, 1);
  const massKg =
    mass === undefined ? undefined : roundTo(system === 'metric' ? mass : poundsToKilograms(mass), 2);
  const problems = [...personProblems(typed, year), ...sizeProblems(heightCm, massKg, system)];
  if (!typed.read)
    problems.push(
      fault('read', 'The cautions are not confirmed yet.', 'Read them and tick the line below them.'),
    );
  if (
    problems.length > 0 ||
    birthYear === undefined ||
    sex === undefined ||
    heightCm === undefined ||
    massKg === undefined
  ) {
    return { ok: false, problems };
  }
  const athlete: Athlete = {
    ...(name.trim() !== '' && { name: name.trim() }),
    birthYear,
    sex,
    heightCm,
    units: unitsOf[system],
    cautionsRead: startCautions.map((caution) => caution.key),
  };
  return { ok: true, athlete, massKg };
}

function personProblems({ birthYear, sex }: StartDraft, year: number): Problem[] {
  const problems: Problem[] = [];
  if (sex === undefined)
    problems.push(fault('sex', 'Sex is not chosen.', 'Choose the one the equations should use.'));
  if (birthYear === undefined || birthYear < 1900 || birthYear > year) {
    problems.push(
      fault('birthYear', 'The year of birth is missing.', `Enter four digits, such as ${year - 30}.`),
    );
    return problems;
  }
  const adult = adultsOnly(year - birthYear, 'birthYear');
  if (!adult.ok) problems.push(adult.problem);
  return problems;
}

function sizeProblems(
  heightCm: number | undefined,
  massKg: number | undefined,
  system: StartDraft['system'],
): Problem[] {
  const problems: Problem[] = [];
  const [tall, heavy] =
    system === 'metric' ? ['120 to 230 cm', '25 to 350 kg'] : ['48 to 90 in', '56 to 771 lb'];
  if (heightCm === undefined || heightCm < 120 || heightCm > 230) {
    problems.push(fault('height', 'The height is missing or out of range.', `Enter ${tall}.`));
  }
  if (massKg === undefined || massKg < 25 || massKg > 350) {
    problems.push(fault('mass', 'The weight is missing or out of range.', `Enter ${heavy}.`));
  }
  return problems;
}

function fault(path: string, message: string, remedy: string): Problem {
  return { code: `start/${path}`, path, message, remedy };
}

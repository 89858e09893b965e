import { withinStudied, type Studied } from '#core/science/studied-range.ts';
import type { Kilograms } from '#core/units/quantities.ts';

/** A published equation of the one-repetition maximum from a load and the repetitions done with it to failure. */
export interface OneRepEquation {
  readonly name: string;
  /** Key of the source list. */
  readonly source: string;
  readonly oneRepKg: (loadKg: Kilograms, reps: number) => Kilograms;
}

/**
 * Repetitions up to which such equations may be trusted: the error grows with repetitions, and more than ten are not
 * recommended (source key: reynolds-2006).
 */
export const STUDIED_REPS = { low: 1, high: 10 } as const;

/** Total error of such estimates on bench press and curl, percent of the maximum. Source key: hutchins-2010. */
export const PUBLISHED_ERROR_PERCENT = { low: 10.6, high: 13.5 } as const;

/** The equations as printed; at one repetition the load itself is the maximum, which not all of them give. */
export const oneRepEquations: readonly OneRepEquation[] = [
  { name: 'Epley', source: 'epley-1985', oneRepKg: (w, r) => w * (1 + r / 30) },
  { name: 'Brzycki', source: 'brzycki-1993', oneRepKg: (w, r) => (36 * w) / (37 - r) },
  { name: 'Lombardi', source: 'lombardi-1989', oneRepKg: (w, r) => w * r ** 0.1 },
  {
    name: 'Wathan',
    source: 'wathan-1994',
    oneRepKg: (w, r) => (100 * w) / (48.8 + 53.8 * Math.exp(-0.075 * r)),
  },
  {
    name: 'Mayhew',
    source: 'mayhew-1992',
    oneRepKg: (w, r) => (100 * w) / (52.2 + 41.9 * Math.exp(-0.055 * r)),
  },
  { name: "O'Conner", source: 'oconner-1989', oneRepKg: (w, r) => w * (1 + 0.025 * r) },
  { name: 'Lander', source: 'lander-1985', oneRepKg: (w, r) => (100 * w) / (101.3 - 2.67123 * r) },
];

export interface OneRepEstimate {
  /** Each equation's answer, in the order of the list. */
  readonly answers: readonly {
    readonly name: string;
    readonly source: string;
    readonly oneRepKg: Kilograms;
  }[];
  readonly lowKg: Kilograms;
  readonly medianKg: Kilograms;
  readonly highKg: Kilograms;
}

/**
 * The one-repetition maximum by every equation, and how far they lie apart. `reps` are those to failure: repetitions
 * done plus repetitions in reserve. Outside 1 to 10 the answer is that it is outside, never a number.
 */
export function estimateOneRep(loadKg: Kilograms, repsToFailure: number): Studied<OneRepEstimate> {
  const check = { quantity: 'repsToFailure', found: repsToFailure, ...STUDIED_REPS };
  return withinStudied([check], () => {
    const answers = oneRepEquations.map(({ name, source, oneRepKg }) => ({
      name,
      source,
      oneRepKg: repsToFailure === 1 ? loadKg : oneRepKg(loadKg, repsToFailure),
    }));
    const sorted = answers.map((answer) => answer.oneRepKg).sort((a, b) => a - b);
    const at = (place: number) => sorted[place] ?? loadKg;
    return { answers, lowKg: at(0), medianKg: at(3), highKg: at(6) };
  });
}

/** Regressions from a five-repetition maximum, with their standard error of estimate. Source key: reynolds-2006. */
export const fiveRepRegressions = {
  'leg press': { slope: 1.097, interceptKg: 14.2546, errorKg: 16.16 },
  'chest press': { slope: 1.1307, interceptKg: 0.6999, errorKg: 2.98 },
} as const;

/** One-repetition maximum of a leg or chest press from the load of a five-repetition maximum. */
export function oneRepFromFive(
  press: keyof typeof fiveRepRegressions,
  fiveRepKg: Kilograms,
): { readonly oneRepKg: Kilograms; readonly errorKg: Kilograms } {
  const { slope, interceptKg, errorKg } = fiveRepRegressions[press];
  return { oneRepKg: slope * fiveRepKg + interceptKg, errorKg };
}

import type { Kilograms, Percent } from '#core/units/quantities.ts';
import type { Run } from './run-paths.ts';

/** What the show asks for; every bound given must be met on the date. */
export interface Target {
  readonly bodyFatPercent?: { readonly max: Percent } | undefined;
  readonly massKg?:
    | { readonly max?: Kilograms | undefined; readonly min?: Kilograms | undefined }
    | undefined;
}

/** Share of paths that meet every bound at a look, and the shares that miss to either side. */
export interface Meeting {
  readonly probability: number;
  /** Too fat or too heavy: more must go. */
  readonly tooMuch: number;
  /** Lighter than the least mass. */
  readonly tooLittle: number;
}

export function meetingAt(run: Run, look: number, target: Target): Meeting {
  const { paths } = run;
  const fatMax = (target.bodyFatPercent?.max ?? Number.POSITIVE_INFINITY) / 100;
  const massMax = target.massKg?.max ?? Number.POSITIVE_INFINITY;
  const massMin = target.massKg?.min ?? 0;
  let met = 0;
  let over = 0;
  let under = 0;
  for (let path = 0; path < paths; path++) {
    const at = look * paths + path;
    const mass = run.massKg[at] ?? 0;
    const fat = run.fatKg[at] ?? 0;
    const isOver = mass > massMax || fat > fatMax * mass;
    const isUnder = mass < massMin;
    if (isOver) over += 1;
    if (isUnder) under += 1;
    if (!isOver && !isUnder) met += 1;
  }
  return { probability: met / paths, tooMuch: over / paths, tooLittle: under / paths };
}

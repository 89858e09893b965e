import { withinStudied, type Studied } from '#core/science/studied-range.ts';

/** All in mg/dL. */
export interface Lipids {
  readonly cholesterol: number;
  readonly hdl: number;
  readonly triglycerides: number;
}

/** Non-HDL cholesterol, mg/dL: total minus HDL. */
export function nonHdlCholesterol({ cholesterol, hdl }: Omit<Lipids, 'triglycerides'>): number {
  return cholesterol - hdl;
}

/** LDL = TC - HDL - TG/5, mg/dL, only below 400 mg/dL of triglycerides. Source: friedewald-1972. */
export function ldlFriedewald({ cholesterol, hdl, triglycerides }: Lipids): Studied<number> {
  return withinStudied(
    [{ quantity: 'triglycerides mg/dL', found: triglycerides, low: 0, high: 399.999 }],
    () => cholesterol - hdl - triglycerides / 5,
  );
}

/**
 * LDL = TC/0.948 - HDL/0.971 - (TG/8.56 + TG * nonHDL/2140 - TG^2/16100) - 9.44, mg/dL, up to 800 mg/dL of
 * triglycerides. Source: sampson-2020.
 */
export function ldlSampson({ cholesterol, hdl, triglycerides }: Lipids): Studied<number> {
  const nonHdl = cholesterol - hdl;
  return withinStudied(
    [{ quantity: 'triglycerides mg/dL', found: triglycerides, low: 0, high: 800 }],
    () =>
      cholesterol / 0.948 -
      hdl / 0.971 -
      (triglycerides / 8.56 + (triglycerides * nonHdl) / 2140 - triglycerides ** 2 / 16_100) -
      9.44,
  );
}

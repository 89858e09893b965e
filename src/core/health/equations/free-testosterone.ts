/**
 * Free testosterone by mass action. Source: vermeulen-1999. Albumin binds with 3.6e4 L/mol, SHBG with 1e9 L/mol.
 *
 * With N = 1 + Ka * albumin, the free concentration F solves N Ks F^2 + (N + Ks (SHBG - T)) F - T = 0 (all mol/L):
 * what is bound to SHBG is SHBG Ks F / (1 + Ks F), what is bound to albumin Ka albumin F.
 */
const ALBUMIN_PER_MOL = 3.6e4;
const SHBG_PER_MOL = 1e9;
const ALBUMIN_G_PER_MOL = 69_000;

/** Albumin the method's authors take where none was measured, g/dL. */
export const USUAL_ALBUMIN_G_PER_DL = 4.3;

/**
 * @param testosteroneNmolPerL total testosterone
 * @returns free testosterone in pmol/L
 */
export function freeTestosteronePmolPerL(
  testosteroneNmolPerL: number,
  shbgNmolPerL: number,
  albuminGPerDl: number,
): number {
  const total = testosteroneNmolPerL * 1e-9;
  const shbg = shbgNmolPerL * 1e-9;
  const n = 1 + ALBUMIN_PER_MOL * ((albuminGPerDl * 10) / ALBUMIN_G_PER_MOL);
  const b = n + SHBG_PER_MOL * (shbg - total);
  const a = n * SHBG_PER_MOL;
  // The root in the form that loses no digits when b is large and positive.
  const root = Math.sqrt(b * b + 4 * a * total);
  const free = b >= 0 ? (2 * total) / (b + root) : (root - b) / (2 * a);
  return free * 1e12;
}

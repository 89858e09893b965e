/**
 * Parameters of the dynamic adult weight model (Hall et al. 2011, web appendix), in the paper's own units.
 * Population: adults from 18 years, mostly sedentary, lean to obese; no term for training or protein.
 * Source key: hall-2011. Densities, glycogen and hydration read in the appendix; rates and sodium terms read in an
 * open implementation that quotes the authors, and confirmed by the weights published with it.
 */
export const ADULT_ENERGY = {
  /** Energy density of a change of body fat, rho_F, kJ/kg. */
  fatDensityKjPerKg: 39_500,
  /** Energy density of a change of lean tissue, rho_L, kJ/kg. */
  leanDensityKjPerKg: 7_600,
  /** Energy density of glycogen, rho_G, kJ/kg. */
  glycogenDensityKjPerKg: 17_600,
  /** Water bound to glycogen, h_G, g/g. */
  glycogenWaterRatio: 2.7,
  /** Glycogen at baseline, G_init, kg. */
  baselineGlycogenKg: 0.5,
  /** Sodium of extracellular fluid, [Na], mg per litre. */
  fluidSodiumMgPerLitre: 3_220,
  /** Renal answer to a surplus of fluid, xi_Na, mg per litre and day. */
  renalSodiumMgPerLitreDay: 3_000,
  /** Answer of sodium to a change of carbohydrate, xi_CI, mg per day. */
  carbohydrateSodiumMgPerDay: 4_000,
  /** Cost of keeping fat, gamma_F, kJ per kg and day. */
  fatMaintenanceKjPerKgDay: 13,
  /** Cost of keeping lean tissue, gamma_L, kJ per kg and day. */
  leanMaintenanceKjPerKgDay: 92,
  /** Cost of laying down fat, eta_F, kJ/kg. */
  fatDepositionKjPerKg: 750,
  /** Cost of laying down lean tissue, eta_L, kJ/kg. */
  leanDepositionKjPerKg: 960,
  /** Thermic effect of feeding, beta_TEF, a share of the change of intake. */
  thermicEffectShare: 0.1,
  /** Adaptive thermogenesis, beta_AT, a share of the change of intake. */
  adaptationShare: 0.14,
  /** Time constant of adaptive thermogenesis, tau_AT, days. */
  adaptationDays: 14,
  /** Forbes constant, kg: dL/dF = 10.4 kg / F. */
  forbesKg: 10.4,
} as const;

/**
 * What the running estimate believes before it has seen a set, and how much it lets things move. Logarithms of
 * kilograms unless said: 0.01 is one percent. Chosen on simulated lifters of many kinds (see the simulation), with the
 * published facts named beside them; not tuned to one of them.
 */
export const STRENGTH_BELIEFS = {
  /** How far the level may drift in a day. Over four weeks this is 2.4 %. */
  driftSdPerDay: 0.0045,
  /** Form of the day, the same for all sets of a session. */
  formSd: 0.024,
  /** Loss by one hard set before, and how it differs between people and exercises. */
  fatigue: { mean: 0.022, sd: 0.012 },
  /** Bend of the curve; exercises differ (source key: nuzzo-2024). */
  bend: { mean: 1.1, sd: 0.18 },
  /** Repetitions to failure at a given strength, whatever the log says: the last one is a matter of will and form. */
  repsSd: { least: 0.5, perRep: 0.05 },
  /** Error of the reserve as felt: under one repetition near failure, more away from it (source key: helms-2017). */
  reserveSd: { least: 0.4, perReserve: 0.35 },
  /** Reserve taken for sets that were logged without one, where the log shows no habit. */
  unknownReserve: { mean: 1.5, sd: 1.5 },
  /** The width of the noise is learnt from each log: what is believed counts as so many sets, old ones fade. */
  scaleWorth: 8,
  scaleKept: 0.98,
  /** A share of strength lost for a share of body mass lost, from one case followed (see body mass). */
  perMassShare: 0.6,
} as const;

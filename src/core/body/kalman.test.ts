import { describe, expect, it } from 'vitest';
import { copyGaussian, gaussian, spread } from './gaussian.ts';
import { logDensity, predict, propagateCovariance, update } from './kalman.ts';
import { type Adjoint, backOverDay, backOverUpdate, emptyAdjoint, smoothedAlong } from './smooth.ts';

/** Annual flow of the Nile at Aswan, 1871 to 1970, in 10^8 m3 (Cobb 1978; public domain). */
const NILE =
  `1120 1160 963 1210 1160 1160 813 1230 1370 1140 995 935 1110 994 1020 960 1180 799 958 1140 1100 1210 1150
1250 1260 1220 1030 1100 774 840 874 694 940 833 701 916 692 1020 1050 969 831 726 456 824 702 1120 1100 832 764 821 768
845 864 862 698 845 744 796 1040 759 781 865 845 944 984 897 822 1010 771 676 649 846 812 742 801 1040 860 874 848 890
744 749 838 1050 918 986 797 923 975 815 1020 906 901 1170 912 746 919 718 714 740`
    .split(/\s+/)
    .map(Number);

const LEVEL = { places: [0], factors: [1] };
const OBSERVED = 15_099;
const DRIFT = 1469.1;

/** The local level model started by the first year (exact diffuse start); answers the belief and the log-likelihood. */
function filterNile() {
  const belief = gaussian(1);
  belief.mean[0] = NILE[0] ?? 0;
  belief.covariance[0] = OBSERVED;
  let logLikelihood = 0;
  for (const flow of NILE.slice(1)) {
    spread(belief, LEVEL, DRIFT);
    const innovation = flow - (belief.mean[0] ?? 0);
    const { variance } = update(belief, LEVEL, innovation, OBSERVED);
    logLikelihood += logDensity(innovation, variance);
  }
  return { belief, logLikelihood };
}

/** What the filter expects before each year, and how it takes the year in. */
function nileYears(startMean = NILE[0] ?? 0, startVariance = OBSERVED + DRIFT, from = 1) {
  const belief = gaussian(1);
  belief.mean[0] = startMean;
  belief.covariance[0] = startVariance;
  const still = [LEVEL];
  const years = NILE.slice(from).map((flow) => {
    const before = { mean: belief.mean[0] ?? 0, variance: belief.covariance[0] ?? 0 };
    const innovation = flow - before.mean;
    const taken = update(belief, LEVEL, innovation, OBSERVED);
    const after = copyGaussian(belief);
    predict(belief, still);
    spread(belief, LEVEL, DRIFT);
    return { before, taken, after };
  });
  return years;
}

/** Source: Durbin and Koopman, Time Series Analysis by State Space Methods, 2nd edition 2012, chapter 2. */
describe('the filter on the Nile', () => {
  it('[EST-11] level and variance of 1970, steady state, and log-likelihood as published (X14)', () => {
    const { belief, logLikelihood } = filterNile();
    expect(NILE).toHaveLength(100);
    expect(belief.mean[0]).toBeCloseTo(798.3703, 3);
    expect(belief.covariance[0]).toBeCloseTo(4032.1579, 3);
    expect(logLikelihood).toBeCloseTo(-632.5456, 3);
  });

  it('[EST-11] year by year: expectation, variance, innovation, gain, and belief after it', () => {
    // year, a, P, v, F, K, a after, P after; the diffuse start takes 1871 as it is
    const rows = [
      [1872, 1120, 16568.1, 40, 31667.1, 0.5232, 1140.9278, 7899.7364],
      [1873, 1140.9278, 9368.8364, -177.9278, 24467.8364, 0.3829, 1072.7985, 5781.4699],
      [1874, 1072.7985, 7250.5699, 137.2015, 22349.5699, 0.32442, 1117.309, 4898.3652],
      [1875, 1117.309, 6367.4652, 42.691, 21466.4652, 0.29662, 1129.9721, 4478.7233],
      [1898, 1145.1957, 5501.2584, -45.1957, 20600.2584, 0.26705, 1133.1263, 4032.1582],
      [1913, 856.327, 5501.2579, -400.327, 20600.2579, 0.26705, 749.4204, 4032.1579],
      [1970, 819.6373, 5501.2579, -79.6373, 20600.2579, 0.26705, 798.3703, 4032.1579],
    ] as const;
    const years = nileYears();
    for (const [year, a, p, v, f, k, after, variance] of rows) {
      const at = years[year - 1872];
      if (!at) throw new Error(`no year ${year}`);
      expect(at.before.mean).toBeCloseTo(a, 3);
      expect(at.before.variance).toBeCloseTo(p, 3);
      expect(at.taken.innovation).toBeCloseTo(v, 3);
      expect(at.taken.variance).toBeCloseTo(f, 3);
      expect(at.taken.gain[0]).toBeCloseTo(k, 4);
      expect(at.after.mean[0]).toBeCloseTo(after, 3);
      expect(at.after.covariance[0]).toBeCloseTo(variance, 3);
    }
  });

  it('[EST-11] log-likelihood with a wide start at nothing (X15)', () => {
    let logLikelihood = 0;
    for (const { taken } of nileYears(0, 1e7, 0))
      logLikelihood += logDensity(taken.innovation, taken.variance);
    expect(logLikelihood).toBeCloseTo(-641.5856, 3);
  });

  it('[EST-11] smoothed level and variance as published', () => {
    const rows = [
      [1871, 1111.6683, 4032.1579],
      [1872, 1110.8577, 3242.9301],
      [1873, 1105.2656, 2818.9422],
      [1898, 999.5852, 2326.757],
      [1899, 950.9301, 2326.7569],
      [1920, 834.7633, 2326.7569],
      [1970, 798.3703, 4032.1579],
    ] as const;
    const smoothed = new Map<number, { mean: number; variance: number }>();
    const adjoint: Adjoint = emptyAdjoint(1);
    const years = nileYears();
    for (let k = years.length - 1; k >= 0; k--) {
      const at = years[k];
      if (!at) throw new Error('no such year');
      smoothed.set(1872 + k, smoothedAlong(at.after, adjoint, LEVEL));
      backOverUpdate(adjoint, at.taken);
      backOverDay(adjoint, [LEVEL]);
    }
    const first = gaussian(1);
    first.mean[0] = NILE[0] ?? 0;
    first.covariance[0] = OBSERVED;
    smoothed.set(1871, smoothedAlong(first, adjoint, LEVEL));
    for (const [year, mean, variance] of rows) {
      expect(smoothed.get(year)?.mean).toBeCloseTo(mean, 3);
      expect(smoothed.get(year)?.variance).toBeCloseTo(variance, 3);
    }
  });
});

describe('the arithmetic of the filter', () => {
  it("[EST-11] covariance A P A' of a map that mixes states, by hand", () => {
    const belief = gaussian(2);
    belief.covariance.set([4, 1, 1, 9]);
    const transition = [
      { places: [0, 1], factors: [1, 2] },
      { places: [1], factors: [0.5] },
    ];
    propagateCovariance(belief, transition);
    expect([...belief.covariance]).toEqual([4 + 4 + 36, 0.5 + 9, 0.5 + 9, 2.25]);
  });

  it('[EST-11] two readings one after the other are one reading of their precisions together', () => {
    const belief = gaussian(1);
    belief.covariance[0] = 4;
    update(belief, LEVEL, 3, 2);
    update(belief, LEVEL, 5 - (belief.mean[0] ?? 0), 1);
    const precision = 1 / 4 + 1 / 2 + 1;
    expect(belief.covariance[0]).toBeCloseTo(1 / precision, 12);
    expect(belief.mean[0]).toBeCloseTo((3 / 2 + 5) / precision, 12);
  });
});

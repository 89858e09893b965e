import { describe, expect, it } from 'vitest';
import { gaussian, spread } from './gaussian.ts';
import { logDensity, update } from './kalman.ts';

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

/** Source: Durbin and Koopman, Time Series Analysis by State Space Methods, 2nd edition 2012, chapter 2. */
describe('the filter on the Nile', () => {
  it('[EST-11] level and variance of 1970, steady state, and log-likelihood as published', () => {
    const { belief, logLikelihood } = filterNile();
    expect(NILE).toHaveLength(100);
    expect(belief.mean[0]).toBeCloseTo(798.3703, 3);
    expect(belief.covariance[0]).toBeCloseTo(4032.1579, 3);
    expect(logLikelihood).toBeCloseTo(-632.5456, 3);
  });
});

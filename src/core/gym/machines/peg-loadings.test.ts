import { describe, expect, it } from 'vitest';
import { equalOnPeg, figuresOf, pegsByEmphasis, type LeverMachine } from './peg-loadings.ts';

const CURL: LeverMachine = {
  of: 'lever',
  range: { fromDeg: 0, toDeg: 80 },
  lever: { massKg: 6, radiusM: 0.2, angleDeg: 0 },
  pegs: [
    { name: 'front', radiusM: 0.4, angleDeg: -60 },
    { name: 'middle', radiusM: 0.4, angleDeg: -25 },
    { name: 'rear', radiusM: 0.4, angleDeg: 5 },
  ],
  padM: 0.4,
  sides: 1,
};

describe('plates on different pegs', () => {
  it('[GYM-14] equal work: the loading found does the same work to the joule', () => {
    const loading = [
      { peg: 'front', kg: 20 },
      { peg: 'rear', kg: 10 },
    ];
    const equal = equalOnPeg(CURL, loading, 'middle');
    const same = figuresOf(CURL, [{ peg: 'middle', kg: equal?.equalWorkKg ?? 0 }]);
    expect(same?.meanNm).toBeCloseTo(figuresOf(CURL, loading)?.meanNm ?? 0, 9);
    expect(same?.padKg).toBeCloseTo(figuresOf(CURL, loading)?.padKg ?? 0, 9);
  });

  it('[GYM-14] equal peak: the loading found is as hard at its hardest', () => {
    const loading = [{ peg: 'front', kg: 30 }];
    const equal = equalOnPeg(CURL, loading, 'rear');
    const same = figuresOf(CURL, [{ peg: 'rear', kg: equal?.equalPeakKg ?? 0 }]);
    expect(same?.peakNm).toBeCloseTo(figuresOf(CURL, loading)?.peakNm ?? 0, 9);
  });

  it('[GYM-14] the same peg needs the same plates', () => {
    const equal = equalOnPeg(CURL, [{ peg: 'middle', kg: 25 }], 'middle');
    expect(equal?.equalWorkKg).toBeCloseTo(25, 9);
    expect(equal?.equalPeakKg).toBeCloseTo(25, 6);
  });

  it('[GYM-14] a peg that hangs back shifts the work to the end, one that stands ahead to the start', () => {
    const shift = pegsByEmphasis(CURL, 30);
    expect([shift?.start.peg, shift?.end.peg]).toEqual(['rear', 'front']);
    expect(shift?.start.figures.emphasis).toBe('start');
    expect(shift?.end.figures.emphasis).toBe('end');
  });

  it('[GYM-14] two pegs lie between their own extremes in every third', () => {
    const [front, rear, both] = [
      [{ peg: 'front', kg: 30 }],
      [{ peg: 'rear', kg: 30 }],
      [
        { peg: 'front', kg: 15 },
        { peg: 'rear', kg: 15 },
      ],
    ].map((pegs) => figuresOf(CURL, pegs)?.thirdsPercent ?? [0, 0, 0]);
    for (const third of [0, 1, 2] as const) {
      const ends = [front?.[third] ?? 0, rear?.[third] ?? 0].sort((a, b) => a - b);
      expect(both?.[third]).toBeGreaterThanOrEqual(ends[0] ?? 0);
      expect(both?.[third]).toBeLessThanOrEqual(ends[1] ?? 0);
    }
  });

  it('[GYM-14] a peg the machine does not have has no figures', () => {
    expect(figuresOf(CURL, [{ peg: 'top', kg: 5 }])).toBeUndefined();
    expect(equalOnPeg(CURL, [{ peg: 'front', kg: 5 }], 'top')).toBeUndefined();
  });
});

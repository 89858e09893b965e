import { describe, expect, it } from 'vitest';
import { fatOfFolds, fatOfGirths, foldSitesOf, foldSumMm } from './measured-fat.ts';

const woman = { sex: 'female', age: 30, heightCm: 167 } as const;
const man = { sex: 'male', age: 30, heightCm: 178 } as const;
const sites = (names: readonly string[], mm: number) => Object.fromEntries(names.map((name) => [name, [mm]]));

describe('[RUN-22] folds and tape as body fat', () => {
  it('[RUN-22] seven folds by jackson-pollock-1978 and siri-1961, worked by hand', () => {
    const folds = {
      sites: sites(foldSitesOf('jackson-pollock-7', 'male'), 10),
      equation: 'jackson-pollock-7',
    } as const;
    // D = 1.112 - 0.00043499 * 70 + 0.00000055 * 4900 - 0.00028826 * 30 = 1.0755977; 495 / D - 450 = 10.2.
    expect(fatOfFolds(folds, man)).toMatchObject({ percent: 10.2, source: 'jackson-pollock-1978' });
  });

  it('[RUN-22] several readings of a site count as their mean', () => {
    expect(
      foldSumMm(
        { sites: { triceps: [10, 12], suprailiac: [8], thigh: [20] } },
        'jackson-pollock-3',
        'female',
      ),
    ).toBe(39);
  });

  it('[RUN-22] sites that make up no equation say so, and a sum outside the study too', () => {
    expect(fatOfFolds({ sites: { calf: [8] } }, woman)).toHaveProperty('lacking');
    const few = {
      sites: sites(foldSitesOf('jackson-pollock-7', 'male'), 1),
      equation: 'jackson-pollock-7',
    } as const;
    expect(fatOfFolds(few, man)).toMatchObject({
      lacking: expect.stringContaining('outside the studied range'),
    });
  });

  it('[RUN-22] tape by hodgdon-beckett-1984; what is missing is named', () => {
    const reading = fatOfGirths({ sites: { abdomen: 85, neck: 40 } }, man);
    // D = 1.0324 - 0.19077 log10(45) + 0.15456 log10(178) = 1.0650; 495 / D - 450 = 14.8.
    expect(reading).toMatchObject({ percent: expect.closeTo(14.8, 0) });
    expect(fatOfGirths({ sites: { waist: 70, hip: 95 } }, woman)).toEqual({
      lacking: 'Neck, waist and hip would give a figure for body fat.',
    });
  });
});

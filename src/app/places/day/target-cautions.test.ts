import { describe, expect, it } from 'vitest';
import { targetCautions, targetEnergyKcal } from './target-cautions.ts';

const BODY = { massKg: 84.6, fatKg: 13.5 };
const LOW = { proteinG: 20, carbohydrateG: 10, fatG: 1 };
const SOUND = { proteinG: 180, carbohydrateG: 220, fatG: 70 };

describe('targets entered by hand', () => {
  /** General factors 4, 4 and 9 kcal/g: Regulation (EU) No 1169/2011, annex XIV. */
  it('[LIM-32] a starvation diet is cautioned on energy, protein and fat, with care', () => {
    expect(targetEnergyKcal(LOW)).toBe(129);
    const words = targetCautions(LOW, 'male', BODY).map((caution) => caution.words);
    expect(words.some((one) => one.startsWith('Intake is about 129 kcal a day'))).toBe(true);
    expect(words.some((one) => one.startsWith('Protein is about 20 g'))).toBe(true);
    expect(words.some((one) => one.startsWith('Fat is about 1 g'))).toBe(true);
    expect(words.join(' ')).toContain('See a physician');
  });

  it('[LIM-32] sound targets raise none, nor does a body that is not known yet', () => {
    expect(targetCautions(SOUND, 'male', BODY)).toEqual([]);
    expect(targetCautions(LOW, 'male', undefined)).toEqual([]);
  });
});
